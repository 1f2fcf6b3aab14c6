using ToolWear.Commands.Calls;
using ToolWear.Core.Wear.Trials;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>trials: every comparison that the records allow.</summary>
internal static class TrialsVerb
{
    public static Verb Verb { get; } =
        new(
            "trials",
            "Compares the shop's steels, lubricants and ways of cooling by how long tools last, wherever tools of a kind\n"
                + "differ in them. Text leaves out what says nothing yet.",
            "trials",
            [],
            Run
        );

    private static void Run(Call call)
    {
        ShopTrialList trials = new(ShopTrials.Of(call.Shop));
        bool isText = call.Format == "text";
        call.Print(
            Compared.All.Over(isText ? trials.Speaking : trials.All),
            after: $"\n{Words.TrialsSilent(trials)}\n{Words.TrialAdvice}\n{Words.TrialBasis}\n\n{(isText ? Wrapped.Of(RangeWords.Kept(call.Forecasts.Ranges)) : "")}"
        );
    }
}
