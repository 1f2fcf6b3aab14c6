namespace ToolWear.Keys;

/// <summary>What the foot says of keys, and why one is refused.</summary>
internal static class KeyWords
{
    public const string OneBack = "one back";
    public const string LineIsEmpty =
        "Nothing is typed any more. Any other key, and then Bksp takes back what was recorded.";
    public const string WriteIt = "write";
    public const string TakeIt = "take";
    public const string NextOne = "next";
    public const string ToTheRack = "rack";
    public const string AsChart = "chart";
    public const string InWords = "words";
    public const string ALine = "line";
    public const string ATool = "tool";
    public const string RecordsMark = " *";
    public const string RecordsLegend =
        "* writes into the ledger: it is on the disk before the screen changes. Bksp takes it back.";
    public const string NothingToTakeBack = "Nothing was recorded in this sitting that could be taken back.";
    public const string NoPedal =
        "The pedal adds a heat to the tools that were put together: t leads to them, and t again puts one into the set.";
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
            Need.Row => "There is no row to speak of.",
            Need.MorePages => "All of it is on the screen.",
            Need.Recorded => NothingToTakeBack,
            Need.Chosen => "No tool is chosen for tonight: Space takes one.",
            Need.Pattern => "No pattern has been entered yet.",
            Need.Stage => "The session has no pattern with stages, so heads are asked for at the end only.",
            Need.Set => "No tools were put together: t does so while tools are chosen.",
            Need.InHand => "No tool is in the hand.",
            Need.Hands => "No hands are named: the shop page does so, as \"hands\".",
            Need.Tools => "There is no tool yet: a adds one, t takes a whole table.",
            Need.Gauges => "It has no other gauge mark.",
            Need.Choice => "There is nothing to choose from.",
            Need.Typing => "Nothing is being typed.",
            Need.Orders => "No order is open: o on the tool rack leads to the orders.",
            Need.Asked => "Nothing is asked.",
            Need.Working => "Nothing is being worked out.",
            Need.Eye => "There is no eye to speak of.",
            Need.Changed => "All of it is entered already.",
            Need.Pedal => NoPedal,
            Need.Years => "The records speak of no other year.",
            _ => "",
        };
}
