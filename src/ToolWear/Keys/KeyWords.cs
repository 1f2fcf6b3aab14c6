namespace ToolWear.Keys;

/// <summary>What the foot says of keys, and why one is refused.</summary>
internal static class KeyWords
{
    public const string OneBack = "one back";
    public const string LineIsEmpty = "The line is empty. Press another key first, then Bksp to undo the last entry.";
    public const string WriteIt = "write";
    public const string TakeIt = "save";
    public const string NextOne = "next";
    public const string ToTheRack = "rack";
    public const string AsChart = "chart";
    public const string InWords = "words";
    public const string ALine = "line";
    public const string ATool = "tool";
    public const string RecordsMark = " *";
    public const string RecordsLegend =
        "* writes into the ledger: it is saved before the screen changes. Bksp undoes it.";
    public const string NothingToTakeBack = "Nothing to undo: nothing was recorded in this sitting.";
    public const string NoPedal =
        "The pedal adds a heat to the tools that work together. Press t to see them, t again to put one into the set.";
    public const string TakeBackLent = "take back";
    public const string OnlyMissing = "only the missing";

    /// <summary>What the foot says while questions are answered one after another.</summary>
    /// <param name="row">The key.</param>
    /// <param name="otherwise">What it says else.</param>
    /// <returns>A word or two.</returns>
    public static string GuidedKey(KeyRow row, string otherwise) =>
        row.Act switch
        {
            Act.Enter => "next",
            Act.Move => "another word",
            Act.Back => "cancel",
            _ => otherwise,
        };

    /// <summary>Why a key is refused now.</summary>
    /// <param name="need">What is missing.</param>
    /// <returns>A sentence.</returns>
    public static string WhyNot(Need need) =>
        need switch
        {
            Need.Row => "Nothing is selected.",
            Need.MorePages => "All of it is on the screen.",
            Need.Recorded => NothingToTakeBack,
            Need.Chosen => "No tool is chosen for tonight. Press Space on one.",
            Need.Pattern => "There is no pattern yet.",
            Need.Stage => "The session has no pattern with stages. You are asked for heads at the end.",
            Need.Set => "No tools work together yet. Press t while you choose tools.",
            Need.InHand => "No tool is selected.",
            Need.Hands => "No hands are named. Name them on the shop page (hands).",
            Need.Tools => "No tools yet. Press a to add one, t to type a table.",
            Need.Gauges => "It has no other gauge mark.",
            Need.Choice => "There is nothing to choose from.",
            Need.Typing => "Nothing is being typed.",
            Need.Orders => "No order is open. Press o on the tool rack to add one.",
            Need.Asked => "Nothing is asked.",
            Need.Working => "Nothing is being worked out.",
            Need.Eye => "Add an eye first (a).",
            Need.Changed => "Everything is saved already.",
            Need.NewSession => "The session is open already.",
            Need.Pedal => NoPedal,
            Need.Years => "The records hold no other year.",
            _ => "",
        };
}
