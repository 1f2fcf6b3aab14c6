using System.Globalization;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Benchmarks;

/// <summary>Kinds of tools worn at random, any number of tools with any number of readings; another seed, other readings.</summary>
/// <remarks>The program remembers what it forecast last, so that each round wants a seed of its own.</remarks>
internal static class WornKind
{
    private const double LimitMm = 0.8;
    private const double Heats = 35;

    /// <summary>One kind of two steels.</summary>
    public static WearHistory[] Of(int tools, int readings, int seed)
    {
        Random chance = new(seed);
        string kind = string.Create(CultureInfo.InvariantCulture, $"drift rough width {seed}");
        return [.. Enumerable.Range(1, tools).Select(i => Tool(kind, i, readings, chance))];
    }

    // the last reading at the same heats however many there are: more readings are more figures, not more wear
    private static WearHistory Tool(string kind, int i, int readings, Random chance)
    {
        double life = 50 * Math.Exp((0.6 * chance.NextDouble()) - 0.3);
        WearReading[] read =
        [
            .. Enumerable
                .Range(1, readings)
                .Select(j => j * Heats / readings)
                .Select(n => new WearReading(n, Math.Round((LimitMm * n / life) + (0.05 * chance.NextDouble()), 2))),
        ];
        return new(
            kind,
            kind + (i % 2 == 0 ? " 4140" : " mild"),
            string.Create(CultureInfo.InvariantCulture, $"T{i}"),
            "width",
            LimitMm,
            0.01,
            60,
            false,
            Heats,
            [new WearSegment(0, [.. read])]
        );
    }
}
