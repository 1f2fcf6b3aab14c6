namespace ToolWear;

/// <content>What the screen says that a helper is handed.</content>
public static partial class Words
{
    internal const string NoPatternTonight = "No pattern is chosen: p on the screen before chooses one.";
    internal const string AboutHandOver =
        "For a helper: the tools to take for tonight's pattern, in the order of its stages; from which peg, after how many heats to stop, how deep to drive from the shank mark, how to cool. The verb hand-over prints the same.";
}
