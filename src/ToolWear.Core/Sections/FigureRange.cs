using System.Globalization;

namespace ToolWear.Core.Sections;

/// <summary>The refusal of a computed or typed figure outside what can be.</summary>
public static class FigureRange
{
    /// <summary>A sentence where a figure lies outside its range, or is no number; null where it lies inside.</summary>
    /// <param name="what">What the figure is, as a sentence begins: "The loss".</param>
    /// <param name="value">The figure.</param>
    /// <param name="least">The least allowed, allowed itself.</param>
    /// <param name="greatest">The greatest allowed, allowed itself.</param>
    /// <param name="unit">The unit with a blank before it, or nothing: " mm".</param>
    /// <returns>For example "The loss must be 0 to 0.9; 7 is not."</returns>
    public static string? Refuse(string what, double value, double least, double greatest, string unit)
    {
        if (value >= least && value <= greatest)
        {
            return null;
        }

        string end = double.IsFinite(value) ? $"; {Text(value)} is not." : ", and a number.";
        return $"{what} must be {Text(least)} to {Text(greatest)}{unit}{end}";
    }

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
