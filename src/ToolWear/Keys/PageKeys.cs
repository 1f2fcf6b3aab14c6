using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of the pages that look back.</summary>
internal static class PageKeys
{
    public static KeyRow[] All() => [.. LookingBack(), .. Lent()];

    private static KeyRow[] LookingBack() =>
        [
            .. On(
                ScreenName.WearCard,
                Key(Act.Gauge, "g", "gauge mark", Need.Gauges).Help("Shows the next gauge mark."),
                Key(Act.Words, "w", "words or chart").Help("Changes between the chart and the card in words."),
                Answer,
                Key(Act.Rework, "r", "rework", Need.InHand)
                    .Help(
                        "Enters what was done to the tool: dressed, straightened, tempered; what a finding asks for is offered."
                    ),
                Key(Act.Scrap, "x", "scrap", Need.InHand)
                    .Help(
                        "Scraps the tool, or says what it was made into; what it could still be made into stands below."
                    ),
                Key(Act.Move, "↑↓", "next tool or line", Need.Choice)
                    .Help("With the chart: the next tool of the rack. With the words: a line up or down."),
                Page,
                Back
            ),
            .. On(ScreenName.TrialPages, Scroll, Page, Back),
            .. On(
                ScreenName.LedgerPages,
                Answer with
                {
                    Records = true,
                },
                Key(Act.CrossOut, "x", "cross out", Need.Row)
                    .Help(
                        "Cross out the selected entry (asks why). It stays in the ledger but no longer counts. On a crossed-out entry: count it again."
                    ),
                Key(Act.Search, "/", "find")
                    .Help("Shows only entries with the words you type; Enter goes back to the list."),
                Choose,
                Page,
                Back
            ),
            .. On(
                ScreenName.ShopPage,
                Key(Act.Enter, "Enter", "change", records: true)
                    .Help("Changes the chosen setting; Enter again takes it. An empty one goes back to the usual."),
                Choose,
                Page,
                Back
            ),
            .. On(
                ScreenName.Year,
                Key(Act.Year, "←→", "another year", Need.Years).Help("Shows the year before or after."),
                Key(Act.GoLosses, "l", "losses").Help("Shows what ended tools in all records, and what led to it."),
                Stop,
                Scroll,
                Page,
                Back
            ),
            .. On(ScreenName.Losses, Choose, Page, Back),
        ];

    private static KeyRow[] Lent() =>
        [
            .. On(
                ScreenName.Loans,
                Key(Act.Add, "a", "lend", Need.Tools).Help("Asks which tool is lent to whom."),
                Key(Act.Enter, "Enter", KeyWords.TakeBackLent, Need.Row, records: true)
                    .Help(
                        "Takes the chosen tool back, and asks at once what looking it over has come to; while answering, takes the answer."
                    ),
                Key(Act.Find, "letter", "a finding", Need.InHand, records: true)
                    .Help("What was found on the tool that came back."),
                Key(Act.Part, "1-4", "where", Need.Asked, records: true).Help("Says where on the tool the finding is."),
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back; while a finding is asked for, looks the tool over later.")
            ),
            .. On(
                ScreenName.StockTake,
                Key(Act.Seen, "s", "seen", Need.Row, records: true)
                    .Help("The chosen tool is here; goes on to the next."),
                Key(Act.NotSeen, "n", "not seen", Need.Row, records: true)
                    .Help("The chosen tool is not to be found; goes on to the next."),
                Key(Act.Words, "w", KeyWords.OnlyMissing, Need.Tools)
                    .Help("Shows only the tools that were looked for and not seen, or all again."),
                Key(Act.Lose, "x", "lost", Need.Row).Help("Asks whether the chosen tool is to be scrapped as lost."),
                Key(Act.Enter, "Enter", "scrap it as lost", Need.Asked, records: true).Help("Scraps the tool as lost."),
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back; where it is asked whether a tool is scrapped, keeps it.")
            ),
        ];
}
