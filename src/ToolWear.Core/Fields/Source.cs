using ToolWear.Core.Measure;

namespace ToolWear.Core.Fields;

/// <summary>Where a text comes from, and with it how it is meant.</summary>
/// <param name="Units">The unit of a bare size that a person types; null where it stands in a file, which holds mm and a point.</param>
/// <param name="Today">The shop's day: nothing has happened after it.</param>
public readonly record struct Source(LengthUnit? Units, DateOnly Today)
{
    /// <summary>Whether the month stands first in 10/31/2026; null where nobody knows and only one reading may be taken.</summary>
    public bool? MonthFirst { get; init; }

    /// <summary>Whether it is a file's cell, written one way only.</summary>
    public bool IsFile => Units is null;
}
