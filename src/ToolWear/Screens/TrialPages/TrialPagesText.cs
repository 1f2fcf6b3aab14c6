using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Trials;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.TrialPages;

/// <summary>The text of the trials: what can be said, and in one line how much cannot.</summary>
internal static class TrialPagesText
{
    /// <summary>Draws the page.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="trials">The comparisons, null while they are being worked out.</param>
    /// <param name="kept">How the ranges held that were said before readings.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ShopTrialList? trials, string kept, int first)
    {
        string[] lines = trials is null ? [Words.WorkingOut] : [.. Lines(trials, kept, Math.Max(20, body.Width))];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            string line = lines[first + i];
            body.Put(0, i, line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong);
        }

        return lines.Length;
    }

    private static IEnumerable<string> Lines(ShopTrialList trials, string kept, int width)
    {
        foreach (ShopTrial trial in trials.Speaking)
        {
            yield return TrialOf(trial);
            foreach (string line in Picture.Wrap(TrialSays(trial), width - 2))
            {
                yield return "  " + line;
            }
        }

        foreach (string line in Picture.Wrap($"{Words.TrialsSilent(trials)}\n{Words.TrialAdvice}\n{kept}", width - 2))
        {
            yield return "  " + line;
        }
    }

    private static string TrialOf(ShopTrial trial) =>
        $"{ShopTrials.ByWords.Word(trial.By)}: {trial.A} or {trial.B}, {trial.Kind}";

    private static string TrialSays(ShopTrial trial) =>
        trial.Comparison.LifeRatio is Estimate ratio
            ? $"{Said(trial)}: {trial.A} lasts {Times(ratio.Value)} times as long as {trial.B}, nine times in ten "
                + $"{Times(ratio.Low90)} to {Times(ratio.High90 ?? ratio.Value)}; it wears at {Times(1 / ratio.Value)} times the rate."
            : Said(trial);

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
