using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear;

/// <content>What is said at the hammer.</content>
public static partial class Words
{
    internal const string ChoosingHeading = "At the hammer: tools and pattern";
    internal const string UnknownSteel = "unknown";
    internal const string HeadsDone = "Heads:";
    internal const string HeadsFinished = "heads finished";
    internal const string NoSuchStage = "No stage has that letter.";
    internal const string ClosingQuestion = "How many heads went through each stage tonight?";
    internal const string ClosingQuestionWithoutPattern = "How many heads were finished tonight?";
    internal const string ClosingLegendWithoutPattern = "Empty: nobody counted.";
    internal const string ClosingLegend =
        "Empty: nobody counted. Where a stage has heads and none of its tools a tally, heats are estimated from the pattern and marked as estimated.";

    // common practice, no source: sold as air-hardening die and shock steels
    private static readonly string[] AirHardening = ["H10", "H11", "H12", "H13", "H21", "S7", "A2", "A6", "D2"];

    internal static string HammerHeading(Session? open) =>
        open is null ? "At the hammer" : $"At the hammer: {open.Name}{(open.Opened.Pattern is { } p ? ", " + p : "")}";

    internal static string ClosingHeading(Session? open) => $"Close the session {open?.Name}";

    internal static string PatternChosen(string? pattern, int tools, bool isFirst) =>
        $"Pattern: {pattern ?? "none"}    "
        + (
            tools == 0 ? "no tool chosen yet: Space takes one"
            : isFirst ? $"{tools} chosen"
            : $"{tools} chosen, as last time where there was one"
        );

    internal static string SessionOpen(string name) => $"Session {name} is open.";

    internal static string SessionClosed(string name, ImmutableArray<string> used) =>
        used.IsEmpty
            ? $"Session {name} is closed; no tool worked in it."
            : $"Session {name} is closed. To look over, and to measure once cold: {string.Join(", ", used)}";

    internal static string NoSuchRow(int row) => $"No row has the number {row}.";

    internal static string NoHeads(string text) => $"heads \"{text}\": a whole number up to 10000, or nothing";

    internal static string MoreToday(int left) =>
        left switch
        {
            0 => "! enough for today",
            >= 200 => "",
            _ => $"{left} more before it is near its limit",
        };

    internal static string MoreTodayShort(int left) => left is 0 or >= 200 ? MoreToday(left) : $"{left} more";

    internal static string Share(int key, ImmutableArray<string> marks) =>
        $"{key} {string.Join(" and ", marks)} share a heat";

    internal static string SetOf(ImmutableArray<string> marks) => $"Space: a heat to {string.Join(" + ", marks)}";

    internal static string HeatAdded(ImmutableArray<string> marks, Heats each) =>
        $"{string.Join(", ", marks)}: {(each == Core.Measure.Heats.Half ? "half a heat each" : "a heat")}, on the disk";

    internal static string HeadThrough(string stage, int heads) => $"{HeadsAt(stage, heads)}, on the disk";

    internal static string HeadsAt(string stage, int heads) => $"{stage}: {heads} {(heads == 1 ? "head" : "heads")}";

    internal static string HeatsOf(Heats heats) =>
        heats == Core.Measure.Heats.Half
            ? "half a heat"
            : $"{heats} {(heats == Core.Measure.Heats.Of(1) ? "heat" : "heats")}";

    internal static string WillEstimate(string mark, Heats heats) => $"{mark} {HeatsOf(heats)}, estimated";

    internal static string SteelsTonight(ImmutableArray<Tool> tools)
    {
        string[] hard =
        [
            .. tools.Where(tool => IsAirHardening(tool.Steel)).Select(tool => $"{tool.Mark} ({tool.Steel})"),
        ];
        string[] unknown = [.. tools.Where(tool => tool.Steel is null).Select(tool => tool.Mark.Text)];
        return (hard.Length == 0 ? "" : $"Air-hardening tonight: {string.Join(", ", hard)}. ")
            + (unknown.Length == 0 ? "" : $"Steel unknown, so no water: {string.Join(", ", unknown)}.");
    }

    internal static string OneLine(string text) => text.ReplaceLineEndings(" ");

    internal static bool IsAirHardening(string? steel) =>
        steel is not null && AirHardening.Contains(steel.Trim().ToUpperInvariant(), StringComparer.Ordinal);
}
