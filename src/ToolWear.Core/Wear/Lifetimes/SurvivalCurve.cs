using System.Collections.Immutable;
using MathNet.Numerics.Distributions;

namespace ToolWear.Core.Wear.Lifetimes;

// E. L. Kaplan and P. Meier (1958), J. Am. Stat. Assoc. 53:457; M. Greenwood (1926). At each time of a failure, with
// n_i watched (begun before, not ended before) and d_i failed:
//   S = prod (1 - d_i/n_i);   g = sum d_i/(n_i (n_i - d_i));   se = S sqrt g
//   log-log limits: S^exp(-+ z sqrt g / ln S), z = 1.959964
/// <summary>The share of tools that outlive any heats, from records that may begin late and end early.</summary>
public static class SurvivalCurve
{
    private static readonly double z = Normal.InvCDF(0, 1, 0.975);

    /// <summary>The steps of the curve, in order of heats.</summary>
    /// <param name="lifetimes">The tools in any order.</param>
    /// <returns>One step a time with a failure; none without failures.</returns>
    public static ImmutableArray<SurvivalStep> Of(IReadOnlyCollection<WatchedLife> lifetimes)
    {
        ImmutableArray<SurvivalStep>.Builder steps = ImmutableArray.CreateBuilder<SurvivalStep>();
        double S = 1;
        double g = 0;
        foreach (
            IGrouping<double, WatchedLife> failed in lifetimes
                .Where(life => life.Failed)
                .GroupBy(life => life.Heats)
                .OrderBy(time => time.Key)
        )
        {
            // a watch that begins at the very heats of its failure still saw it
            int n = lifetimes.Count(life =>
                life.Heats >= failed.Key
                && (life.FromHeats < failed.Key || (life.Failed && life.Heats == life.FromHeats))
            );
            int d = failed.Count();
            S *= 1 - ((double)d / n);
            g += n > d ? d / ((double)n * (n - d)) : 0;
            steps.Add(Step(failed.Key, n, d, n > d ? S : 0, g));
        }

        return steps.ToImmutable();
    }

    private static SurvivalStep Step(double heats, int n, int d, double S, double g)
    {
        if (S <= 0)
        {
            return new SurvivalStep(heats, n, d, 0, null, null, null);
        }

        double spread = z * Math.Sqrt(g) / -Math.Log(S);
        return new SurvivalStep(
            heats,
            n,
            d,
            S,
            S * Math.Sqrt(g),
            Math.Pow(S, Math.Exp(spread)),
            Math.Pow(S, Math.Exp(-spread))
        );
    }
}
