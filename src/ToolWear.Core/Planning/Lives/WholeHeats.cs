using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Planning.Lives;

// U = floor(K):  P(U = u) = F(u+1) - F(u), what ends before the first whole heat counted as 0;
// all that reaches the demand H is lumped at H, for more is no use
/// <summary>How many whole heats some tools give together, up to a demand.</summary>
public sealed class WholeHeats
{
    /// <summary>The greatest demand that is reckoned with.</summary>
    public const int MostDemand = 20_000;

    // below this a chance cannot change a sum of double precision
    private const double Negligible = 1e-30;

    private readonly double[] chances;

    private WholeHeats(double[] chances) => this.chances = chances;

    /// <summary>The demand H in whole heats.</summary>
    public int Demand => chances.Length - 1;

    /// <summary>The chance that the tools cover the demand: P(sum of U >= H).</summary>
    public double Cover => Math.Min(1, chances[^1]);

    /// <summary>The chance of each number of whole heats, 0 to H; the last is that of H or more.</summary>
    public ReadOnlySpan<double> Chances => chances;

    /// <summary>No tool at all: no heats for sure.</summary>
    /// <param name="demand">H, 0 to <see cref="MostDemand"/>.</param>
    /// <returns>The distribution.</returns>
    public static WholeHeats None(int demand)
    {
        double[] p = new double[Checked(demand) + 1];
        p[0] = 1;
        return new WholeHeats(p);
    }

    /// <summary>One tool.</summary>
    /// <param name="F">The chance that it is used up after k more heats; it never falls with k.</param>
    /// <param name="demand">H, 0 to <see cref="MostDemand"/>.</param>
    /// <returns>The distribution.</returns>
    public static WholeHeats Of(Func<double, double> F, int demand)
    {
        double[] p = new double[Checked(demand) + 1];
        double before = 0;
        for (int u = 0; u < demand; u++)
        {
            double after = Math.Clamp(F(u + 1), before, 1);
            p[u] = after - before;
            before = after;
        }

        p[demand] = 1 - before;
        return new WholeHeats(p);
    }

    /// <summary>These tools and others together.</summary>
    /// <param name="others">Tools whose heats are independent of these, for the same demand.</param>
    /// <returns>The distribution of the sum.</returns>
    /// <exception cref="ArgumentException">The demands differ.</exception>
    public WholeHeats And(WholeHeats others)
    {
        if (others.Demand != Demand)
        {
            throw new ArgumentException($"{others.Demand} heats where {Demand} are asked for", nameof(others));
        }

        int H = Demand;
        double[] sum = new double[H + 1];
        ReadOnlySpan<double> b = others.chances.AsSpan(0, H);
        b = b[..(b.LastIndexOfAnyExcept(0.0) + 1)];
        double[] atLeast = AtLeast(others.chances);
        for (int i = 0; i <= H; i++)
        {
            if (chances[i] < Negligible)
            {
                continue;
            }

            int fits = Math.Min(b.Length, H - i);
            if (fits > 0)
            {
                Vectors.AddScaled(sum.AsSpan(i, fits), chances[i], b[..fits]);
            }

            sum[H] += chances[i] * atLeast[H - i];
        }

        return new WholeHeats(sum);
    }

    private static double[] AtLeast(double[] p)
    {
        double[] atLeast = new double[p.Length];
        double sum = 0;
        for (int u = p.Length - 1; u >= 0; u--)
        {
            sum += p[u];
            atLeast[u] = sum;
        }

        return atLeast;
    }

    private static int Checked(int demand) =>
        demand is >= 0 and <= MostDemand
            ? demand
            : throw new ArgumentOutOfRangeException(nameof(demand), demand, $"must be 0 to {MostDemand} heats");
}
