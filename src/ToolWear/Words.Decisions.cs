using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear;

/// <content>What is said of pulling tools early and of splitting heats.</content>
public static partial class Words
{
    /// <summary>What the split of heats rests on.</summary>
    public const string SplitBasis =
        "The cheaper of the two whole numbers about the best. A drift's heat costs its making over its life, and fuel and time.";

    /// <summary>No pattern has that name.</summary>
    /// <param name="name">The name.</param>
    /// <param name="shop">The shop.</param>
    /// <returns>The sentence, with the patterns that there are.</returns>
    public static string NoPattern(string name, Shop shop) =>
        $"there is no pattern {name}: "
        + (shop.Patterns.IsEmpty ? "none has been entered yet" : $"there are {string.Join(", ", shop.Patterns.Keys)}");

    internal static string NoStageAt(string pattern, Place place) =>
        $"pattern {pattern} has no stage with a {Places.Words.Word(place)} tool";

    internal static string SplitMissing(NotEnoughData missing) =>
        $"{Missing(missing)} Give --least, --more and --helps.";

    internal static string PullWord(EarlyPulling answer) =>
        answer.Before is ChangeBeforeSession before
            ? before.Change
                ? "change it"
                : "keep it"
            : "not enough data";

    internal static string PullAnswer(EarlyPulling answer) =>
        (answer.Before, answer.Age) switch
        {
            (ChangeBeforeSession { Change: true }, _) => "change it before the session",
            (ChangeBeforeSession, AgeReplacement { AtHeats: { } at }) when answer.HeatsFromNew < at =>
                $"keep it; pull such tools at about {About(at)} heats from new",
            (ChangeBeforeSession, AgeReplacement { AtHeats: { } at }) =>
                $"keep it for this session, though it is past the {About(at)} heats at which such tools are best pulled",
            (ChangeBeforeSession, _) => "keep it, and use such tools to their limit",
            (NotEnoughData missing, _) => $"{Missing(missing)} Use it to its limit.",
            _ => "use it to its limit",
        };
}
