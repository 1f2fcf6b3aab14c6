namespace ToolWear;

/// <content>The keys of the pages that look back.</content>
public static partial class Keys
{
    private static KeyRow[] LookingBack() =>
        [
            new(ScreenName.Year, Act.Year, LeftRight, "←→", "another year", Words.DoesAnotherYear, Need.Years),
            new(ScreenName.Year, Act.Stop, ["x"], "x", "stop", Words.DoesStop, Need.Working),
            new(ScreenName.Year, Act.Move, UpDown, "↑↓", "scroll", Words.DoesMove, Need.MorePages),
            new(ScreenName.Year, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Year, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
        ];
}
