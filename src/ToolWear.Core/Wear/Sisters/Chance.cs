namespace ToolWear.Core.Wear.Sisters;

// G. L. Steele, D. Lea and C. H. Flood (2014), Fast splittable pseudorandom number generators (SplitMix64's finisher)
/// <summary>Chance by number: the same seed, draw, stream and slot give the same value, whatever else is drawn.</summary>
internal static class Chance
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    /// <summary>A number above 0 and below 1, all alike likely.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="draw">Which draw.</param>
    /// <param name="stream">What is drawn: a tool.</param>
    /// <param name="slot">What of it.</param>
    internal static double Uniform(int seed, int draw, long stream, int slot)
    {
        unchecked
        {
            ulong x = Mix((ulong)seed + Golden);
            x = Mix(x + (Golden * (ulong)draw));
            x = Mix(x + (Golden * (ulong)stream));
            x = Mix(x + (Golden * (ulong)slot));
            return ((x >> 12) + 0.5) / (1UL << 52);
        }
    }

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
