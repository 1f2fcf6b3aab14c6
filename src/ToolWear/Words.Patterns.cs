using ToolWear.Results;

namespace ToolWear;

/// <content>What is said of patterns.</content>
public static partial class Words
{
    internal const string PatternsHeading = "Patterns";
    internal const string NewPatternHeading = "A new pattern: its first stage";
    internal const string NoPatterns = "No pattern has been entered yet: a adds one, stage by stage.";
    internal const string PatternsLegend =
        "Heats a head: the first guess, and what closed sessions taught; records count from two sessions on (3 by 5: 3 heats by 5 sessions).";
    internal const string StageOneLeft = "A pattern has at least one stage: it stays. Its orders can be dropped.";

    internal const string AboutPatterns =
        "What is forged, stage by stage: which tool, which work, how many heats a head takes. The first guess is yours; closed sessions teach the real figure, which plans use once there are two.";

    internal static string StageHeading(string pattern, string? stage) =>
        stage is null ? $"{pattern}: a stage more" : $"{pattern}: {stage}";

    internal static string PatternEntered(string pattern, int stages) =>
        $"Pattern {pattern} is entered, {CountOf(stages, "stage")} so far: n adds the next.";

    internal static string StageLeftOut(string pattern, string stage) => $"{pattern}: {stage} is out.";

    internal static string PatternThere(string pattern) =>
        $"there is a pattern {pattern} already: n adds a stage to it";

    internal static string LearnedOf(Cell heats, Cell sessions) =>
        heats.IsNumber ? $"{heats.Shown} by {sessions.Shown}" : "-";
}
