using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Sections;
using ToolWear.Core.Wear.Figures;
using ToolWear.Wording;

namespace ToolWear.Results.Plans;

/// <summary>What verbs, screens and sheets say alike of plans, orders, costs and stock.</summary>
internal static class PlanWords
{
    /// <summary>What stands over the costs of heads.</summary>
    public const string HeadCostHeading = "Tooling a head, apart from bar, fuel and handle";

    /// <summary>What weighing a rework rests on.</summary>
    public const string ReforgeBasis =
        "A rework pays where a heat that it gains costs less than a heat of a new tool over its life.";
    public const string AsItIs = "As it is";
    public const string WasStopped = "Stopped before it was done. Esc goes back; open this page again to start over.";
    public const string NoOrders = "No order is open.";

    /// <summary>No batch is needed.</summary>
    public const string NothingToForge =
        "Nothing to forge by the records, if none of the tools cracks: looking them over decides.";

    /// <summary>What costs rest on.</summary>
    public const string CostBasis =
        "Costs are as noted when tools were added, at the shop's hourly rate. Where none was noted, the usual cost of that place counts; a part nobody ever noted is left out. Ranges hold nine times in ten.";
    private const int MostNamed = 6;

    // a cut is never short, and what is left never more than there is: whole mm, sixteenths of an inch
    private const double SixteenthMm = 25.4 / 16;
    private const double RoundingMm = 0.05;

    /// <summary>What stands over the cut list.</summary>
    public const string CutListHeading = "Cut list";

    /// <summary>What stands over what has to be bought.</summary>
    public const string BuyHeading = "Buy";

    /// <summary>What stands over the rest.</summary>
    public const string MindHeading = "Mind";

    /// <summary>No cost of such a tool is known.</summary>
    public static string NoCostOf(ToolPlace place) =>
        $"No cost of any {place} is on record, so there is nothing to compare.";

    /// <summary>What the cost of a place assumes, and what is left out of it.</summary>
    public static IEnumerable<string> CostAssumptions(PlaceHeatCost place)
    {
        if (place.Cost.Total is null)
        {
            yield return $"{place.Tools}: no cost is on record.";
            yield break;
        }

        yield return $"{place.Tools}: {CostParts(place.Cost)}.";
        foreach ((string steel, int number, double life) in place.Others)
        {
            yield return $"{place.Tools}: the forecast is for {place.Steel ?? "unknown steel"}; {number} of {steel} lasted {Words.About(life)} heats and do not count beside it.";
        }

        string[] left = [.. Words.Unknown(place.Cost)];
        string borrowed = place.Cost.Borrowed.IsEmpty
            ? ""
            : $" {Words.And([.. place.Cost.Borrowed])} as of such tools for other eyes";
        string missing = left.Length == 0 ? "" : $" {Words.And(left)} not on record and left out";
        if (borrowed.Length + missing.Length > 0)
        {
            yield return $"{place.Tools}:{borrowed}{(borrowed.Length > 0 && missing.Length > 0 ? ";" : "")}{missing}.";
        }
    }

    public static string Money(double amount) => amount.ToString("F2", CultureInfo.InvariantCulture);

    /// <summary>The parts that the cost of some tools adds up from.</summary>
    public static string CostParts(PlaceCost cost, int number = 1)
    {
        string Of(decimal? part) => Money((double)(part!.Value * number));
        string from = cost.Stock is var (kg, aKg)
            ? FormattableString.Invariant($" ({kg * number:0.00} kg at {aKg:0.##})")
            : "";
        string[] parts =
        [
            cost.Steel is null ? "steel not known" : $"steel {Of(cost.Steel)}{from}",
            cost.Hours is not { } hours ? "hours not known"
            : cost.HoursCost is null ? $"{Words.Heats((double)hours * number)} hours, hour_rate not set"
            : $"{Words.Heats((double)hours * number)} hours at {FormattableString.Invariant($"{cost.HourRate:0.##}")}: {Of(cost.HoursCost)}",
            cost.Treatment is null ? "treatment not known"
            : cost.Treatment == 0 ? "no treatment"
            : $"treatment {Of(cost.Treatment)}",
        ];
        return string.Join(", ", parts);
    }

    /// <summary>Whether a rework pays, in a word.</summary>
    public static string ReforgeAnswer(ReforgeOrScrap answer) =>
        (answer.Reforge, IsClear(answer)) switch
        {
            (true, true) => "re-forge it",
            (true, false) => "re-forge it, but it is close: the range of a new one's cost reaches it",
            (false, true) => "scrap it and make a new one",
            (false, false) => "a new one, but it is close: the range of its cost reaches the rework's",
        };

    private static bool IsClear(ReforgeOrScrap answer) =>
        answer.ReworkAHeat < answer.NewAHeat.Low90 || answer.ReworkAHeat > answer.NewAHeat.High90;

    public static string PlannedSure(double sure) =>
        $"Planned to last {Words.Percent(sure)} of the time ({sure.ToString("0.###", CultureInfo.InvariantCulture)}).";

    public static string IfSure(double sure) => $"{sure.ToString("0.###", CultureInfo.InvariantCulture)} sure";

    public static string IfHeads(string order, int more) => $"{more} heads more of {order}";

    public static string IfLost(string tool) => $"{tool} lost";

    public static string IfAll(IEnumerable<string> supposed) => "If " + string.Join(", ", supposed);

    public static string BatchSizes(ForgeBatch batch, LengthUnit units, string by = "x")
    {
        if (batch.Series is not { Length: { } length } series)
        {
            return "-";
        }

        return SizeShown.Eye(length, units) + (series.Width is { } width ? by + SizeShown.Eye(width, units) : "");
    }

    public static string SideOf(PlaceSide side) =>
        side.Number == 0 ? "none" : string.Join(", ", side.Days.Select(day => $"{day.Number} by {day.ForgeBy:MM-dd}"));

    public static string SideTotal(ForgeList list)
    {
        decimal cost = list.Batches.Sum(batch => batch.TotalCost ?? 0);
        decimal hours = list.Batches.Sum(batch => batch.Hours ?? 0);
        return $"{list.Batches.Sum(batch => batch.Number)} tools, {Words.Heats((double)hours)} h, {cost:0}";
    }

    public static string SideLate(ForgeList list) =>
        list.Calendar.Late.IsEmpty
            ? "all orders in time"
            : "late: "
                + string.Join(
                    ", ",
                    list.Calendar.Late.Select(late =>
                        late.DaysLate is { } days
                            ? $"{late.Order.Order} by {Words.CountOf(days, "day")}"
                            : late.Order.Order
                    )
                );

    /// <summary>Heads were counted off an order.</summary>
    public static string CountedOff(OrderDescribed before, OrderDescribed after) =>
        after.State == OrderState.Done
            ? $"order {after.Order} is done, its last {Words.CountOf(before.Heads, "head")} with it"
            : $"order {after.Order}: {Words.CountOf(before.Heads - after.Heads, "head")} off, {after.Heads} to go";

    /// <summary>An order that is late.</summary>
    public static string Late(LateOrder late) =>
        $"Order {late.Order.Order} cannot be done in time: {late.HeadsLate} of {late.Order.Heads} heads come after {Words.Weekday(late.Order.DueOn)}, "
        + (
            late.DoneOn is { } last
                ? $"the last on {Words.Weekday(last)}, {Words.CountOf(late.DaysLate!.Value, "day")} late."
                : "the last beyond any calendar."
        )
        + (
            late.WaitsFor.IsEmpty
                ? ""
                : $" It waits for {Words.And([.. late.WaitsFor.Select(place => $"a new {place}")])}."
        );

    /// <summary>The cheapest way to have a tool sooner.</summary>
    public static string Sooner(WayOut way) =>
        $"Cheapest way to have a {way.Tools} sooner: "
        + way.How switch
        {
            SoonerBy.FetchBack => $"fetch {way.Tool!.Mark} back from {way.Tool.Lent!.To}.",
            SoonerBy.BringBack => $"bring {way.Tool!.Mark} back, which is set aside.",
            SoonerBy.Reforge => $"re-forge {way.Tool!.Mark} on its edges; one heat brings it back on size.",
            SoonerBy.MakeInto => $"make {way.Tool!.Mark} into one; there is room for it in the worn tool.",
            _ => "forge, harden and grind one at once, before any other work.",
        };

    /// <summary>Where a capacity comes from.</summary>
    public static string Capacity(PatternCapacity capacity) =>
        $"{capacity.Pattern}: {Words.Heats(capacity.HeadsADay)} heads a day, "
        + (
            capacity.Sessions > 0
                ? $"the average of the busier half of {capacity.Sessions} sessions."
                : "assumed, since no session of it is closed yet (set heads_a_day)."
        );

    /// <summary>What no plan counts on, and places whose plan was given up.</summary>
    public static IEnumerable<string> NotPlanned(ForgeList list) =>
        list
            .Places.SelectMany(place => place.InService)
            .Where(tool => tool.WhyNot is not null)
            .GroupBy(tool => tool.WhyNot, tool => tool.Forecast.Tool.Mark.Text, StringComparer.Ordinal)
            .Select(tools => (Why: tools.Key, Marks: tools.Distinct(StringComparer.Ordinal).ToArray()))
            .Select(tools =>
                $"{Words.And(tools.Marks)} {(tools.Marks.Length == 1 ? "is" : "are")} not counted on: {tools.Why}."
            )
            .Concat(
                list.Places.Where(place => place.Needs is NotEnoughData)
                    .Select(place =>
                        $"{place.Demand.Tools} is not planned to the end: {((NotEnoughData)place.Needs).Why}."
                    )
            );

    /// <summary>Which cracks and breaks a plan reckons with, and what it leaves out.</summary>
    public static string CracksPlanned(ForgeList list)
    {
        string[] reckoned =
        [
            .. list
                .Places.Where(place => place.Failures > 0)
                .Select(place => $"{place.Demand.Tools} ({place.Failures} of its sort on record)"),
        ];
        return reckoned.Length == 0
            ? "Wear alone is planned for: a crack or a break on any heat, or a lost tool, is not."
            : $"Cracks and breaks are planned for where the records tell of some: {Words.And(reckoned)}. For the rest wear alone; a lost tool is not planned for.";
    }

    /// <summary>Whether heats a head are those of the records or first guesses.</summary>
    public static string HeatsAHeadUsed(ForgeList list)
    {
        string[] guessed =
        [
            .. list.Places.Where(place => !place.Demand.IsLearned).Select(place => place.Demand.Tools.ToString()),
        ];
        return list.Places.IsEmpty ? "No open order asks for heats."
            : guessed.Length == 0 ? "Heats a head are from the shop's records."
            : $"Heats a head are from the shop's records, but first guesses for {FirstOf(guessed)}.";
    }

    // a line of a screen has room for some names, and a shop may have any number
    private static string FirstOf(string[] names) =>
        Words.And(
            names.Length <= MostNamed ? names : [.. names.Take(MostNamed - 1), $"{names.Length - MostNamed + 1} more"]
        );

    public static string StockNotes(ForgeBatch batch) =>
        string.Concat(batch.Stock.Notes.Select(note => $" Stock: {note}."));

    /// <summary>A length to cut, not shorter than needed.</summary>
    private static string CutLength(double mm, LengthUnit units)
    {
        double step = units == LengthUnit.Mm ? 1 : SixteenthMm;
        return BarLength(Math.Ceiling((mm - RoundingMm) / step) * step, units);
    }

    /// <summary>A length that is left, not longer than it is.</summary>
    private static string LeftLength(double mm, LengthUnit units)
    {
        double step = units == LengthUnit.Mm ? 1 : SixteenthMm;
        return BarLength(Math.Floor((mm + RoundingMm) / step) * step, units);
    }

    /// <summary>A bar's section and size, as one asks for it.</summary>
    private static string BarSizeOf(BarSize size, LengthUnit units)
    {
        string other = size.B is { } b ? " x " + BarSide(b, units) : "";
        return $"{BarSide(size.A, units)}{other} {SectionKinds.Words.Word(size.Section)}";
    }

    /// <summary>A bar: by its name, or as one that is to be bought.</summary>
    public static string BarOf(BarWanted bar, LengthUnit units) =>
        bar.Name ?? $"new {bar.Steel} {BarSizeOf(bar.Size, units)}";

    /// <summary>What a batch is cut from.</summary>
    public static string CutsOf(BatchStock stock, LengthUnit units) =>
        string.Join(
            "; ",
            stock.Cuts.Select(cut =>
                $"{BarOf(cut.Bar, units)}: {cut.Pieces} x {CutLength(cut.PieceMm, units)}, {LeftLength(cut.LeftMm, units)} left"
            )
        );

    /// <summary>What a batch has bought.</summary>
    public static string? BuyOf(BatchStock stock, LengthUnit units) =>
        stock.Buy is { } buy ? $"{BarsOf(buy, units)}, for {buy.Pieces} x {CutLength(buy.PieceMm, units)}" : null;

    /// <summary>What is cut from one bar for all batches.</summary>
    public static string CutOf(BarUse bar, LengthUnit units, int most = int.MaxValue)
    {
        string what = bar.Bar.Name is null ? "" : $"{bar.Bar.Steel} {BarSizeOf(bar.Bar.Size, units)}, ";
        int named = bar.Batches.Length <= most ? bar.Batches.Length : most - 1;
        BatchOnBar[] more = [.. bar.Batches.Skip(named)];
        string pieces = string.Join(
            ", ",
            bar.Batches.Take(named)
                .Select(each =>
                    $"{each.Pieces} x {CutLength(each.PieceMm, units)} {each.Batch.Tools} by {each.Batch.ForgeBy:MM-dd}"
                )
                .Concat(
                    more.Length == 0
                        ? []
                        :
                        [
                            $"{Words.CountOf(more.Sum(each => each.Pieces), "piece")} more of {CutLength(more.Sum(each => each.Pieces * each.PieceMm), units)} together",
                        ]
                )
        );
        return $"{BarOf(bar.Bar, units)} ({what}{LeftLength(bar.LengthMm, units)}): {pieces}, {Words.CountOf(bar.Batches.Sum(each => each.Pieces), "cut")} of {SizeShown.Wear(bar.CutMm, units)}; {LeftLength(bar.LeftMm, units)} left";
    }

    /// <summary>What has to be bought.</summary>
    public static string BarsOf(BarsToBuy buy, LengthUnit units) =>
        $"{Words.CountOf(buy.Bars, "bar")} of {buy.Bar.Steel} {BarSizeOf(buy.Bar.Size, units)}, {LeftLength(buy.BarMm, units)}";

    /// <summary>A bar that two batches want.</summary>
    public static string SharedBarOf(SharedBar shared, LengthUnit units)
    {
        string batches = FirstOf([.. shared.Batches.Select(batch => $"{batch.Tools} by {batch.ForgeBy:MM-dd}")]);
        string enough = shared.IsTooShort ? "too short for all of them" : "long enough for all";
        return $"{shared.Batches.Length} batches need bar {BarOf(shared.Bar, units)} ({batches}): it is {enough}.";
    }

    private static string BarLength(double mm, LengthUnit units) =>
        units == LengthUnit.Mm
            ? $"{mm.ToString("0", System.Globalization.CultureInfo.InvariantCulture)} mm"
            : $"{SizeShown.Eye(Length.FromMm(mm), units)} in";

    private static string BarSide(Length side, LengthUnit units) =>
        units == LengthUnit.Mm ? side.ToMmText() : SizeShown.Eye(side, units);

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
    public static string WallHeading(ForgeList list) => $"Forge list of {Words.Weekday(list.From)}";

    /// <summary>A batch in one plain sentence.</summary>
    public static string WallSentence(ForgeBatch batch, LengthUnit units)
    {
        string past = batch.IsLate
            ? $" (make this first: ready on {Words.Weekday(batch.ReadyBy)}, needed on {Words.Weekday(batch.Needed.WantedOn)}; until then {Words.Percent(batch.SureUntil)} sure)"
            : "";
        string what = batch.Number == 1 ? batch.Tools.ToString() : $"{batch.Tools}s";
        return $"{ToolsLeft(batch)}; make {Number(batch.Number)} {what} by {Words.Weekday(batch.ForgeBy)}{past} {FromStock(batch, units)}.";
    }

    /// <summary>What else there is to know of a batch.</summary>
    public static string WallDetails(ForgeBatch batch, LengthUnit units)
    {
        string[] made =
        [
            batch.Series is { Length: not null } ? $"{BatchSizes(batch, units, " x ")} {SizeShown.Mark(units)}" : "",
            batch.Series?.Steel ?? "",
            batch is { TotalCost: null, Hours: { } hours } ? $"{Words.Heats((double)hours)} hours" : "",
            batch.Stock.PieceKg is { } kg ? $"{kg.ToString("0.00", CultureInfo.InvariantCulture)} kg each" : "",
            batch.TotalCost is { } cost ? $"cost {Money((double)cost)}: {CostParts(batch.Cost, batch.Number)}" : "",
        ];
        return string.Join(", ", made.Where(part => part.Length > 0).DefaultIfEmpty("sizes as you choose"))
            + $". For order {batch.Needed.Order}, session of {Words.Weekday(batch.Needed.WantedOn)}; with one fewer {Words.Percent(batch.SureWithOneFewer)} sure."
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
            { Q50: { } heats } => isFirst
                ? $"about {Words.CountOf((int)Math.Round(heats), "heat")} left"
                : Words.About(heats),
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

    /// <summary>What the records say of sudden failures, with how few they are, and what decides.</summary>
    /// <param name="pulling">The answer.</param>
    /// <returns>Sentences.</returns>
    public static string FailedAt(EarlyPulling pulling)
    {
        string at = string.Join(", ", pulling.FailedAt.Select(Words.About));
        string has = pulling.HeatsFromNew is { } heats
            ? $"this one has {Words.About(heats)}"
            : "nobody knows how many this one has";
        return (
                pulling.FailedAt.IsEmpty
                    ? $"No tool of its sort failed on record; {has}."
                    : $"{Words.CountOf(pulling.FailedAt.Length, "tool")} of its sort cracked or broke, at {at} heats from new; {has}."
            ) + " No figure says that it holds: looking it over decides.";
    }
}
