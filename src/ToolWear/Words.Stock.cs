using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;

namespace ToolWear;

/// <content>What is said of bars and what is cut from them.</content>
public static partial class Words
{
    // a cut is never short, and what is left never more than there is: whole mm, sixteenths of an inch
    private const double SixteenthMm = 25.4 / 16;
    private const double RoundingMm = 0.05;

    /// <summary>A length to cut, not shorter than needed.</summary>
    /// <param name="mm">The length in mm.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "94 mm" or "3 3/4 in".</returns>
    public static string CutLength(double mm, LengthUnit units)
    {
        double step = units == LengthUnit.Mm ? 1 : SixteenthMm;
        return BarLength(Math.Ceiling((mm - RoundingMm) / step) * step, units);
    }

    /// <summary>A length that is left, not longer than it is.</summary>
    /// <param name="mm">The length in mm.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "1706 mm" or "67 1/8 in".</returns>
    public static string LeftLength(double mm, LengthUnit units)
    {
        double step = units == LengthUnit.Mm ? 1 : SixteenthMm;
        return BarLength(Math.Floor((mm + RoundingMm) / step) * step, units);
    }

    /// <summary>A bar's section and size, as one asks for it.</summary>
    /// <param name="size">The size.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "32 round" or "50 x 20 rectangle".</returns>
    public static string BarSizeOf(BarSize size, LengthUnit units)
    {
        string other = size.B is { } b ? " x " + BarSide(b, units) : "";
        return $"{BarSide(size.A, units)}{other} {SectionKinds.Words.Word(size.Section)}";
    }

    /// <summary>A bar: by its name, or as one that is to be bought.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "4140 32" or "new 4140 38 round".</returns>
    public static string BarOf(BarWanted bar, LengthUnit units) =>
        bar.Name ?? $"new {bar.Steel} {BarSizeOf(bar.Size, units)}";

    /// <summary>What a batch is cut from.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "4140 32: 3 x 86 mm, 1542 mm left"; empty where no bar is cut.</returns>
    public static string CutsOf(BatchStock stock, LengthUnit units) =>
        string.Join(
            "; ",
            stock.Cuts.Select(cut =>
                $"{BarOf(cut.Bar, units)}: {cut.Pieces} x {CutLength(cut.PieceMm, units)}, {LeftLength(cut.LeftMm, units)} left"
            )
        );

    /// <summary>What a batch has bought.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "1 bar of 4140 38 round, 3000 mm, for 2 x 107 mm"; null where nothing has to be bought.</returns>
    public static string? BuyOf(BatchStock stock, LengthUnit units) =>
        stock.Buy is { } buy ? $"{BarsOf(buy, units)}, for {buy.Pieces} x {CutLength(buy.PieceMm, units)}" : null;

    /// <summary>What is cut from one bar for all batches.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "4140 32 (4140 32 round, 1800 mm): 1 x 94 mm H second drift; 1706 mm left".</returns>
    public static string CutOf(BarUse bar, LengthUnit units)
    {
        string what = bar.Bar.Name is null ? "" : $"{bar.Bar.Steel} {BarSizeOf(bar.Bar.Size, units)}, ";
        string pieces = string.Join(
            ", ",
            bar.Batches.Select(each =>
                $"{each.Pieces} x {CutLength(each.PieceMm, units)} {each.Batch.Tools} by {each.Batch.ForgeBy:MM-dd}"
            )
        );
        return $"{BarOf(bar.Bar, units)} ({what}{LeftLength(bar.LengthMm, units)}): {pieces}; {LeftLength(bar.LeftMm, units)} left";
    }

    /// <summary>What has to be bought.</summary>
    /// <param name="buy">The bars.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "1 bar of 4140 38 round, 3000 mm".</returns>
    public static string BarsOf(BarsToBuy buy, LengthUnit units) =>
        $"{CountOf(buy.Bars, "bar")} of {buy.Bar.Steel} {BarSizeOf(buy.Bar.Size, units)}, {LeftLength(buy.BarMm, units)}";

    /// <summary>A bar that two batches want.</summary>
    /// <param name="shared">The bar.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>A sentence.</returns>
    public static string SharedBarOf(SharedBar shared, LengthUnit units)
    {
        string batches = And([.. shared.Batches.Select(batch => $"{batch.Tools} by {batch.ForgeBy:MM-dd}")]);
        string enough = shared.IsTooShort ? "too short for all of them" : "long enough for all";
        return $"{shared.Batches.Length} batches want bar {BarOf(shared.Bar, units)} ({batches}): it is {enough}.";
    }

    internal static string CountOf(int number, string one) => number == 1 ? $"1 {one}" : $"{number} {one}s";

    private static string BarLength(double mm, LengthUnit units) =>
        units == LengthUnit.Mm
            ? $"{mm.ToString("0", System.Globalization.CultureInfo.InvariantCulture)} mm"
            : $"{SizeShown.Eye(Length.FromMm(mm), units)} in";

    private static string BarSide(Length side, LengthUnit units) =>
        units == LengthUnit.Mm ? side.ToMmText() : SizeShown.Eye(side, units);
}
