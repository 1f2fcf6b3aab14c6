using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Wording;

namespace ToolWear.Results;

/// <summary>What a number counts in, and how people read it.</summary>
/// <param name="Unit">The unit in files, as the data dictionary says it; empty for a plain number.</param>
/// <param name="Show">The number as people read it in the shop's unit.</param>
internal sealed record Quantity(string Unit, Func<double, LengthUnit, string> Show)
{
    /// <summary>How many.</summary>
    public static Quantity Plain { get; } = Of("", "0.#");

    /// <summary>The size of an eye or a bar, mm: in fractions where the shop works in inches.</summary>
    public static Quantity Size { get; } = new("mm", (mm, units) => SizeShown.Eye(Length.FromMm(mm), units));

    /// <summary>A size that the caliper read, mm.</summary>
    public static Quantity Caliper { get; } = new("mm", (mm, units) => SizeShown.Caliper(Length.FromMm(mm), units));

    /// <summary>Wear, mm: always in decimals.</summary>
    public static Quantity Wear { get; } = new("mm", SizeShown.Wear);

    /// <summary>A length that needs no parts of a mm.</summary>
    public static Quantity Whole { get; } = new("mm", SizeShown.Whole);

    /// <summary>Wear a heat.</summary>
    public static Quantity Rate { get; } = new("mm a heat", SizeShown.Rate);

    /// <summary>How far one size lies from another, mm, on whichever side.</summary>
    public static Quantity Gap { get; } = new("mm", (mm, units) => SizeShown.Eye(Length.FromMm(Math.Abs(mm)), units));

    /// <summary>Heats as they were worked, in halves.</summary>
    public static Quantity Worked { get; } = Of("heats", "0.#");

    /// <summary>Heats that are an estimate: no finer than one.</summary>
    public static Quantity Heats { get; } = Of("heats", "0");

    /// <summary>Heats of a stage for one head.</summary>
    public static Quantity HeatsAHead { get; } = Of("heats", "0.##");

    /// <summary>The shop's money.</summary>
    public static Quantity Money { get; } = Of("money", "F2");

    /// <summary>A chance in whole hundreds.</summary>
    public static Quantity Chance { get; } = new("0 to 1", (share, _) => Hundreds(share) + "%");

    /// <summary>A share in whole hundreds.</summary>
    public static Quantity Share { get; } = new("0 to 1", (share, _) => Hundreds(share) + " %");

    /// <summary>So many of a hundred.</summary>
    public static Quantity InHundred { get; } = new("0 to 1", (share, _) => Hundreds(share));

    /// <summary>A certainty that is planned with.</summary>
    public static Quantity Sure { get; } = new("0 to 1", (share, _) => Words.Percent(share));

    /// <summary>A number in digits of its own, such as "0.0".</summary>
    public static Quantity Of(string unit, string format) =>
        new(unit, (value, _) => value.ToString(format, CultureInfo.InvariantCulture));

    private static string Hundreds(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture);
}
