namespace ToolWear.ShopYears;

/// <summary>Seeded chance.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    public double Uniform() => random.NextDouble();

    /// <summary>A whole number from a range, both ends included.</summary>
    public int Whole(int from, int to) => random.Next(from, to + 1);

    public double Normal(double sd) => sd * MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
}
