using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Findings;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Results.Tools.RackRow>;

namespace ToolWear.Results.Tools;

/// <summary>A tool on the rack with all that is said of it there.</summary>
internal sealed record RackRow(ShopForecasts All, ToolForecast Tool, bool IsNext)
{
    public Judged Verdict { get; } = All.VerdictOf(Tool);

    public EyeSize? Eye { get; } = EyeNow.Of(All, Tool)?.Eye;

    public Tool Made => Tool.Tool.Tool;

    // a squeezed drift swells a little at first: that is no wear
    public double? WornMm =>
        (Tool.Deciding?.WearNowMm ?? Tool.Deciding?.History.LastKnownWearMm) is { } worn ? Math.Max(0, worn) : null;

    /// <summary>What stands before it, for those who see no colour too.</summary>
    public string? Mark =>
        IsNext ? ">"
        : Verdict.Verdict < Core.Findings.Verdict.NearItsLimit ? "!"
        : null;

    public string NotFollowed => Tool.HeatsLeft is null || Tool.FollowedToItsLimit ? "" : Words.NotFollowedMark;
}

/// <summary>The tool rack, with the pinned columns.</summary>
internal static class RackTable
{
    public const string MarksExplained = "> use next; ! do not use as is.";

    public static Column<RackRow> Next { get; } = Row.Text(null, "", row => row.Mark, none: "");

    public static Column<RackRow> Tool { get; } = Row.Text("tool", "Tool", row => row.Made.Mark.Text);

    public static Column<RackRow> EyeName { get; } = Row.Text("eye", "Eye", row => row.Made.Eye).Ranked(4);

    public static Column<RackRow> What { get; } = Row.Text(null, "What", row => PlaceOrForm(row.Made)).Ranked(5);

    public static Column<RackRow> Worn { get; } = Row.Number(null, "Worn", row => row.WornMm, Quantity.Wear).Ranked(2);

    public static Column<RackRow> Limit { get; } =
        Row.Number(null, "Of", row => row.Tool.Deciding?.History.Wear.LimitMm, Quantity.Wear).Ranked(2);

    public static Column<RackRow> Left { get; } =
        Row.Number("heats_left", "Left", row => row.Tool.HeatsLeft?.Q50, Quantity.Heats);

    public static Column<RackRow> LeftFrom { get; } =
        Row.Number("left_lo90", "from", row => row.Tool.HeatsLeft?.Q05, Quantity.Heats).Ranked(1);

    public static Column<RackRow> LeftTo { get; } =
        Row.Number("left_hi90", "to", row => row.Tool.HeatsLeft?.Q95, Quantity.Heats).Ranked(1);

    /// <summary>Nine times in ten between the two, for people.</summary>
    public static Column<RackRow> Range { get; } = Row.Text(null, "9 in 10", InRange).Ranked(1);

    public static Column<RackRow> EyeLength { get; } =
        Row.Number("eye_length_mm", "Eye L", row => row.Eye?.LengthMm, Quantity.Size)
            .Means("the length of the cold eye that the drift makes now")
            .Ranked(3);

    public static Column<RackRow> EyeWidth { get; } =
        Row.Number("eye_width_mm", "Eye W", row => row.Eye?.WidthMm, Quantity.Size)
            .Means("the width of the cold eye that the drift makes now")
            .Ranked(3);

    /// <summary>The eye that a drift makes now, for people.</summary>
    public static Column<RackRow> EyeNow { get; } =
        new Row(
            null,
            "Eye now",
            (row, units) =>
                Cell.Of(row.Eye is null ? null : $"{EyeLength.Of(row, units).Shown}x{EyeWidth.Of(row, units).Shown}")
        ).Ranked(3);

    public static Column<RackRow> Verdict { get; } =
        new Row("verdict", "Verdict", (row, _) => Cell.Of(row.Verdict.Word, AsideOr(row.Tool.Tool, row.Verdict))).Means(
            "out, dress first, past its limit, near its limit, look it over, measure it, inside its limit; in comparisons which lasts longer"
        );

    public static Column<RackRow> Why { get; } =
        Row.Text("why", null, row => row.Verdict.Why).Means("one sentence why");

    public static Column<RackRow> LookedOver { get; } =
        Row.Day("looked_over_on", null, row => Core.Findings.LookedOver.Of(row.All.Shop, row.Tool.Tool).Last?.On)
            .Means("the day the tool was last looked over");

    public static Columns<RackRow> Columns { get; } =
    [
        Next,
        Tool,
        Row.Text("form", null, row => row.Made.Form.Name),
        EyeName,
        Row.Place(null, row => row.Made.Place),
        What,
        Row.Text("steel", null, row => row.Made.Steel),
        Row.Text("state", null, row => ToolStates.Words.Word(row.Tool.Tool.State))
            .Means("of a tool: in service, set aside, scrapped"),
        Verdict.InFiles,
        Why,
        Row.Text("gauge", null, row => row.Tool.Deciding?.History.Gauge.Name)
            .Means("the gauge mark that ends the tool first"),
        Worn,
        Limit,
        Left,
        Range,
        LeftFrom.InFiles,
        LeftTo.InFiles,
        EyeNow,
        EyeLength.InFiles,
        EyeWidth.InFiles,
        Verdict.ForPeople,
        LookedOver,
        Row.Text("next", null, row => row.IsNext ? "yes" : null).Means("yes for the tool to use next"),
    ];

    private static string? InRange(RackRow row) =>
        row.Tool.HeatsLeft is not { Q05: { } low } left ? null
        : left.Q95 is { } high ? $"{Words.About(low)}-{Words.About(high)}{row.NotFollowed}"
        : $"over {Words.About(low)}{row.NotFollowed}";

    /// <summary>A row for each tool that is not scrapped.</summary>
    public static ImmutableArray<RackRow> Rows(ShopForecasts all)
    {
        ImmutableHashSet<long> next = NextToTake.Of(all);
        return [.. all.Tools.Select(tool => new RackRow(all, tool, next.Contains(tool.Tool.Id)))];
    }

    /// <summary>A tool in one word: its place in the series, else its form.</summary>
    public static string PlaceOrForm(Tool tool) =>
        tool.Place == Place.None ? tool.Form.Name : Places.Words.Word(tool.Place);

    private static string AsideOr(ToolInShop tool, Judged verdict) =>
        tool.State != ToolState.SetAside
            ? verdict.Shown
            : (tool.Lent is not null ? "lent out" : "set aside")
                + (verdict.Verdict <= Core.Findings.Verdict.DressFirst ? $"; {verdict.Shown}" : "");
}
