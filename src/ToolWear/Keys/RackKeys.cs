using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of the tool rack, of an empty store, and of help.</summary>
internal static class RackKeys
{
    public static KeyRow[] All() => [.. Rack(), .. Around()];

    private static KeyRow Import =>
        Key(Act.Import, "i", "import")
            .Help("Imports a table from a spreadsheet, or a folder of CSV files. It shows first what would come in.");

    private static KeyRow[] Rack() =>
        [
            .. On(
                ScreenName.ToolRack,
                Key(Act.GoHammer, "h", "hammer", Need.Tools)
                    .Help(
                        "Goes to the hammer to tally heats. Without an open session, choose tools and pattern first; last time's are offered."
                    ),
                Key(Act.GoMeasure, "m", "measure", Need.Tools)
                    .Help("Lists what to measure once it is cold. Type a size, then Enter."),
                Key(Act.Enter, "Enter", "card", Need.Row)
                    .Help("Opens the wear card of the chosen tool. While you type a file name: saves the file."),
                Do,
                Key(Act.GoForge, "f", "forge").Help("Lists what to forge for the open orders."),
                Key(Act.GoOrders, "o", "orders").Help("Shows the open orders: adds, changes and drops them."),
                Key(Act.GoCosts, "c", "costs", Need.Tools)
                    .Help("Shows what tools cost a heat and heads cost in tooling."),
                Eyes,
                Bars,
                Key(Act.GoTrials, "r", "trials", Need.Tools)
                    .Help(
                        "Shows with which steel, lubricant, cooling or hand tools last longer, where the records can say."
                    ),
                Key(Act.GoYear, "v", "year", Need.Tools)
                    .Help(
                        "Looks back on a year: how long tools lasted by place and steel, what ended them, heads, cost a head, how much was measured."
                    ),
                Key(Act.GoLoans, "n", "lent", Need.Tools)
                    .Help(
                        "Shows the tools that are lent out, to whom and for how long. Lend one or take one back there."
                    ),
                Key(Act.GoStockTake, "k", "stock-take", Need.Tools)
                    .Help("Walks through all tools, also those set aside and lent: seen or not seen."),
                Key(Act.GoLedger, "l", "ledger").Help("Shows every entry. Cross out a wrong one there."),
                Shop,
                Key(Act.GoNewTool, "a", "add").Help("Adds one tool, question by question."),
                Key(Act.GoTable, "t", "table")
                    .Help("Adds the tools you have, row by row. What repeats is carried down."),
                Import,
                Key(Act.Export, "e", "export", Need.Tools)
                    .Help("Writes the wear history as a CSV file. Press Enter to use the name offered."),
                Choose,
                Page,
                Leave,
                Cancel
            ),
        ];

    private static KeyRow[] Around() =>
        [
            .. On(
                ScreenName.FirstStart,
                Key(Act.GoTable, "t", "enter the tools I have")
                    .Help("Adds the tools you have, row by row. What repeats is carried down."),
                Key(Act.GoNewTool, "a", "add one tool").Help("Adds one tool, question by question."),
                Key(Act.Demo, "d", "demo")
                    .Help(
                        "Opens an invented shop to look at, in a folder of its own that goes at the end. Your own shop stays as it is."
                    ),
                Import,
                Eyes,
                Bars,
                Shop,
                Leave
            ),
            .. On(
                ScreenName.Import,
                Key(Act.Enter, "Enter", "try", records: true)
                    .Help("Shows what a table or folder would bring in; Enter again imports it."),
                Key(Act.Update, "u", "update", Need.Row)
                    .Help("Lets the table correct what the shop has already, or not (--update)."),
                Key(Act.LeaveOut, "x", "ignore unknown", Need.Row)
                    .Help("Leaves out unknown columns, or refuses them (--ignore-unknown)."),
                Key(Act.KeepUnknown, "n", "keep unknown", Need.Row)
                    .Help("Keeps unknown columns in the note, or refuses them (--keep-unknown)."),
                Key(Act.CarryDown, "d", "carry down", Need.Row)
                    .Help("Asks in which columns an empty cell repeats the one above (--carry-down)."),
                Key(Act.Day, "o", "on which day", Need.Row).Help("Asks for the day of the rows that name none (--on)."),
                Choose,
                Page,
                Back
            ),
            .. On(ScreenName.ToolTable, NextCell, AnotherWord, Back),
            .. On(ScreenName.NewTool, NextCell, AnotherWord, Back),
            .. On(
                ScreenName.Help,
                Key(Act.Back, "Esc", "back").Help("Goes back. Nothing is lost.") with
                {
                    Names = ["Esc", "Enter"],
                },
                Page
            ),
        ];
}
