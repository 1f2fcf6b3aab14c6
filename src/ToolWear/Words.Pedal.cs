namespace ToolWear;

/// <content>What is said of the foot pedal.</content>
public static partial class Words
{
    internal const string DoesPedal = "A heat for the set, or for the one tool there is (shop page: pedal_key).";
    internal const string NoPedal =
        "The pedal adds a heat to the tools that were put together: t leads to them, and t again puts one into the set.";

    internal static string PedalTaken(string key, KeyRow row) =>
        $"pedal_key \"{key}\": at the hammer {row.Shown} is \"{row.Words}\" already; a free key is wanted, such as p, Enter or F5";
}
