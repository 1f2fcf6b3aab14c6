using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Lifetimes;

// Weibull by greatest likelihood, S(t) = exp(-(t/eta)^b), d = 1 where the tool failed, s = heats when the watch began
// (t^b reads t^b - s^b throughout):
//   sum d/b + sum d ln t - sum d * sum t^b ln t / sum t^b = 0,   eta = (sum t^b / sum d)^(1/b)
// The left side falls with b, so the root is unique (NIST/SEMATECH e-Handbook 8.4.1.3).
// Standard errors from the second derivatives in ln eta and ln b, with z = (t/eta)^b and y = ln z:
//   -L_uu = b^2 sum z;   L_uv = b (sum z - sum d + sum z y);   -L_vv = sum z y (1+y) - sum d y
/// <summary>The Weibull curve that makes the recorded lifetimes most likely.</summary>
/// <remarks>It takes two failures, and is shown from <see cref="EnoughFailures"/> on: below that its shape is far too
/// sure of itself.</remarks>
/// <param name="Shape">b: above 1 cracks come late, below 1 early.</param>
/// <param name="Scale">eta in heats: 63 % have failed by then.</param>
/// <param name="LogLikelihood">ln of the likelihood.</param>
/// <param name="SeOfLogShape">Standard error of ln b.</param>
/// <param name="SeOfLogScale">Standard error of ln eta.</param>
/// <param name="Failures">How many failures it rests on.</param>
public sealed record WeibullFit(
    double Shape,
    double Scale,
    double LogLikelihood,
    double SeOfLogShape,
    double SeOfLogScale,
    int Failures
) : Estimated
{
    /// <summary>With at least so many failures the fit is better than the curve with a prior.</summary>
    public const int EnoughFailures = 8;

    private const double LeastShape = 1e-3;
    private const double MostShape = 1e3;

    /// <summary>Fits the curve.</summary>
    /// <param name="lifetimes">The tools in any order.</param>
    /// <returns>A <see cref="WeibullFit"/>, or <see cref="NotEnoughData"/> below two failures or where the failures do
    /// not tell the shape.</returns>
    public static Estimated Of(IReadOnlyCollection<WatchedLife> lifetimes)
    {
        WatchedLife[] watched = [.. lifetimes.Where(life => life.Heats > life.FromHeats)];
        int failures = watched.Count(life => life.Failed);
        if (failures < 2)
        {
            return new NotEnoughData(failures, 2, "a curve takes two tools that failed");
        }

        // heats in parts of the longest, so that t^b neither over- nor underflows to matter
        double longest = watched.Max(life => life.Heats);
        WeibullSums sums = new(watched, longest);
        double? shape = RisingRoot.Of(b => -sums.Score(b), 0, LeastShape, MostShape, 1);
        return shape is not { } b || b <= LeastShape
            ? new NotEnoughData(failures, failures + 1, "all failed at the same heats, which tells no shape")
            : sums.Fit(b);
    }

    /// <summary>S(t), the share that has not failed after some heats.</summary>
    /// <param name="heats">Zero or more.</param>
    /// <returns>Between 0 and 1.</returns>
    public double Surviving(double heats) => Math.Exp(-Math.Pow(Finite.NotNegative(heats) / Scale, Shape));

    /// <summary>The heats by which a share has failed: eta (-ln(1-p))^(1/b); p = 0.1 is B10.</summary>
    /// <param name="p">The share, above 0 and below 1.</param>
    /// <returns>Heats.</returns>
    public double HeatsAtFailed(double p) => Scale * Math.Pow(-Math.Log(1 - p), 1 / Shape);
}
