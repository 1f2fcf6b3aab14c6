namespace ToolWear;

/// <content>What help says of each key.</content>
public static partial class Words
{
    internal const string DoesHelp =
        "Shows what this screen is for and every key that works on it. F1 does too, also while you type.";
    internal const string OneBack = "one back";
    internal const string LineIsEmpty =
        "Nothing is typed any more. Any other key, and then Bksp takes back what was recorded.";
    internal const string DoesTakeBack =
        "Takes the last thing recorded in this sitting back. It is crossed out in the ledger and stays visible there; a crossing out is taken back too. While you type, it takes the last character back.";
    internal const string DoesLeave = "Leaves the program. What was recorded is on the disk already.";
    internal const string DoesBack = "Goes back. Nothing is lost.";
    internal const string DoesCancel = "Leaves it as it was.";
    internal const string DoesMove = "Moves up and down in the list.";
    internal const string DoesPage = "Turns the page.";
    internal const string DoesHammer =
        "Goes to the hammer: the tally of heats. Where no session is open, tools and pattern are chosen first; last time's are offered.";
    internal const string DoesMeasure =
        "Lists what wants measuring once cold, and takes sizes at once: type a size, Enter.";
    internal const string DoesCard = "Opens the wear card of the chosen tool. While a file name is typed, takes it.";
    internal const string DoesForge = "Lists what has to be forged for the open orders.";
    internal const string DoesLedger = "Shows every entry; entries are crossed out there.";
    internal const string DoesShop = "Shows the shop's settings and the cautions.";
    internal const string DoesNewTool = "Adds one tool, question by question.";
    internal const string DoesTable = "Enters the tools you have, row by row; what repeats is carried down.";
    internal const string DoesExport = "Writes the wear history as a CSV file; a name is offered, Enter takes it.";
    internal const string DoesBegin = "Opens the session with what is chosen.";
    internal const string DoesBeginHeat = "Opens the session with what is chosen and adds the first heat to that row.";
    internal const string DoesToggle = "Takes the tool for tonight, or leaves it on the rack. At most nine have a key.";
    internal const string DoesTogether =
        "Puts the tool into the set that works in one heat, such as drift and fuller, or takes it out.";
    internal const string DoesPattern =
        "Another pattern. The tools that its last session used are offered, else the ones to take next.";
    internal const string DoesHeat =
        "Adds a heat to the row with that number. A row of twins gives each half a heat. It is on the disk before the figure changes.";
    internal const string DoesSet = "Adds a heat to every tool of the set.";
    internal const string DoesHead =
        "Counts a head through the stage with that letter. It is on the disk before the figure changes.";
    internal const string DoesClose =
        "Ends the session: asks for heads by stage, fills in estimated heats where none were tallied.";
    internal const string DoesTools = "Changes the tools of tonight; the session goes on.";
    internal const string DoesBackOpen = "Goes to the rack; the session stays open.";
    internal const string DoesClosing = "Takes the number and goes to the next; on the last one, closes the session.";
    internal const string DoesGoOn = "Back to the hammer; the session stays open.";
    internal const string DoesTakeSize =
        "Takes the size that was typed. An improbable one is asked about once; Enter again takes it. With nothing typed, skips this gauge mark; after the last, shows the verdicts.";
    internal const string DoesEndRound =
        "Ends the round: shows the verdicts of the tools that were in the hand, then the rack.";

    // made anew each time: the keys are made with these words, so neither may wait for the other
    internal static string DoesFind =>
        "Before a size is typed: what was found on the tool in the hand. Any number can be entered. "
        + string.Join(
            ", ",
            Keys.FindingKeys.Zip(Core.Ledger.ToolLookedOver.FindingWords.All, (key, word) => $"{key} {word}")
        );
    internal const string DoesWho = "Who looks: the next of the names on the shop page.";
    internal const string DoesAnother = "Takes another tool of the list into the hand.";
    internal const string DoesGauge = "Shows the next gauge mark.";
    internal const string DoesWords = "Changes between the chart and the card in words.";
    internal const string DoesNextTool =
        "With the chart: the next tool of the rack. With the words: a line up or down.";
    internal const string DoesCrossOut =
        "Crosses the chosen entry out; asks why. It stays in the ledger and counts no more. One that is crossed out counts again.";
    internal const string DoesSearch = "Shows only entries with the words you type; Enter goes back to the list.";
    internal const string DoesAnswer = "Takes what was typed.";
    internal const string DoesChange =
        "Changes the chosen setting; Enter again takes it. An empty one goes back to the usual.";
    internal const string DoesDemo =
        "Opens an invented shop to look at, in a folder of its own that goes at the end. Your own shop stays as it is.";
    internal const string DoesImport = "Reads a folder of CSV files, or one CSV table of tools. All or nothing.";
    internal const string DoesNextCell = "Takes the answer and goes to the next. On the last one the tool is recorded.";
    internal const string DoesAnotherWord = "Where there is a choice of words: the next or the one before.";

    internal const string WriteIt = "write";
    internal const string TakeIt = "take";
    internal const string NextOne = "next";
    internal const string ToTheRack = "rack";
    internal const string AsChart = "chart";
    internal const string InWords = "words";
    internal const string ALine = "line";
    internal const string ATool = "tool";
    internal const string RecordsMark = " *";
    internal const string RecordsLegend =
        "* writes into the ledger: it is on the disk before the screen changes. Bksp takes it back.";

    /// <summary>What the foot says while questions are answered one after another.</summary>
    /// <param name="row">The key.</param>
    /// <param name="otherwise">What it says else.</param>
    /// <returns>A word or two.</returns>
    internal static string GuidedKey(KeyRow row, string otherwise) =>
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
    internal static string WhyNot(Need need) =>
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
            Need.EmptyStore => "The store is not empty: import goes into an empty one only.",
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
