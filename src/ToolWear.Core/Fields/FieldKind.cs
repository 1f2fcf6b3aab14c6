using System.Collections.Immutable;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Fields;

/// <summary>Reads a text that is not empty.</summary>
/// <typeparam name="TValue">What it says.</typeparam>
/// <param name="text">The text.</param>
/// <param name="source">Where it comes from.</param>
/// <param name="value">What it says; not to be used where there is a fault.</param>
/// <returns>What is wrong and what would be right; null where nothing is.</returns>
public delegate string? FieldReader<TValue>(string text, Source source, out TValue value);

/// <summary>A kind of value that fields hold: how it is read, written and offered, and which values it may have.</summary>
/// <typeparam name="TValue">The value; null is not known.</typeparam>
/// <param name="Read">Reads it.</param>
/// <param name="Write">Writes it as files hold it; null or empty for not known.</param>
/// <param name="Right">What to type: "a size, such as 36.5 or 1 7/16".</param>
public sealed record FieldKind<TValue>(FieldReader<TValue> Read, Func<TValue, string?> Write, string Right)
{
    /// <summary>Its unit in files, empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The words there are; none where anything may be typed.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>Whether it is free text, which a file must keep from being taken for a formula.</summary>
    public bool IsText { get; init; }

    /// <summary>Whether it is written as a bare number.</summary>
    public bool IsNumber { get; init; }

    /// <summary>What is wrong with a value, however it came about; null where nothing is.</summary>
    public Func<TValue, string?> Fault { get; init; } = static _ => null;

    /// <summary>Writes it as a person could have typed it; as in files where null.</summary>
    public Func<TValue, LengthUnit, string?>? Offer { get; init; }
}
