using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of eyes and handles, of a series, and of the stock rack.</summary>
internal static class EyeKeys
{
    public static KeyRow[] All() =>
        [
            .. On(
                ScreenName.Eyes,
                Key(Act.Add, "a", "add an eye")
                    .Help("Adds an eye, question by question, then proposes a series for it."),
                Key(Act.NewHandle, "n", "new handle")
                    .Help("Adds a handle as bought or made, then asks for its eye and proposes a series."),
                Key(Act.Enter, "Enter", "edit", Need.Row, records: true)
                    .Help("Edits the chosen eye or handle. While you answer a question: next."),
                Key(Act.GoSeries, "p", "series", Need.Row)
                    .Help(
                        "Goes to the series of the chosen eye, or proposes one. For a handle it asks for the eye first."
                    ),
                Bars,
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.SeriesPages,
                Key(Act.TakeAll, "t", "save", Need.Changed, records: true)
                    .Help(
                        "Saves every new or changed place, all together. Add the tools themselves when you have made them."
                    ),
                Key(Act.Enter, "Enter", "edit", Need.Row)
                    .Help("Edits the chosen place. While you answer a question: next."),
                Key(Act.Add, "a", "add a place", Need.Eye).Help("Adds a place to the series."),
                Key(Act.LeaveOut, "x", "leave out", Need.Row)
                    .Help("Leaves out the chosen place, if it is only proposed."),
                ChooseOrWord,
                Back
            ),
            .. On(
                ScreenName.StockRack,
                Key(Act.Add, "a", "add a bar").Help("Adds a bar, question by question."),
                Key(Act.Enter, "Enter", "edit", Need.Row, records: true)
                    .Help("Edits the chosen bar. While you answer a question: next."),
                ChooseOrWord,
                Page,
                Back
            ),
        ];
}
