using System.Globalization;

namespace ToolWear.Results;

/// <summary>One cell: its value at full precision for files, and the words a smith reads, both from the same value.</summary>
internal readonly record struct Cell
{
    private Cell(double? number, string? text, string shown)
    {
        Number = number;
        Text = text;
        Shown = shown;
    }

    /// <summary>Not known.</summary>
    public static Cell Unknown { get; } = new(null, null, "-");

    /// <summary>What a smith reads.</summary>
    public string Shown => field ?? "-";

    public bool IsNumber => Number is not null;

    /// <summary>The number; null for a text and for what is not known.</summary>
    public double? Number { get; }

    /// <summary>The text; null for a number and for what is not known.</summary>
    public string? Text { get; }

    /// <summary>What only JSON can hold: a list of rows or a row; null where text and number say it.</summary>
    public Table? Part { get; private init; }

    /// <summary>A text, with what a smith reads where it is not the text itself, and where there is none.</summary>
    public static Cell Of(string? text, string? shown = null, string none = "-") =>
        string.IsNullOrEmpty(text) ? new(null, null, none) : new(null, text, shown ?? text);

    /// <summary>A finite number, shown with at most one decimal where nothing else is said.</summary>
    public static Cell Of(double? number, Func<double, string>? show = null) =>
        number is { } value ? new(value, null, (show ?? OneDecimal)(value)) : Unknown;

    /// <summary>A day; null is not known.</summary>
    public static Cell Of(DateOnly? day) => Of(day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>A list or an object in JSON.</summary>
    public static Cell Of(Table? part) => Unknown with { Part = part };

    private static string OneDecimal(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
