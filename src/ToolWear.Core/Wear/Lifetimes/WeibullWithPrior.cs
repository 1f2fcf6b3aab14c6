using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.Lifetimes;

// Grid posterior, which works with no failure at all:
//   ln b ~ N(ln 1.5, .5^2),  ln eta ~ N(ln 2 N0, 1),  61 x 121 points over +-4 sd
//   ln L = sum d (ln b + b ln t - b ln eta) - sum ((t/eta)^b - (s/eta)^b), s = heats when the watch began
//   S(t) = average of exp(-(t/eta)^b)
/// <summary>The Weibull curve of sudden failures that begins from what is common and moves to what was recorded.</summary>
public sealed class WeibullWithPrior
{
    private const int Shapes = 61;
    private const int Scales = 121;
    private const double Reach = 4;
    private const double MiddleShape = 1.5;
    private const double SdOfLogShape = 0.5;
    private const double SdOfLogScale = 1;

    private readonly (double w, double b, double logEta)[] points;
    private readonly Lazy<double[]> upTo;

    private WeibullWithPrior((double w, double b, double logEta)[] points, double guessHeats)
    {
        this.points = points;
        upTo = new Lazy<double[]>(() => Running(points));
        MeanShape = points.Sum(point => point.w * point.b);
        MeanLogShape = points.Sum(point => point.w * Math.Log(point.b));
        MeanLogScale = points.Sum(point => point.w * point.logEta);
        MedianLife = HeatsAtFailed(0.5, guessHeats);
        B10 = HeatsAtFailed(0.1, guessHeats);
    }

    /// <summary>The mean of the shape b.</summary>
    public double MeanShape { get; }

    /// <summary>The mean of ln b.</summary>
    public double MeanLogShape { get; }

    /// <summary>The mean of the logarithm of the scale eta in heats.</summary>
    public double MeanLogScale { get; }

    /// <summary>Heats by which half have failed.</summary>
    public double MedianLife { get; }

    /// <summary>Heats by which one in ten has failed.</summary>
    public double B10 { get; }

    /// <summary>The curve after the recorded lifetimes.</summary>
    /// <param name="lifetimes">The tools in any order; none at all leaves the prior.</param>
    /// <param name="guessHeats">N0, how many heats such a tool usually lasts, above zero.</param>
    /// <returns>The curve.</returns>
    public static WeibullWithPrior Of(IReadOnlyCollection<WatchedLife> lifetimes, double guessHeats)
    {
        double N0 = Finite.Positive(guessHeats);
        (double b, double logEta, double log)[] grid =
        [
            .. Grid2(N0).Select(at => (at.b, at.logEta, at.log + LogLikelihood(lifetimes, at.b, at.logEta))),
        ];
        double most = grid.Max(at => at.log);
        double[] w = Grid.Normalised(grid.Select(at => Math.Exp(at.log - most)));
        return new WeibullWithPrior([.. grid.Zip(w, (at, weight) => (weight, at.b, at.logEta))], N0);
    }

    /// <summary>S(t), the share that has not failed after some heats from new.</summary>
    /// <param name="heats">Zero or more.</param>
    /// <returns>Between 0 and 1.</returns>
    public double Surviving(double heats)
    {
        double log = Math.Log(Finite.NotNegative(heats));
        return heats > 0 ? points.Sum(point => point.w * Math.Exp(-Math.Exp(point.b * (log - point.logEta)))) : 1;
    }

    /// <summary>One pair of shape and scale, drawn as likely as it is.</summary>
    /// <param name="share">Chance, 0 to 1.</param>
    /// <returns>The shape b and the scale eta in heats.</returns>
    internal (double Shape, double Scale) At(double share)
    {
        double[] weights = upTo.Value;
        int at = weights.AsSpan().BinarySearch(share * weights[^1]);
        (_, double b, double logEta) = points[Math.Min(at < 0 ? ~at : at, points.Length - 1)];
        return (b, Math.Exp(logEta));
    }

    /// <summary>The points that weigh anything, for sums over the curve.</summary>
    /// <returns>Weight, shape and scale; the weights sum to 1.</returns>
    internal IEnumerable<(double Weight, double Shape, double Scale)> Thinned()
    {
        const double negligible = 1e-7;
        double kept = points.Where(point => point.w > negligible).Sum(point => point.w);
        return points
            .Where(point => point.w > negligible)
            .Select(point => (point.w / kept, point.b, Math.Exp(point.logEta)));
    }

    private static double[] Running((double w, double b, double logEta)[] points)
    {
        double sum = 0;
        return [.. points.Select(point => sum += point.w)];
    }

    private static IEnumerable<(double b, double logEta, double log)> Grid2(double N0)
    {
        for (int i = 0; i < Shapes; i++)
        {
            double zb = Reach * ((2.0 * i / (Shapes - 1)) - 1);
            for (int j = 0; j < Scales; j++)
            {
                double ze = Reach * ((2.0 * j / (Scales - 1)) - 1);
                yield return (
                    MiddleShape * Math.Exp(SdOfLogShape * zb),
                    Math.Log(2 * N0) + (SdOfLogScale * ze),
                    -((zb * zb) + (ze * ze)) / 2
                );
            }
        }
    }

    private static double LogLikelihood(IReadOnlyCollection<WatchedLife> lifetimes, double b, double logEta)
    {
        double sum = 0;
        foreach (WatchedLife life in lifetimes)
        {
            double y = b * (Math.Log(life.Heats) - logEta);
            sum += life.Failed ? Math.Log(b) + y : 0;
            sum -= Math.Exp(y) - Math.Exp(b * (Math.Log(life.FromHeats) - logEta));
        }

        return sum;
    }

    private double HeatsAtFailed(double p, double scale) =>
        RisingRoot.Of(t => 1 - Surviving(t), p, 0, double.MaxValue, scale)!.Value;
}
