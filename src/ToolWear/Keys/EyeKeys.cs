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
                    .Help("Enters a new eye, question by question; then a series is proposed for it."),
                Key(Act.NewHandle, "n", "new handle")
                    .Help("Enters a handle as bought or made; then an eye is asked for and a series proposed."),
                Key(Act.Enter, "Enter", "change", Need.Row, records: true)
                    .Help("Changes the chosen eye or handle; while answering, takes the answer."),
                Key(Act.GoSeries, "p", "series", Need.Row)
                    .Help(
                        "Goes to the series of the chosen eye, or proposes one; of a handle, asks for the eye first."
                    ),
                Bars,
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.SeriesPages,
                Key(Act.TakeAll, "t", "enter it", Need.Changed, records: true)
                    .Help(
                        "Enters every place that is new or changed in the ledger, all together. The tools themselves are added when they are made."
                    ),
                Key(Act.Enter, "Enter", "change", Need.Row)
                    .Help("Changes the chosen place; while answering, takes the answer."),
                Key(Act.Add, "a", "add a place", Need.Eye).Help("Adds a place to the series."),
                Key(Act.LeaveOut, "x", "leave out", Need.Row)
                    .Help("Leaves the chosen place out, where it is only proposed."),
                ChooseOrWord,
                Back
            ),
            .. On(
                ScreenName.StockRack,
                Key(Act.Add, "a", "add a bar").Help("Enters a new bar, question by question."),
                Key(Act.Enter, "Enter", "change", Need.Row, records: true)
                    .Help("Changes the chosen bar; while answering, takes the answer."),
                ChooseOrWord,
                Page,
                Back
            ),
        ];
}
