using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Help;

/// <summary>The text of help, from the table of keys.</summary>
internal static class HelpText
{
    private const string AboutCosts =
        "What tools cost to make, a heat and a head: the forecast with its range, and beside it the true figure of tools that were scrapped. In the shop's own money at its own hourly rate. It names the costs that are not on record.";
    private const string AboutEyes =
        "Every eye with its outline, tolerance, series, the drifts that make it now, and its handle. The inner outline is the drift that is used first: it must lie inside, or it spoils what no later drift can close.";
    private const string AboutSeries =
        "The tools for one eye in the order of use: sizes at the mark, where the mark lies from the shank mark, how long each is made and how short it may get, bars, hours. A proposal rests on common practice: change what you like.";
    private const string AboutBars =
        "The bars in the rack, and what of the shop's series could be cut from the chosen one, forged on its end with the usual loss of 7 in 100. Where the bar is thinner than the tool it has to be upset.";
    private const string AboutForgeList =
        "What to forge for the open orders: how many, by when, why, from which bar, and what would change with one fewer, another certainty, more heads or a tool lost. The last two rows are the cut list and what else to mind.";
    private const string AboutHandOver =
        "For a helper: the tools to take for tonight's pattern, in the order of its stages; from which peg, after how many heats to stop, how deep to drive from the shank mark, how to cool. The verb hand-over prints the same.";
    private const string AboutLoans =
        "The tools that are lent out, longest first. A lent tool is on no rack and in no plan. When it comes back it is looked over; until a finding is sound its verdict is \"look it over\". Nobody here counted its heats elsewhere, so measure it too.";
    private const string AboutOrders =
        "The open orders by due date: heads, heats at the fire they take by the records or else by first guess, and the day the last head will be done if the hammer runs on its days. It names what cannot be done in time.";
    private const string AboutPatterns =
        "What is forged, stage by stage: which tool, which work, how many heats a head takes. The first guess is yours; closed sessions teach the real figure, which plans use once there are two.";
    private const string AboutStockTake =
        "Every tool that is not scrapped, with the last day on which the ledger shows that it was there: a stock-take, heats, a reading, a finding. s for seen, n for not seen; what was not seen is listed at the end. A tool that does not turn up is scrapped as lost.";
    private const string AboutLosses =
        "What ended tools, by form, steel, cause and hand, by all records: how many, after how many heats, and what led to it. What was made into another tool is no loss.";

    private const string AboutYear =
        "A look back at the year. Half last: the heats from new by which half of such tools were done, by all records to the end of the year, those still at work included; nineteen times in twenty it lies between the two figures. Tools whose earlier heats nobody knows are left out there. A reading followed: heats after which the tool was read before it was reworked or scrapped.";

    private const int KeyColumns = 11;

    /// <summary>Draws help.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="screen">The screen that is explained.</param>
    /// <param name="first">The first line shown, from 0.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ScreenName screen, int first)
    {
        List<(string Key, string Text)> lines = [.. Lines(screen, body.Width)];
        for (int i = 0; i < body.Height && first + i < lines.Count; i++)
        {
            (string key, string text) = lines[first + i];
            body.Put(0, i, key, Ink.Key, KeyColumns - 1);
            body.Put(key.Length == 0 && text.Length > 0 && text[0] != ' ' ? 0 : KeyColumns, i, text.TrimStart());
        }

        return lines.Count;
    }

    private static IEnumerable<(string Key, string Text)> Lines(ScreenName screen, int width)
    {
        foreach (string line in Picture.Wrap(About(screen), Math.Max(10, width)))
        {
            yield return ("", line);
        }

        yield return ("", "");
        foreach (KeyRow row in KeyTable.Of(screen))
        {
            string[] text = [.. Picture.Wrap(row.Does, Math.Max(10, width - KeyColumns))];
            yield return (row.Shown + (row.Records ? KeyWords.RecordsMark : ""), text[0]);
            foreach (string more in text.Skip(1))
            {
                yield return ("", " " + more);
            }
        }

        if (KeyTable.Of(screen).Any(row => row.Records && row.Where is not null))
        {
            yield return ("", "");
            foreach (string line in Picture.Wrap(KeyWords.RecordsLegend, Math.Max(10, width)))
            {
                yield return ("", line);
            }
        }
    }

    private static string About(ScreenName screen) =>
        screen switch
        {
            ScreenName.ToolRack =>
                "The tools in service, by eye and place: how far each is worn of the limit that ends it first, in the shop's unit; heats left, about and nine times in ten between; the eye a drift makes now; the verdict. Wear says nothing of cracks: no verdict calls a tool fit.",
            ScreenName.Choosing =>
                "Once a session: which tools stand at the hammer and what is forged. Each chosen row has a number, which is its key at the hammer.",
            ScreenName.Hammer => "The tally: one key a heat. The figures are the heats of this session.",
            ScreenName.Closing =>
                "Heads by stage, as you chalk them. Where a stage has heads but its tool has no heats, the heats are estimated from the pattern.",
            ScreenName.CaliperRound =>
                "What to measure, the tools used last first, and the selected tool. Type sizes any way you like: 36.5, 36,5 mm, 1.44\", 1 7/16. Measure cold: black is not cold.",
            ScreenName.WearCard =>
                "One tool: its readings, the expected wear in a band that holds it eight times in ten, the limit, and where the wear is expected to reach it. A break in the curve is a rework.",
            ScreenName.ToolPage =>
                "Everything you can do to one tool. What an open finding or the verdict asks for stands first, marked >, with the reason.",
            ScreenName.ForgeList => AboutForgeList,
            ScreenName.Orders => AboutOrders,
            ScreenName.Patterns => AboutPatterns,
            ScreenName.Costs => AboutCosts,
            ScreenName.Year => AboutYear,
            ScreenName.Losses => AboutLosses,
            ScreenName.Loans => AboutLoans,
            ScreenName.HandOver => AboutHandOver,
            ScreenName.StockTake => AboutStockTake,
            ScreenName.TrialPages =>
                "Steels, lubricants and ways of cooling compared by how long the tools last, where there are enough records.",
            ScreenName.LedgerPages => "Every entry, the last one first. Crossed-out entries stay but no longer count.",
            ScreenName.ShopPage =>
                "The shop's units, usual values and names. A change is an entry in the ledger like any other.",
            ScreenName.FirstStart => "The store is empty. A table of the tools you have takes a few seconds a tool.",
            ScreenName.Import =>
                "A table of tools, readings, heats, bars or orders as a spreadsheet saves it, or a folder that export wrote (into an empty store only). \"toolwear import --help\" says more.",
            ScreenName.ToolTable =>
                "One row a tool. Press Enter for the next cell; what repeats is carried down from the row above. Leave empty what can wait.",
            ScreenName.Eyes => AboutEyes,
            ScreenName.SeriesPages => AboutSeries,
            ScreenName.StockRack => AboutBars,
            ScreenName.NewTool => "One tool, question by question. Leave an answer empty if you do not know it.",
            _ => "",
        };
}
