namespace ToolWear;

/// <content>What the program says about itself.</content>
public static partial class Words
{
    internal static string HeadsByStageStay(int sessions) =>
        $"heads by stage of {(sessions == 1 ? "one session" : $"{sessions} sessions")} have no column and stay behind; backup takes them along";

    /// <summary>Something went wrong that is no fault of the user's.</summary>
    /// <param name="bug">What went wrong.</param>
    /// <returns>One line.</returns>
    public static string Bug(Exception bug) =>
        $"toolwear: this is a fault of the program, not yours: {bug.GetType().Name}: {bug.Message.ReplaceLineEndings(" ")}. "
        + "What was recorded is safe.";

    /// <summary>There is no store to read.</summary>
    /// <param name="path">Where it was looked for.</param>
    /// <returns>One line.</returns>
    public static string NoShopYet(string path) =>
        $"there is no shop in {path} yet: \"toolwear import FILE\" or \"toolwear add-tool\" begins one, --store FILE names another";

    /// <summary>Where help is.</summary>
    /// <param name="verb">The verb with a space behind it, or nothing.</param>
    /// <returns>One line.</returns>
    public static string SeeHelp(string verb) => $"\"toolwear {verb}--help\" shows how it is used";
}
