using MathNet.Numerics.Distributions;

namespace ToolWear.AccuracyCheck;

/// <summary>Seeded chance: uniform, normal, gamma, and draws without putting back.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    public double Uniform(double from, double to) => from + ((to - from) * random.NextDouble());

    /// <summary>A whole number from a range, both ends included.</summary>
    public int Whole(int from, int to) => random.Next(from, to + 1);

    public double Normal(double sd) => Normal01() * sd;

    /// <summary>A sum of infinitely many small jumps with a mean, variance mean times scale.</summary>
    public double Gamma(double mean, double scale) =>
        mean > 0 ? MathNet.Numerics.Distributions.Gamma.Sample(random, mean / scale, 1 / scale) : 0;

    /// <summary>Some of the numbers 1 to n, in order.</summary>
    public int[] Some(int n, int count)
    {
        int[] all = [.. Enumerable.Range(1, n)];
        random.Shuffle(all);
        return [.. all.Take(count).Order()];
    }

    private double Normal01() => MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
}
