using System.Collections.Immutable;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Wear.Lifetimes;

// R. Brookmeyer and J. Crowley (1982), Biometrics 38:29: the median is the first time at which S <= 1/2; its limits are
// the first times at which the lower and the upper limit of S are
/// <summary>The heats by which half of the tools have ended, those that go on taken for what they are.</summary>
/// <param name="Heats">The median, in heats from new.</param>
/// <param name="Low95">The lower limit, in heats; null where the curve gives none.</param>
/// <param name="High95">The upper limit; null where the curve does not bound it.</param>
public sealed record MedianLife(double Heats, double? Low95, double? High95) : Estimated
{
    /// <summary>So many tools must have ended before a median is named. Common practice, no source.</summary>
    public const int Fewest = 3;

    /// <summary>Reads the median off the survival curve.</summary>
    /// <param name="lives">The tools in any order; here one that ended for whatever cause has failed.</param>
    /// <returns>A <see cref="MedianLife"/>, or <see cref="NotEnoughData"/>.</returns>
    public static Estimated Of(IReadOnlyCollection<WatchedLife> lives)
    {
        int ended = lives.Count(life => life.Failed);
        if (ended < Fewest)
        {
            return new NotEnoughData(ended, Fewest, "tools that have ended");
        }

        ImmutableArray<SurvivalStep> steps = SurvivalCurve.Of(lives);
        return First(steps, step => step.Surviving) is not { } median
            ? new NotEnoughData(ended, (lives.Count + 1) / 2, "more than half still work")
            : new MedianLife(median, First(steps, step => step.Low95), First(steps, step => step.High95));
    }

    // a step at which nothing survives has no limits: the curve ends there
    private static double? First(ImmutableArray<SurvivalStep> steps, Func<SurvivalStep, double?> share)
    {
        foreach (SurvivalStep step in steps)
        {
            if (share(step) <= 0.5)
            {
                return step.Heats;
            }
        }

        return null;
    }
}
