using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of the pages that look back.</summary>
internal static class PageKeys
{
    public static KeyRow[] All() => [.. OneTool(), .. LookingBack(), .. Lent()];

    private static KeyRow[] OneTool() =>
        [
            .. On(
                ScreenName.WearCard,
                Key(Act.Gauge, "g", "gauge mark", Need.Gauges).Help("Shows the next gauge mark."),
                Key(Act.Words, "w", "words or chart").Help("Switches between the chart and the card in words."),
                Answer,
                Do,
                Key(Act.Rework, "r", "rework", Need.InHand)
                    .Help(
                        "Records what you did to the tool: dressed, straightened, tempered. It offers what a finding asks for."
                    ),
                Key(Act.Scrap, "x", "scrap", Need.InHand)
                    .Help(
                        "Scraps the tool, or records what it was made into. Below stands what it could still be made into."
                    ),
                Key(Act.Move, "↑↓", "next tool or line", Need.Choice)
                    .Help("With the chart: the next tool of the rack. With the words: a line up or down."),
                Page,
                Back
            ),
            .. On(
                ScreenName.ToolPage,
                Key(Act.Enter, "Enter", "choose", Need.Row, records: true)
                    .Help("Begins what is chosen. While you answer a question: next."),
                ChooseOrWord,
                Page,
                Back
            ),
        ];

    private static KeyRow[] LookingBack() =>
        [
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
                Key(Act.Enter, "Enter", "edit", records: true)
                    .Help("Edits the chosen setting; Enter again saves it. Leave it empty for the usual value."),
                Choose,
                Page,
                Back
            ),
            .. On(
                ScreenName.Year,
                Key(Act.Year, "←→", "another year", Need.Years).Help("Shows the previous or the next year."),
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
                        "Takes the chosen tool back and asks what you found when you looked it over. While you answer a question: next."
                    ),
                Key(Act.Find, "letter", "a finding", Need.InHand, records: true)
                    .Help("Records what you found on the tool that came back."),
                Key(Act.Part, "1-4", "where", Need.Asked, records: true).Help("Says where on the tool the finding is."),
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back. At the question for a finding: look the tool over later.")
            ),
            .. On(
                ScreenName.StockTake,
                Key(Act.Seen, "s", "seen", Need.Row, records: true)
                    .Help("Records that the chosen tool is here, and goes to the next."),
                Key(Act.NotSeen, "n", "not seen", Need.Row, records: true)
                    .Help("Records that the chosen tool was not found, and goes to the next."),
                Do,
                Key(Act.Words, "w", KeyWords.OnlyMissing, Need.Tools)
                    .Help("Shows only the tools that were looked for and not seen, or all again."),
                Key(Act.Lose, "x", "lost", Need.Row).Help("Asks whether to scrap the chosen tool as lost."),
                Key(Act.Enter, "Enter", "scrap it as lost", Need.Asked, records: true).Help("Scraps the tool as lost."),
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back. At the question whether to scrap a tool: keeps it.")
            ),
        ];
}
