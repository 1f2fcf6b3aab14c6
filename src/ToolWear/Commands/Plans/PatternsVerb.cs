using ToolWear.Commands.Calls;
using ToolWear.Core.Planning;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>patterns: what is forged, stage by stage.</summary>
internal static class PatternsVerb
{
    public static Verb Verb { get; } =
        new("patterns", "Shows the patterns stage by stage, with heats a head.", "patterns", [], Run);

    private static void Run(Call call)
    {
        call.Print(
            PatternTable.Columns.Over(HeatsAHead.Of(call.Shop).Values.SelectMany(each => each)),
            after: $"\n{Words.PatternsLegend}\n"
        );
    }
}
