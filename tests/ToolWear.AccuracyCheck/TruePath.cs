namespace ToolWear.AccuracyCheck;

// S(k) = S(k-1) + d, worn out when S >= limit; with life N, power b, running-in a (n0 = 4 heats):
//   d = limit [ a (e^(-(k-1)/n0) - e^(-k/n0)) + (1-a) ((k/N)^b - ((k-1)/N)^b) ] * severity
//   d = d [ 1 + (acc-1) min(1.5, max(0, (S/limit - .65)/.35))^.5 ],  then gamma with mean d and scale phi
/// <summary>The true wear of one tool, heat by heat.</summary>
/// <param name="WearMm">Wear after heat 1, 2, ...</param>
/// <param name="Life">Heats to the limit, between heats by a straight line; null where it is not reached.</param>
internal sealed record TruePath(double[] WearMm, double? Life)
{
    private const double RunInHeats = 4;
    private const double AccelerationFrom = 0.65;

    /// <summary>Wears out a tool.</summary>
    public static TruePath Draw(World world, Chance chance)
    {
        double limit = world.LimitMm;
        double[] S = new double[(int)Math.Ceiling(Math.Min(700, world.MedianLife * 6))];
        double N = world.MedianLife * Math.Exp(chance.Normal(world.Tau));
        double b = Math.Max(world.Power.Mean + chance.Normal(world.Power.Sd), 0.4);
        double now = chance.Normal(0.5 * world.SigmaMm);
        double severity = 1;
        int left = 0;
        double? life = null;
        for (int k = 1; k <= S.Length; k++)
        {
            if (world.Severity > 0 && left <= 0)
            {
                left = chance.Whole(3, 12);
                double s2 = Math.Log(1 + (world.Severity * world.Severity));
                severity = Math.Exp((-s2 / 2) + chance.Normal(Math.Sqrt(s2)));
            }

            left--;
            double runIn = Math.Exp(-(k - 1) / RunInHeats) - Math.Exp(-k / RunInHeats);
            double steady = Math.Pow(k / N, b) - Math.Pow((k - 1) / N, b);
            double d = limit * ((world.RunIn * runIn) + ((1 - world.RunIn) * steady)) * severity;
            double late = Math.Clamp(((now / limit) - AccelerationFrom) / (1 - AccelerationFrom), 0, 1.5);
            d = chance.Gamma(d * (1 + ((world.Acceleration - 1) * Math.Sqrt(late))), world.PhiMm);
            if (life is null && now + d >= limit)
            {
                life = k - 1 + Math.Min(1, Math.Max(0, limit - now) / Math.Max(1e-12, d));
            }

            now += d;
            S[k - 1] = now;
        }

        return new(S, life);
    }
}
