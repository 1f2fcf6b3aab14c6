using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Kinds of tools worn out at random, from a seed: two groups, reworks, gross errors, tools never read.</summary>
internal static class SimulatedKind
{
    internal static List<WearHistory> Of(int seed, int tools, int groups = 1, int mostReadings = 5)
    {
        Random chance = new(seed);
        double limit = new[] { 0.4, 0.8, 1.2 }[chance.Next(3)];
        double resolution = new[] { 0.01, 0.05, 25.4 / 64 }[chance.Next(3)];
        double power = 0.7 + (0.6 * chance.NextDouble());
        return
        [
            .. Enumerable
                .Range(0, tools)
                .Select(i =>
                    Tool($"T{i}", chance, limit, resolution, power, chance.Next(mostReadings + 1), $"G{i % groups}")
                ),
        ];
    }

    private static WearHistory Tool(
        string tool,
        Random chance,
        double limit,
        double resolution,
        double power,
        int readings,
        string group
    )
    {
        double guess = 30 + chance.Next(60);
        double life = guess * Math.Exp(0.4 * ((2 * chance.NextDouble()) - 1));
        int segments = 1 + chance.Next(2);
        List<WearSegment> made = [];
        double n = 0;
        for (int s = 0; s < segments; s++)
        {
            double start = s == 0 ? 0 : limit * 0.3 * chance.Next(2);
            List<(double, double)> read = [];
            n = 0;
            for (int j = 0; j < readings; j++)
            {
                n += 1 + chance.Next((int)(life / (readings + 1)));
                double wear = start + (limit * Math.Pow(n / life, power)) + (0.1 * limit * (chance.NextDouble() - 0.5));
                wear += chance.Next(12) == 0 ? 0.6 * limit : 0;
                read.Add((n, Math.Round(wear / resolution) * resolution));
            }

            made.Add(Histories.Segment(start, read));
        }

        return Histories.Of(tool, n + chance.Next(10), made, limit, resolution, guess, group);
    }
}
