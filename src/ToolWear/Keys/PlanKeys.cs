using static ToolWear.Keys.KeyTable;

namespace ToolWear.Keys;

/// <summary>The keys of orders, patterns, forge list and costs.</summary>
internal static class PlanKeys
{
    public static KeyRow[] All() =>
        [
            .. On(
                ScreenName.Orders,
                Key(Act.Add, "a", "add", Need.Pattern).Help("Adds an order, question by question."),
                Key(Act.Enter, "Enter", "change", Need.Row, records: true)
                    .Help("Changes the chosen order; while answering, takes the answer."),
                Key(Act.Drop, "d", "drop", Need.Row, records: true)
                    .Help("Drops the chosen order: it is called off and no longer planned for. One key undoes it."),
                Key(Act.Finish, "x", "done", Need.Row, records: true)
                    .Help("Says that the chosen order is done, all heads of it."),
                Key(Act.GoPatterns, "p", "patterns")
                    .Help(
                        "Shows the patterns stage by stage: heats a head by first guess and by the records. Patterns are entered there."
                    ),
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.Patterns,
                Key(Act.Add, "a", "new pattern").Help("Adds a pattern with its first stage, question by question."),
                Key(Act.NewStage, "n", "next stage", Need.Row).Help("Adds a stage behind the chosen one."),
                Key(Act.Enter, "Enter", "change", Need.Row, records: true)
                    .Help("Changes the chosen stage; while answering, takes the answer."),
                Key(Act.LeaveOut, "d", "drop", Need.Row, records: true)
                    .Help("Takes the chosen stage out of its pattern."),
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.ForgeList,
                Key(Act.Fewer, "-", "one fewer", Need.Row)
                    .Help(
                        "Shows what one tool fewer in the chosen batch would come to: the certainty, the cost and the hours saved. Once more: as planned."
                    ),
                Key(Act.Certainty, "s", "how sure", Need.Orders)
                    .Help("Another certainty, beside the plan as it is. Nothing is recorded."),
                Key(Act.MoreHeads, "h", "more heads", Need.Orders)
                    .Help("More heads of an order, beside the plan as it is. Nothing is recorded."),
                Key(Act.Lose, "l", "a tool lost", Need.Orders)
                    .Help("A tool lost, beside the plan as it is. Nothing is recorded."),
                Answer,
                Stop,
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back: first to the plan as it is, then to the tool rack.")
            ),
            .. On(
                ScreenName.Costs,
                Key(Act.Reforge, "r", "re-forge or scrap?", Need.Row)
                    .Help("Asks what a rework of such a tool takes and gains, and says which is the cheaper heat."),
                Answer,
                Stop,
                Choose,
                Page,
                Back
            ),
        ];
}
