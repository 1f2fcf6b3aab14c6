namespace ToolWear.Tests.Screens;

/// <summary>The recorded evening and the morning after: the keys, step by step.</summary>
internal static class EveningScript
{
    /// <summary>From the rack to the end of the session.</summary>
    public static IReadOnlyList<(string Caption, string[] Keys)> Night { get; } =
    [
        ("the rack", []),
        ("last time's tools and pattern are offered", ["h"]),
        ("the session is open", ["Enter"]),
        ("five heats on two drifts", ["3", "3", "3", "4", "4"]),
        ("two heads through the cheeks", ["c", "c"]),
        ("closing offers the heads that were counted", ["s"]),
        ("each Enter takes one number; the open order is asked about once", [.. Enumerable.Repeat("Enter", 6)]),
        ("closed, and the order counted down", ["Enter"]),
    ];

    /// <summary>The caliper round, a card, the forge list, and the export up to the name of the file.</summary>
    public static IReadOnlyList<(string Caption, string[] Keys)> Morning { get; } =
    [
        ("the rack, the morning after", []),
        ("to measure, the tools of last night first", ["m"]),
        ("H5: a size is typed", ["1", "3", ",", "2"]),
        ("taken, and the next gauge mark", ["Enter"]),
        ("H5: what was found?", ["3", "4", ".", "1", "Enter"]),
        ("H5 is sound, H2ND is in the hand", ["Enter"]),
        ("H2ND: its width, its length skipped, and sound", ["1", "5", ".", "7", "5", "Enter", "Enter", "Enter"]),
        ("the verdicts", ["Esc"]),
        ("the rack", ["Enter"]),
        ("down to H5, its card", ["Down", "Down", "Down", "Down", "Down", "Down", "Enter"]),
        ("the rack again", ["Esc"]),
        ("the forge list", ["f"]),
        ("a name for the wear history is offered", ["Esc", "e"]),
    ];
}
