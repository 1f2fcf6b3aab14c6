using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Trials;

namespace ToolWear;

/// <content>What the trials say.</content>
public static partial class Words
{
    internal const string TrialHeading = "Trials";
    internal const string TrialAdvice =
        "Two tools of each, read at least once, are the least for a word; a difference of a third usually takes more than four a side.";

    internal static string TrialOf(ShopTrial trial) =>
        $"{ShopTrials.ByWords.Word(trial.By)}: {trial.A} or {trial.B}, {trial.Kind}";

    internal static string TrialSays(ShopTrial trial) =>
        trial.Comparison.LifeRatio is Estimate ratio
            ? $"{Said(trial)}: {trial.A} lasts {Times(ratio.Value)} times as long as {trial.B}, nine times in ten "
                + $"{Times(ratio.Low90)} to {Times(ratio.High90 ?? ratio.Value)}; it wears at {Times(1 / ratio.Value)} times the rate."
            : Said(trial);

    internal static string TrialsSilent(ShopTrialList trials) =>
        trials.Silent switch
        {
            0 when trials.All.IsEmpty => "No tools of one kind differ in steel, lubricant, cooling or hand yet.",
            0 => "Every comparison that the records allow stands above.",
            1 when trials.All.IsEmpty => "One comparison has too little to say anything yet.",
            int silent when trials.All.IsEmpty => $"{silent} comparisons have too little to say anything yet.",
            1 => "One comparison more has too little to say anything.",
            int silent => $"{silent} comparisons more have too little to say anything.",
        };

    private static string Said(ShopTrial trial) =>
        trial.Comparison.Verdict switch
        {
            TrialVerdict.ALastsLonger => $"{trial.A} lasts longer",
            TrialVerdict.BLastsLonger => $"{trial.B} lasts longer",
            TrialVerdict.LeaningToA => $"leaning to {trial.A}",
            TrialVerdict.LeaningToB => $"leaning to {trial.B}",
            TrialVerdict.PracticallyEqual => "practically equal",
            _ => "not enough data",
        };

    private static string Times(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);
}
