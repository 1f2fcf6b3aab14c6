namespace ToolWear;

/// <content>The keys of orders, forge list and costs.</content>
public static partial class Keys
{
    private static KeyRow[] Planning() =>
        [
            new(ScreenName.Orders, Act.Add, ["a"], "a", "add", Words.DoesAddOrder, Need.Pattern),
            new(
                ScreenName.Orders,
                Act.Enter,
                ["Enter"],
                "Enter",
                "change",
                Words.DoesChangeOrder,
                Need.Row,
                Records: true
            ),
            new(ScreenName.Orders, Act.Drop, ["d"], "d", "drop", Words.DoesDropOrder, Need.Row, Records: true),
            new(ScreenName.Orders, Act.Finish, ["x"], "x", "done", Words.DoesFinishOrder, Need.Row, Records: true),
            new(ScreenName.Orders, Act.GoPatterns, ["p"], "p", "patterns", Words.DoesPatterns),
            new(ScreenName.Orders, Act.Move, UpDown, "↑↓", "choose", Words.DoesAnotherPattern, Need.Choice),
            new(ScreenName.Orders, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Orders, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.Patterns, Act.Add, ["a"], "a", "new pattern", Words.DoesAddPattern),
            new(ScreenName.Patterns, Act.NewStage, ["n"], "n", "next stage", Words.DoesNewStage, Need.Row),
            new(
                ScreenName.Patterns,
                Act.Enter,
                ["Enter"],
                "Enter",
                "change",
                Words.DoesChangeStage,
                Need.Row,
                Records: true
            ),
            new(ScreenName.Patterns, Act.LeaveOut, ["d"], "d", "drop", Words.DoesDropStage, Need.Row, Records: true),
            new(ScreenName.Patterns, Act.Move, UpDown, "↑↓", "choose", Words.DoesAnotherPattern, Need.Choice),
            new(ScreenName.Patterns, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Patterns, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.ForgeList, Act.Fewer, ["-"], "-", "one fewer", Words.DoesFewer, Need.Row),
            new(ScreenName.ForgeList, Act.Certainty, ["s"], "s", "how sure", Words.DoesCertainty, Need.Orders),
            new(ScreenName.ForgeList, Act.MoreHeads, ["h"], "h", "more heads", Words.DoesMoreHeads, Need.Orders),
            new(ScreenName.ForgeList, Act.Lose, ["l"], "l", "a tool lost", Words.DoesLose, Need.Orders),
            new(ScreenName.ForgeList, Act.Enter, ["Enter"], "Enter", "take", Words.DoesAnswer, Need.Typing),
            new(ScreenName.ForgeList, Act.Stop, ["x"], "x", "stop", Words.DoesStop, Need.Working),
            new(ScreenName.ForgeList, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.ForgeList, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.ForgeList, Act.Back, ["Esc"], "Esc", "back", Words.DoesBackToPlan),
            new(ScreenName.Costs, Act.Reforge, ["r"], "r", "re-forge or scrap?", Words.DoesReforge, Need.Row),
            new(ScreenName.Costs, Act.Enter, ["Enter"], "Enter", "take", Words.DoesAnswer, Need.Typing),
            new(ScreenName.Costs, Act.Stop, ["x"], "x", "stop", Words.DoesStop, Need.Working),
            new(ScreenName.Costs, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.Costs, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Costs, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
        ];
}
