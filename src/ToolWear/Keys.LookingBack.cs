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
            new(ScreenName.Loans, Act.Add, ["a"], "a", "lend", Words.DoesLend, Need.Tools),
            new(
                ScreenName.Loans,
                Act.Enter,
                ["Enter"],
                "Enter",
                Words.TakeBackLent,
                Words.DoesTakeBackLent,
                Need.Row,
                Records: true
            ),
            new(
                ScreenName.Loans,
                Act.Find,
                FindingKeys,
                "letter",
                "a finding",
                Words.DoesFindOnReturn,
                Need.InHand,
                Records: true
            ),
            new(ScreenName.Loans, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.Loans, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Loans, Act.Back, ["Esc"], "Esc", "back", Words.DoesBackOrLater),
            new(ScreenName.StockTake, Act.Seen, ["s"], "s", "seen", Words.DoesSeen, Need.Row, Records: true),
            new(ScreenName.StockTake, Act.NotSeen, ["n"], "n", "not seen", Words.DoesNotSeen, Need.Row, Records: true),
            new(ScreenName.StockTake, Act.Words, ["w"], "w", Words.OnlyMissing, Words.DoesOnlyMissing, Need.Tools),
            new(ScreenName.StockTake, Act.Lose, ["x"], "x", "lost", Words.DoesScrapLost, Need.Row),
            new(
                ScreenName.StockTake,
                Act.Enter,
                ["Enter"],
                "Enter",
                "scrap it as lost",
                Words.DoesConfirmLost,
                Need.Asked,
                Records: true
            ),
            new(ScreenName.StockTake, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.StockTake, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.StockTake, Act.Back, ["Esc"], "Esc", "back", Words.DoesBackOrKeep),
        ];
}
