using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Wear.Figures;

namespace ToolWear;

/// <content>The forge list as it hangs on the shop wall.</content>
public static partial class Words
{
    /// <summary>What stands over the cut list.</summary>
    public const string CutListHeading = "Cut list";

    /// <summary>What stands over what has to be bought.</summary>
    public const string BuyHeading = "Buy";

    /// <summary>What stands over the rest.</summary>
    public const string MindHeading = "Mind";

    private static readonly ImmutableArray<string> Numbers =
    [
        "none",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
    ];

    /// <summary>What stands over the list on the wall.</summary>
    /// <param name="list">The list.</param>
    /// <returns>A line.</returns>
    public static string WallHeading(ForgeList list) => $"Forge list of {Weekday(list.From)}";

    /// <summary>A batch in one plain sentence.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>For example "R3: about 11 heats left, R4: 30; make two H rough drifts by Fri 2026-12-04 from the 32 round
    /// (bar mild 32), 86 mm each.".</returns>
    public static string WallSentence(ForgeBatch batch, LengthUnit units)
    {
        string past = batch.IsLate ? " (that day is past: first of all)" : "";
        string what = batch.Number == 1 ? batch.Tools.ToString() : $"{batch.Tools}s";
        return $"{ToolsLeft(batch)}; make {Number(batch.Number)} {what} by {Weekday(batch.ForgeBy)}{past} {FromStock(batch, units)}.";
    }

    /// <summary>What else there is to know of a batch.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Sizes, steel, hours, cost, the order, the certainty with one fewer.</returns>
    public static string WallDetails(ForgeBatch batch, LengthUnit units)
    {
        string[] made =
        [
            batch.Series is { Length: not null } ? $"{BatchSizes(batch, units, " x ")} {SizeShown.Mark(units)}" : "",
            batch.Series?.Steel ?? "",
            batch.Hours is { } hours ? $"{Heats((double)hours)} hours" : "",
            batch.Stock.PieceKg is { } kg ? $"{kg.ToString("0.00", CultureInfo.InvariantCulture)} kg each" : "",
            batch.TotalCost is { } cost ? $"cost about {cost.ToString("0", CultureInfo.InvariantCulture)}" : "",
        ];
        return string.Join(", ", made.Where(part => part.Length > 0).DefaultIfEmpty("sizes as you choose"))
            + $". For order {batch.Needed.Order}, session of {Weekday(batch.ReadyBy)}; with one fewer {Percent(batch.SureWithOneFewer)} sure."
            + StockNotes(batch);
    }

    private static string ToolsLeft(ForgeBatch batch)
    {
        string[] left =
        [
            .. batch.InService.Select(
                (tool, i) =>
                    $"{tool.Forecast.Tool.Mark}: {(tool.WhyNot is null ? LeftOf(tool.Forecast.HeatsLeft, isFirst: i == 0) : "not counted on")}"
            ),
            .. batch.Needed.Before > 0 ? [$"{Number(batch.Needed.Before)} new by then"] : (string[])[],
        ];
        string cracks = batch.Failures > 0 ? $", if none cracks ({Number(batch.Failures)} did)" : "";
        return left.Length == 0 ? $"No {batch.Tools} in service" : string.Join(", ", left) + cracks;
    }

    private static string LeftOf(HeatsLeft? left, bool isFirst) =>
        left switch
        {
            { Q50: < 0.5 } => "past its limit",
            { Q50: { } heats } => isFirst ? $"about {CountOf((int)Math.Round(heats), "heat")} left" : About(heats),
            _ => "longer than the readings can tell",
        };

    private static string FromStock(ForgeBatch batch, LengthUnit units)
    {
        BatchStock stock = batch.Stock;
        string each = batch.Number == 1 ? "" : " each";
        string buy = stock.Buy is { } bars
            ? $"{BarSizeOf(bars.Bar.Size, units)} to be bought, {(stock.Cuts.IsEmpty ? "" : $"{Number(bars.Pieces)} of ")}{CutLength(bars.PieceMm, units)}{each}"
            : "";
        string cuts = stock.Cuts.Length switch
        {
            0 => "",
            1 =>
                $"the {BarSizeOf(stock.Cuts[0].Bar.Size, units)} ({BarNamed(stock.Cuts[0].Bar)}), {CutLength(stock.Cuts[0].PieceMm, units)}{each}",
            _ => "the "
                + string.Join(
                    " and the ",
                    stock.Cuts.Select(cut =>
                        $"{BarSizeOf(cut.Bar.Size, units)} ({BarNamed(cut.Bar)}), {Number(cut.Pieces)} of {CutLength(cut.PieceMm, units)}"
                    )
                ),
        };
        return buy.Length + cuts.Length == 0
            ? "from stock of your choice"
            : "from " + string.Join(" and ", new[] { cuts, buy }.Where(part => part.Length > 0));
    }

    private static string BarNamed(BarWanted bar) => bar.Name is { } name ? $"bar {name}" : "bought before";

    private static string Number(int number) =>
        number < Numbers.Length ? Numbers[number] : number.ToString(CultureInfo.InvariantCulture);
}
