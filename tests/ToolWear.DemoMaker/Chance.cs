using Bogus;
using Bogus.Distributions.Gaussian;

namespace ToolWear.DemoMaker;

/// <summary>Chance that is the same in every run: each name draws from a row of its own.</summary>
/// <remarks>A tool more or less in the shop leaves the figures of all others as they were.</remarks>
internal sealed class Chance
{
    private const int Seed = 3;

    private readonly Randomizer draws;

    private Chance(int seed) => draws = new Randomizer(seed);

    /// <summary>The row of a name.</summary>
    public static Chance Of(string name)
    {
        int seed = Seed;
        foreach (char letter in name)
        {
            seed = unchecked((seed * 31) + letter);
        }

        return new(seed & int.MaxValue);
    }

    /// <summary>A figure that scatters about zero.</summary>
    /// <param name="sd">Its standard deviation, zero or more.</param>
    public double About(double sd) => sd > 0 ? draws.GaussianDouble(0, sd) : 0;
}
