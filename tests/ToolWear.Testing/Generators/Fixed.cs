using CsCheck;

namespace ToolWear.Testing.Generators;

/// <summary>Samples that are the same on every run, for tests that look at what a generator yields.</summary>
public static class Fixed
{
    /// <summary>Samples of a generator.</summary>
    /// <typeparam name="T">What it makes.</typeparam>
    /// <param name="gen">The generator.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">Another number for other samples.</param>
    /// <returns>The samples, the same each time.</returns>
    public static IEnumerable<T> Samples<T>(Gen<T> gen, int count, uint seed = 1)
    {
        // with one number alone the other is the time of day
        PCG chance = new(seed, seed);
        for (int i = 0; i < count; i++)
        {
            yield return gen.Generate(chance, null, out _);
        }
    }
}
