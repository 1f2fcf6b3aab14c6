namespace ToolWear.Core.Wear.Lifetimes;

/// <summary>The sums of the Weibull likelihood, heats in parts of the longest.</summary>
internal sealed class WeibullSums
{
    private readonly (double Log, double LogFrom, bool Failed)[] lives;
    private readonly double longest;
    private readonly int d;
    private readonly double dLog;

    internal WeibullSums(IReadOnlyCollection<WatchedLife> watched, double longest)
    {
        this.longest = longest;
        lives =
        [
            .. watched.Select(life =>
                (Math.Log(life.Heats / longest), Math.Log(life.FromHeats / longest), life.Failed)
            ),
        ];
        d = lives.Count(life => life.Failed);
        dLog = lives.Where(life => life.Failed).Sum(life => life.Log);
    }

    /// <summary>sum d/b + sum d ln t - sum d * sum t^b ln t / sum t^b</summary>
    internal double Score(double b) => (d / b) + dLog - (d * Sum(b, log => log) / Sum(b, _ => 1));

    internal WeibullFit Fit(double b)
    {
        double logEta = Math.Log(Sum(b, _ => 1) / d) / b;
        double z(Func<double, double> factor) => Sum(b, log => factor(b * (log - logEta))) * Math.Exp(-b * logEta);
        double dy = b * (dLog - (d * logEta));
        double L_uu = -b * b * z(_ => 1);
        double L_uv = b * (z(_ => 1) - d + z(y => y));
        double L_vv = dy - z(y => y * (1 + y));
        double determinant = (L_uu * L_vv) - (L_uv * L_uv);
        // ln L = sum d (ln b - ln t + y) - sum z, in heats, not in parts of the longest
        double logLikelihood = (d * (Math.Log(b) - Math.Log(longest))) - dLog + dy - z(_ => 1);
        return new WeibullFit(
            b,
            longest * Math.Exp(logEta),
            logLikelihood,
            Math.Sqrt(-L_uu / determinant),
            Math.Sqrt(-L_vv / determinant),
            d
        );
    }

    // sum of t^b f(ln t) less that at the start of each watch, which is nothing where it began at zero heats
    private double Sum(double b, Func<double, double> f)
    {
        double sum = 0;
        foreach ((double log, double logFrom, _) in lives)
        {
            sum += Math.Exp(b * log) * f(log);
            sum -= double.IsFinite(logFrom) ? Math.Exp(b * logFrom) * f(logFrom) : 0;
        }

        return sum;
    }
}
