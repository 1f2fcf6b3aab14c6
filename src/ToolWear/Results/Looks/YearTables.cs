using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Years;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.Ranges;
using ToolWear.Wording;
using Cause = ToolWear.Results.Column<ToolWear.Core.Planning.Years.YearOfCause>;
using Head = ToolWear.Results.Column<ToolWear.Core.Planning.Years.YearOfHeads>;
using Measure = ToolWear.Results.Column<ToolWear.Core.Planning.Years.YearMeasured>;
using Ranges = ToolWear.Results.Column<ToolWear.Core.Wear.Ranges.KeptRanges>;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.Years.ShopYear>;
using Tool = ToolWear.Results.Column<ToolWear.Core.Planning.Years.YearOfTools>;

namespace ToolWear.Results.Looks;

/// <summary>A year of the shop.</summary>
internal static class YearTables
{
    /// <summary>How long tools lasted, by form, place and steel.</summary>
    public static Columns<YearOfTools> Lives { get; } =
    [
        Tool.Text(null, "Tools", tools => Sort(tools)),
        Tool.Text("form", null, tools => tools.Form),
        Tool.Place(null, tools => tools.Place),
        Tool.Text("steel", "Steel", tools => tools.Steel),
        Tool.Number("in_use", "In use", tools => tools.InUse)
            .Means("tools not scrapped at the end of the year, or today"),
        Tool.Number("added", "New", tools => tools.Added)
            .Means("tools that came in the year: made in it, or entered in it where the day of making is not known"),
        Tool.Number("scrapped", "Scrapped", tools => tools.Scrapped),
        Tool.Number("worn_out", "Worn out", tools => tools.WornOut).Means("tools scrapped as worn").Ranked(1),
        Tool.Number("ended", "Ended by then", tools => tools.Ended)
            .Ranked(2)
            .Means(
                "tools whose life had ended by the end of the year for a cause that lies in the tool, with heats from new known"
            ),
        new Tool("median_heats", "Half last", (tools, _) => Lasts(tools), "heats").Means(
            "weighted heats from new by which half of such tools were done; empty is not enough data"
        ),
        Tool.Number("median_lo95", "from", tools => Life(tools)?.Low95, Quantity.Heats)
            .Means("nineteen times in twenty at least so many"),
        Tool.Number("median_hi95", "to", tools => Life(tools)?.High95, Quantity.Heats)
            .Means("nineteen times in twenty at most so many; empty where the records set no bound"),
        Tool.Text("why", null, tools => tools.Life is NotEnoughData missing ? Words.Missing(missing) : null),
    ];

    /// <summary>What ended tools.</summary>
    public static Columns<YearOfCause> Causes { get; } =
    [
        Cause.Text("cause", "Cause", each => ToolScrapped.CauseWords.Word(each.Cause)),
        Cause.Number("scrapped", "Tools", each => each.Tools),
        Cause.Text("led_to", "What led to it", each => LossTable.LedTo(each.LedTo)),
    ];

    /// <summary>What was forged, by pattern.</summary>
    public static Columns<YearOfHeads> Heads { get; } =
    [
        Head.Text("pattern", "Pattern", heads => heads.Pattern, none: "no pattern"),
        Head.Number("sessions", "Sessions", heads => heads.Sessions),
        Head.Number("heads", "Heads", heads => heads.Heads),
        Head.Number("uncounted", "Not counted in", heads => heads.Uncounted)
            .Means("sessions in which nobody counted the heads"),
        Head.Number("cost_a_head", "A head", heads => Cost(heads)?.Value, Quantity.Money),
        Head.Number("cost_a_head_lo90", "from", heads => Cost(heads)?.Low90, Quantity.Money),
        Head.Number("cost_a_head_hi90", "to", heads => Cost(heads)?.High90, Quantity.Money),
        Head.Number("true_cost_a_head", "True a head", heads => heads.Cost?.TrueCostAHead, Quantity.Money),
    ];

    /// <summary>How much was measured.</summary>
    public static Columns<YearMeasured> Measured { get; } =
    [
        Measure.Number("readings", "Readings", year => year.Readings),
        Measure
            .Number("looked_over", "Looked over", year => year.Findings)
            .Means("times that a tool was looked over in the year"),
        Measure.Number("heats", "Heats worked", year => year.Heats, Quantity.Worked),
        Measure
            .Number("heats_read", "A reading followed", year => year.Followed, Quantity.Worked)
            .Means("those after which the tool was read before it was reworked or scrapped"),
        Measure
            .Number("share_read", "In 100 heats", year => year.Share, Quantity.InHundred)
            .Means("the share of the heats that a reading followed"),
    ];

    /// <summary>How the ranges held that were said before readings.</summary>
    public static Columns<KeptRanges> Kept { get; } =
    [
        Ranges.Text("form", null, kept => kept.Form),
        Ranges.Place(null, kept => kept.Place),
        Ranges.Number("readings", null, kept => kept.Readings),
        Ranges.Number("inside", null, kept => kept.Inside).Means("readings that lay in the range said before"),
        Ranges
            .Number("inside_model", null, kept => kept.InsideModel)
            .Means("readings that lay in the range as worked out, before it was widened"),
        Ranges
            .Number("widening", null, kept => kept.Widening, Quantity.Of("", "0.00"))
            .Means("how many times as wide the ranges of such tools are said as they are worked out"),
    ];

    /// <summary>The year in JSON.</summary>
    public static Columns<ShopYear> All { get; } =
    [
        Row.Number("year", null, year => year.Year).Means("the year"),
        Row.Part("tools", year => Lives.Over(year.Tools)),
        Row.Part("causes", year => Causes.Over(year.Causes)).Means("what ended tools in the year"),
        Row.Part("heads", year => Heads.Over(year.Heads)),
        Row.Part("measured", year => Measured.Of(year.Measured)).Means("how much was measured in the year"),
        Row.Part("ranges", year => Kept.Over(year.Ranges))
            .Means("how often the last readings lay in the range that was said before, by form and place"),
    ];

    /// <summary>Tools of one place and form in words.</summary>
    public static string Sort(YearOfTools tools) => Sort(tools.Form, tools.Place);

    /// <summary>The same by form and place.</summary>
    public static string Sort(string form, Place place) =>
        place == Place.None ? form : $"{Places.Words.Word(place)} {form}";

    /// <summary>How long half of the tools last, or how much is not known yet.</summary>
    public static Cell Lasts(YearOfTools tools) =>
        tools.Life is NotEnoughData missing
            ? Cell.Of(null, none: $"not enough data, {missing.Has} of {missing.Needs}")
            : Cell.Of(Life(tools)?.Heats, Words.About);

    private static MedianLife? Life(YearOfTools tools) => tools.Life as MedianLife;

    private static Estimate? Cost(YearOfHeads heads) => heads.Cost?.CostAHead as Estimate;
}
