using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Results.Tools;

namespace ToolWear;

/// <content>What the screens say.</content>
public static partial class Words
{
    internal const string RackHeading = "Tool rack";
    internal const string EveryEye = "all";
    internal const string WorkingOut = "being worked out";
    internal const string TakenBackAtOnce = "taken back at once";
    internal const string ExportTo = "Wear history into the file:";
    internal const string NoFileName = "Nothing was written: no file was named.";
    internal const string NotWorkedOut = "The forecasts are being worked out; once more in a moment.";

    internal const string NoTerminal =
        "the screens want a terminal for input and output (and TERM other than dumb); without one use the verbs: "
        + "rack, heats TOOL N, measure TOOL GAUGE SIZE, look-over TOOL FINDING, card TOOL; \"toolwear --help\" lists them all";

    internal static string HelpHeading(string of) => $"Help: {of}";

    internal static string StillOpen(Session open) =>
        $"Session {open.Name} is still open, nothing of it is lost: h goes on with it.";

    internal static string TakenBack(ImmutableArray<Entered> entries, LengthUnit units) =>
        $"Taken back: {Tools(entries)}{EntryWords.Of(entries[0].What, units)}"
        + (entries.Length > 1 ? $" and {entries.Length - 1} more" : "");

    internal static string FromOthers(ImmutableArray<Entered> entries, LengthUnit units) =>
        $"Added in another window: {Tools(entries[^1..])}{EntryWords.Of(entries[^1].What, units)}"
        + (entries.Length > 1 ? $" and {entries.Length - 1} more" : "");

    internal static string UsualExport(DateOnly today) =>
        string.Create(CultureInfo.InvariantCulture, $"wear-{today:yyyy-MM-dd}.csv");

    /// <summary>The wear history was written.</summary>
    /// <param name="readings">How many readings it holds.</param>
    /// <param name="path">Where.</param>
    /// <returns>A line.</returns>
    internal static string Exported(int readings, string path) => $"{readings} readings written to {path}";

    internal const string RackLegend =
        "> take next   * range may be too narrow   Heats left: an estimate, no permission";

    internal const string RackLegendShort = "Heats left: an estimate, no permission";

    /// <summary>What a screen is for.</summary>
    /// <param name="screen">Which.</param>
    /// <returns>A few sentences.</returns>
    internal static string About(ScreenName screen) =>
        screen switch
        {
            ScreenName.ToolRack =>
                "The tools in service, by eye and place. Worn of the limit that ends the tool first, in the shop's unit; heats left, about and nine times in ten between; the eye a drift would make now; the verdict. Wear says nothing of cracks: no verdict calls a tool fit.",
            ScreenName.Choosing =>
                "Once a session: which tools stand at the hammer and what is forged. Each chosen row has a number, which is its key at the hammer.",
            ScreenName.Hammer => "The tally. One key a heat. The figures are heats of this session.",
            ScreenName.Closing =>
                "Heads by stage, as you chalk them. Where a stage has heads and its tool no heats tallied, heats are estimated from the pattern.",
            ScreenName.CaliperRound =>
                "What wants measuring, the tools used last first, and the tool in the hand. Sizes in any way of writing: 36.5, 36,5 mm, 1.44\", 1 7/16. Measure cold: black is not cold.",
            ScreenName.WearCard =>
                "One tool: its readings, the wear to be expected with the band that holds it eight times in ten, the limit, the end to be expected. A break is a rework.",
            ScreenName.ForgeList => AboutForgeList,
            ScreenName.Orders => AboutOrders,
            ScreenName.Patterns => AboutPatterns,
            ScreenName.Costs => AboutCosts,
            ScreenName.Year => AboutYear,
            ScreenName.Loans => AboutLoans,
            ScreenName.HandOver => AboutHandOver,
            ScreenName.StockTake => AboutStockTake,
            ScreenName.TrialPages =>
                "Steels, lubricants and ways of cooling compared by how long the tools last, where the records can say something.",
            ScreenName.LedgerPages =>
                "Every entry there ever was, the last one first. Crossed out entries stay, and count no more.",
            ScreenName.ShopPage => "How the shop speaks and works. A change is an entry in the ledger like any other.",
            ScreenName.FirstStart => "The store is empty. A table of the tools you have takes a few seconds a tool.",
            ScreenName.ToolTable =>
                "A row a tool. Enter goes on to the next cell; what repeats is carried down from the row above. What is left empty can wait.",
            ScreenName.Eyes => AboutEyes,
            ScreenName.SeriesPages => AboutSeries,
            ScreenName.StockRack => AboutBars,
            ScreenName.NewTool => "One tool, question by question. An empty answer means: not known.",
            _ => "",
        };

    private static string Tools(ImmutableArray<Entered> entries)
    {
        string marks = string.Join(", ", entries.SelectMany(each => each.What.Tools).Distinct().Take(4));
        return marks.Length == 0 ? "" : marks + ": ";
    }
}
