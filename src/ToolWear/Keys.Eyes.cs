namespace ToolWear;

/// <content>The keys of eyes and handles, of a series, and of the stock rack.</content>
public static partial class Keys
{
    private static KeyRow[] EyesAndBars() =>
        [
            new(ScreenName.Eyes, Act.Add, ["a"], "a", "add an eye", Words.DoesAddEye),
            new(ScreenName.Eyes, Act.NewHandle, ["n"], "n", "new handle", Words.DoesAddHandle),
            new(ScreenName.Eyes, Act.Enter, ["Enter"], "Enter", "change", Words.DoesChangeEye, Need.Row, Records: true),
            new(ScreenName.Eyes, Act.GoSeries, ["p"], "p", "series", Words.DoesSeries, Need.Row),
            new(ScreenName.Eyes, Act.GoBars, ["b"], "b", "bars", Words.DoesBars),
            new(ScreenName.Eyes, Act.Move, UpDown, "↑↓", "choose", Words.DoesChooseOrWord, Need.Choice),
            new(ScreenName.Eyes, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Eyes, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(
                ScreenName.SeriesPages,
                Act.TakeAll,
                ["t"],
                "t",
                "enter it",
                Words.DoesTakeSeries,
                Need.Changed,
                Records: true
            ),
            new(ScreenName.SeriesPages, Act.Enter, ["Enter"], "Enter", "change", Words.DoesChangePlace, Need.Row),
            new(ScreenName.SeriesPages, Act.Add, ["a"], "a", "add a place", Words.DoesAddPlace, Need.Eye),
            new(ScreenName.SeriesPages, Act.LeaveOut, ["x"], "x", "leave out", Words.DoesLeaveOut, Need.Row),
            new(ScreenName.SeriesPages, Act.Move, UpDown, "↑↓", "choose", Words.DoesChooseOrWord, Need.Choice),
            new(ScreenName.SeriesPages, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.StockRack, Act.Add, ["a"], "a", "add a bar", Words.DoesAddBar),
            new(
                ScreenName.StockRack,
                Act.Enter,
                ["Enter"],
                "Enter",
                "change",
                Words.DoesChangeBar,
                Need.Row,
                Records: true
            ),
            new(ScreenName.StockRack, Act.Move, UpDown, "↑↓", "choose", Words.DoesChooseOrWord, Need.Choice),
            new(ScreenName.StockRack, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.StockRack, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
        ];
}
