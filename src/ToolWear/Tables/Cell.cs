using System.Globalization;

namespace ToolWear.Tables;

/// <summary>One cell of a table: its value at full precision for files, and the words a smith reads.</summary>
/// <remarks>Both are made from the same value, so that the three formats cannot disagree. An empty cell is not known.</remarks>
public readonly record struct Cell
{
    private readonly double? number;
    private readonly string? text;

    private Cell(double? number, string? text, string shown)
    {
        this.number = number;
        this.text = text;
        Shown = shown;
    }

    /// <summary>Not known.</summary>
    public static Cell Unknown { get; } = new(null, null, "-");

    /// <summary>What a smith reads.</summary>
    public string Shown => field ?? "-";

    /// <summary>Whether it is a number.</summary>
    public bool IsNumber => number is not null;

    /// <summary>The number; null for a text and for what is not known.</summary>
    public double? Number => number;

    /// <summary>The text; null for a number and for what is not known.</summary>
    public string? Text => text;

    /// <summary>A text.</summary>
    /// <param name="text">The text; null or empty is not known.</param>
    /// <param name="shown">What a smith reads where it is not the text itself.</param>
    /// <param name="shownIfEmpty">What a smith reads where there is none.</param>
    /// <returns>The cell.</returns>
    public static Cell Of(string? text, string? shown = null, string shownIfEmpty = "-") =>
        string.IsNullOrEmpty(text) ? new(null, null, shownIfEmpty) : new(null, text, shown ?? text);

    /// <summary>A number.</summary>
    /// <param name="number">The number, finite; null is not known.</param>
    /// <param name="show">How a smith reads it; where null, with at most one decimal.</param>
    /// <returns>The cell.</returns>
    public static Cell Of(double? number, Func<double, string>? show = null) =>
        number is { } value ? new(value, null, (show ?? OneDecimal)(value)) : Unknown;

    /// <summary>A day.</summary>
    /// <param name="day">The day; null is not known.</param>
    /// <returns>The cell.</returns>
    public static Cell Of(DateOnly? day) => Of(day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>The value as a file holds it: full precision, a point, empty for not known.</summary>
    /// <returns>The text without any escape.</returns>
    public string ToFileText() => number is { } value ? value.ToString("R", CultureInfo.InvariantCulture) : text ?? "";

    private static string OneDecimal(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
