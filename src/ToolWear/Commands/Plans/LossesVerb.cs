using System.Collections.Immutable;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning.Years;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>losses: what was lost, and what led to it.</summary>
internal static class LossesVerb
{
    public static Verb Verb { get; } =
        new("losses", "Shows what ended tools, and after how many heats.", "losses", [], Run);

    private static void Run(Call call)
    {
        ImmutableArray<Loss> losses = Loss.All(call.Shop);
        call.Print(
            LossTable.Columns.Over(losses),
            $"{YearWords.LossesHeading}{Words.DemoMark(call.Shop)}\n\n",
            losses.IsEmpty ? $"{"No tool was scrapped yet."}\n" : $"\n{YearWords.LossesBasis}\n"
        );
    }
}
