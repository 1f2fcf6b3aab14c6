namespace ToolWear.Core.Wear.Figures;

// Against x = ln k the logit of a cdf of heats, y = ln(p/(1-p)), is nearly a straight line. All points that were worked
// out serve every quantile: x(y) is interpolated through the two nearest on either side (Lagrange), between brackets.
/// <summary>Where a cdf of heats left reaches given chances.</summary>
/// <param name="cdf">A function of k that never falls, 0 to 1.</param>
/// <param name="first">Where to begin, above zero.</param>
/// <param name="most">Where to give up.</param>
internal sealed class LogitRoots(Func<double, double> cdf, double first, double most)
{
    // relative to k: far below what the pinned quantiles are held to
    private const double Accuracy = 1e-8;
    private const double Least = 1e-9;
    private readonly List<(double x, double y)> known = [];

    /// <summary>k of the chance p, 0 where it is reached at once, null beyond the most.</summary>
    internal double? At(double p)
    {
        double y = Math.Log(p / (1 - p));
        double step = 1;
        if (known.Count == 0)
        {
            Add(Math.Log(first));
        }

        for (int turn = 1; ; turn++)
        {
            int above = known.FindIndex(point => point.y >= y);
            if (above < 0)
            {
                if (known[^1].x >= Math.Log(most))
                {
                    return null;
                }

                Add(Math.Min(known[^1].x + step, Math.Log(most)));
                step *= 2;
            }
            else if (above == 0)
            {
                if (known[0].x < Math.Log(Least))
                {
                    return 0;
                }

                Add(known[0].x - step);
                step *= 2;
            }
            else
            {
                (double low, double high) = (known[above - 1].x, known[above].x);
                double x = turn % 4 == 0 ? double.NaN : Between(y, above);
                x = x > low && x < high ? x : (low + high) / 2;
                if (Math.Min(x - low, high - x) < Accuracy)
                {
                    return Math.Exp(x);
                }

                Add(x);
            }
        }
    }

    private double Between(double y, int above)
    {
        int from = Math.Max(0, above - 2);
        int end = Math.Min(known.Count, above + 2);
        double sum = 0;
        for (int i = from; i < end; i++)
        {
            double part = known[i].x;
            for (int j = from; j < end; j++)
            {
                part *= j == i ? 1 : (y - known[j].y) / (known[i].y - known[j].y);
            }

            sum += part;
        }

        return sum;
    }

    private void Add(double x)
    {
        double p = Math.Clamp(cdf(Math.Exp(x)), 0, 1);
        int at = known.FindIndex(point => point.x > x);
        known.Insert(at < 0 ? known.Count : at, (x, Math.Log(p / (1 - p))));
    }
}
