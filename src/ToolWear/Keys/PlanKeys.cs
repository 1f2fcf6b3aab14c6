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
                Key(Act.Enter, "Enter", "edit", Need.Row, records: true)
                    .Help("Edits the chosen order. While you answer a question: next."),
                Key(Act.Drop, "d", "drop", Need.Row, records: true)
                    .Help("Drops the chosen order: it is called off and no longer planned for. Bksp undoes it."),
                Key(Act.Finish, "x", "done", Need.Row, records: true)
                    .Help("Marks the chosen order as done, with all its heads."),
                Key(Act.GoPatterns, "p", "patterns")
                    .Help(
                        "Shows the patterns stage by stage: heats a head by first guess and by the records. Add patterns there."
                    ),
                ChooseOrWord,
                Page,
                Back
            ),
            .. On(
                ScreenName.Patterns,
                Key(Act.Add, "a", "new pattern").Help("Adds a pattern with its first stage, question by question."),
                Key(Act.NewStage, "n", "next stage", Need.Row).Help("Adds a stage after the chosen one."),
                Key(Act.Enter, "Enter", "edit", Need.Row, records: true)
                    .Help("Edits the chosen stage. While you answer a question: next."),
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
                        "Shows the plan with one tool fewer in the chosen batch: the certainty, the cost and the hours saved. Press again for the plan as it is."
                    ),
                Key(Act.Certainty, "s", "how sure", Need.Orders)
                    .Help("Shows another certainty beside the plan. Nothing is recorded."),
                Key(Act.MoreHeads, "h", "more heads", Need.Orders)
                    .Help("Shows more heads of an order beside the plan. Nothing is recorded."),
                Key(Act.Lose, "l", "a tool lost", Need.Orders)
                    .Help("Shows a lost tool beside the plan. Nothing is recorded."),
                Answer,
                Stop,
                Choose,
                Page,
                Key(Act.Back, "Esc", "back").Help("Goes back: first to the plan as it is, then to the tool rack.")
            ),
            .. On(
                ScreenName.Costs,
                Key(Act.Reforge, "r", "re-forge or scrap?", Need.Row)
                    .Help("Asks what a rework of such a tool costs and gains, and says which heat is cheaper."),
                Answer,
                Stop,
                Choose,
                Page,
                Back
            ),
        ];
}
