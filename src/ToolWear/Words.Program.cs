namespace ToolWear;

/// <content>What the program says about itself.</content>
public static partial class Words
{
    /// <summary>Something went wrong that is no fault of the user's.</summary>
    /// <param name="bug">What went wrong.</param>
    /// <returns>One line.</returns>
    public static string Bug(Exception bug) =>
        $"toolwear: this is a fault of the program, not yours: {bug.GetType().Name}: {bug.Message.ReplaceLineEndings(" ")}. "
        + "What was recorded is safe.";

    /// <summary>Where help is.</summary>
    /// <param name="verb">The verb with a space behind it, or nothing.</param>
    /// <returns>One line.</returns>
    public static string SeeHelp(string verb) => $"\"toolwear {verb}--help\" shows how it is used";
}
