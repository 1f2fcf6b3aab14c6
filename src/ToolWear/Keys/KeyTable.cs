using System.Collections.Immutable;

namespace ToolWear.Keys;

/// <summary>Every key of every screen: foot, help and what happens come from it.</summary>
internal static class KeyTable
{
    /// <summary>The keys for findings, in the order of the words of findings.</summary>
    public static ImmutableArray<string> FindingKeys { get; } =
    ["s", "m", "c", "k", "b", "e", "o", "g", "p", "h", "u", "l", "t", "x"];

    /// <summary>Every row, in the order of the foot.</summary>
    public static ImmutableArray<KeyRow> All { get; } =
    [
        .. RackKeys.All(),
        .. HammerKeys.All(),
        .. PageKeys.All(),
        .. PlanKeys.All(),
        .. EyeKeys.All(),
        Key(Act.Help, "?", "help")
            .Help(
                "Shows what this screen is for and every key that works on it. F1 works too, also while you type."
            ) with
        {
            Names = ["?", "F1"],
        },
        Key(Act.TakeBack, "Bksp", "undo", Need.Recorded, records: true)
            .Help(
                "Undoes the last entry of this sitting: it is crossed out in the ledger and stays visible there. A crossing out is undone too. While you type, it deletes the last character."
            ) with
        {
            Names = ["Backspace", "Delete"],
        },
        Key(Act.Leave, "Ctrl-C", "leave").Help("Leaves the program. Everything recorded is saved already.") with
        {
            Names = ["Ctrl+C"],
            OnlyInHelp = true,
        },
    ];

    public static KeyRow Do =>
        Key(Act.GoTool, "d", "do", Need.InHand)
            .Help(
                "Lists all you can do to the chosen tool: dress, re-forge, look over, set aside, lend, make into, scrap, re-mark. What a finding asks for stands first."
            );

    public static KeyRow Eyes =>
        Key(Act.GoEyes, "y", "eyes").Help("Shows every eye with its series and handle. Add eyes and handles there.");

    public static KeyRow Bars =>
        Key(Act.GoBars, "b", "bars").Help("Shows the bars in the rack and what could be cut from each.");

    public static KeyRow Shop => Key(Act.GoShop, "s", "shop").Help("Shows the shop's settings and the cautions.");

    public static KeyRow Choose => Key(Act.Move, "↑↓", "choose", Need.Choice).Help("Moves up and down in the list.");

    public static KeyRow Page => Key(Act.Page, "PgUp PgDn", "page", Need.MorePages).Help("Turns the page.");

    public static KeyRow Leave =>
        Key(Act.Leave, "q", "leave").Help("Leaves the program. Everything recorded is saved already.");

    public static KeyRow Cancel => Key(Act.Back, "Esc", "cancel", Need.Typing).Help("Leaves it as it was.");

    public static KeyRow Answer => Key(Act.Enter, "Enter", "save", Need.Typing).Help("Saves what you typed.");

    public static KeyRow NextCell =>
        Key(Act.Enter, "Enter", "next", records: true)
            .Help("Goes to the next question. After the last one the tool is saved.");

    public static KeyRow AnotherWord =>
        Key(Act.Move, "↑↓", "another word", Need.Choice)
            .Help("Shows the next or the previous word, where there is a choice.");

    public static KeyRow Back => Key(Act.Back, "Esc", "back").Help("Goes back. Nothing is lost.");

    public static KeyRow HandOver =>
        Key(Act.GoHandOver, "o", "hand over", Need.Pattern)
            .Help(
                "Shows a helper which tools to use, in order: how deep a drift goes, how it is cooled, when to stop."
            );

    public static KeyRow Scroll => Key(Act.Move, "↑↓", "scroll", Need.MorePages).Help("Moves up and down in the list.");

    public static KeyRow Stop => Key(Act.Stop, "x", "stop", Need.Working).Help("Stops what is being worked out.");

    public static KeyRow ChooseOrWord =>
        Key(Act.Move, "↑↓", "choose", Need.Choice)
            .Help("Moves up and down; in a choice of words, to the next or the previous one.");

    /// <summary>The keys of a screen: its own rows, then those that all screens have.</summary>
    public static IEnumerable<KeyRow> Of(ScreenName screen) =>
        All.Where(row => row.Where is null || row.Where == screen);

    /// <summary>A key of one screen or of all.</summary>
    public static KeyRow Key(Act act, string shown, string words, Need need = Need.Nothing, bool records = false) =>
        new(act, shown, words, need, records);

    /// <summary>Rows as those of a screen.</summary>
    public static IEnumerable<KeyRow> On(ScreenName screen, params IEnumerable<KeyRow> rows) =>
        rows.Select(row => row with { Where = screen });
}
