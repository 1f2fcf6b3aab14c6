namespace ToolWear;

/// <content>The keys of a session and of the morning after.</content>
public static partial class Keys
{
    private static KeyRow[] AtTheHammer() =>
        [
            new(
                ScreenName.Choosing,
                Act.Enter,
                ["Enter"],
                "Enter",
                "begin",
                Words.DoesBegin,
                Need.Chosen,
                Records: true
            ),
            new(
                ScreenName.Choosing,
                Act.Heat,
                Digits,
                "1-9",
                "begin with a heat",
                Words.DoesBeginHeat,
                Need.Chosen,
                Records: true
            ),
            new(ScreenName.Choosing, Act.Toggle, ["Space"], "Space", "take or leave", Words.DoesToggle, Need.Row),
            new(ScreenName.Choosing, Act.Together, ["t"], "t", "together", Words.DoesTogether, Need.Row),
            new(ScreenName.Choosing, Act.Pattern, ["p"], "p", "pattern", Words.DoesPattern, Need.Pattern),
            new(ScreenName.Choosing, Act.GoHandOver, ["o"], "o", "hand over", Words.DoesHandOver, Need.Pattern),
            new(ScreenName.Choosing, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.Choosing, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.Choosing, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.Hammer, Act.Heat, Digits, "1-9", "heat", Words.DoesHeat, Need.Chosen, Records: true),
            new(ScreenName.Hammer, Act.Together, ["Space"], "Space", "set", Words.DoesSet, Need.Set, Records: true),
            // which key it is the shop says
            new(ScreenName.Hammer, Act.Pedal, [], "pedal", "pedal", Words.DoesPedal, Need.Pedal, Records: true),
            new(ScreenName.Hammer, Act.Head, Letters, "a-f", "head", Words.DoesHead, Need.Stage, Records: true),
            new(ScreenName.Hammer, Act.Close, ["s"], "s", "close", Words.DoesClose),
            new(ScreenName.Hammer, Act.Toggle, ["t"], "t", "tools", Words.DoesTools),
            new(ScreenName.Hammer, Act.GoHandOver, ["o"], "o", "hand over", Words.DoesHandOver, Need.Pattern),
            new(ScreenName.Hammer, Act.Back, ["Esc"], "Esc", "rack", Words.DoesBackOpen),
            new(ScreenName.HandOver, Act.Move, UpDown, "↑↓", "scroll", Words.DoesMove, Need.MorePages),
            new(ScreenName.HandOver, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.HandOver, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.Closing, Act.Enter, ["Enter"], "Enter", "close", Words.DoesClosing, Records: true),
            new(
                ScreenName.Closing,
                Act.Drop,
                ["n"],
                "n",
                "leave the orders",
                Words.DoesLeaveOrders,
                Need.Asked,
                Records: true
            ),
            new(ScreenName.Closing, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.Closing, Act.Back, ["Esc"], "Esc", "go on forging", Words.DoesGoOn),
        ];

    private static KeyRow[] Measuring() =>
        [
            new(ScreenName.CaliperRound, Act.Enter, ["Enter"], "Enter", "skip", Words.DoesTakeSize, Records: true),
            new(
                ScreenName.CaliperRound,
                Act.Find,
                FindingKeys,
                "letter",
                "a finding",
                Words.DoesFind,
                Need.InHand,
                Records: true
            ),
            new(ScreenName.CaliperRound, Act.Who, ["w"], "w", "who looks", Words.DoesWho, Need.Hands),
            new(ScreenName.CaliperRound, Act.Move, UpDown, "↑↓", "another tool", Words.DoesAnother, Need.Choice),
            new(ScreenName.CaliperRound, Act.Back, ["Esc"], "Esc", "done", Words.DoesEndRound),
        ];
}
