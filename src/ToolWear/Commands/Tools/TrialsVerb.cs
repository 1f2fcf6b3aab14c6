using ToolWear.Commands.Calls;
using ToolWear.Core.Wear.Trials;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>trials: every comparison that the records allow.</summary>
internal static class TrialsVerb
{
    public static Verb Verb { get; } =
        new(
            "trials",
            "Compares all the steels, lubricants and coolings you used.",
            "trials",
            [],
            Run,
            "Tools of one kind are compared wherever they differ. The text leaves out what says nothing yet."
        );

    private static void Run(Call call)
    {
        ShopTrialList trials = new(ShopTrials.Of(call.Shop));
        bool isText = call.Format == "text";
        call.Print(
            Compared.All.Over(isText ? trials.Speaking : trials.All),
            after: $"\n{Words.TrialsSilent(trials)}\n{Words.TrialAdvice}\n{Words.TrialBasis}\n\n{(isText ? RangeWords.Kept(call.Forecasts.Ranges) + "\n" : "")}"
        );
    }
}
