using ToolWear.Core.Wear.Histories;

namespace ToolWear.AccuracyCheck;

/// <summary>A tool with its sisters as a smith would have recorded them, and how long it truly lasts.</summary>
/// <param name="Scenario">How its shop wears tools.</param>
/// <param name="Kind">The tool first, then its sisters.</param>
/// <param name="Life">Its true life in heats.</param>
internal sealed record SimulatedHistory(Scenario Scenario, WearHistory[] Kind, double Life)
{
    /// <summary>Heats it truly has left.</summary>
    public double Left => Life - Kind[0].HeatsNow;

    /// <summary>How many readings the tool has.</summary>
    public int Readings => Kind[0].ReadingsInAll;

    /// <summary>Draws a history.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="readings">Readings of the tool.</param>
    /// <param name="sisters">How many sisters it has.</param>
    /// <param name="chance">Chance.</param>
    public static SimulatedHistory Draw(Scenario scenario, int readings, int sisters, Chance chance)
    {
        World world = World.Draw(scenario, chance);
        while (true)
        {
            TruePath[] paths = [.. Enumerable.Range(0, 1 + sisters).Select(_ => TruePath.Draw(world, chance))];
            int now = (int)(chance.Uniform(0.10, 1) * world.MedianLife);
            if (paths.All(path => path.Life is not null) && now >= Math.Max(2, readings) && paths[0].Life > now)
            {
                WearHistory target = Recorded(world, "T1", paths[0], now, ReadAt(now, readings, chance), chance);
                return new(
                    scenario,
                    [target, .. paths.Skip(1).Select((path, i) => Sister(world, $"T{i + 2}", path, chance))],
                    paths[0].Life!.Value
                );
            }
        }
    }

    private static int[] ReadAt(int now, int readings, Chance chance)
    {
        if (readings == 0)
        {
            return [];
        }

        int last =
            chance.Uniform(0, 1) < 0.7 ? now : Math.Max(readings, (int)Math.Ceiling(now * chance.Uniform(0.7, 1)));
        return [.. chance.Some(last - 1, readings - 1), last];
    }

    // half of the sisters were worn out, a fifth cracked on the way, the rest are in service
    private static WearHistory Sister(World world, string mark, TruePath path, Chance chance)
    {
        double fate = chance.Uniform(0, 1);
        double T = path.Life!.Value;
        double used =
            fate < 0.5 ? T * chance.Uniform(0.92, 1.08)
            : fate < 0.7 ? T * chance.Uniform(0.1, 0.95)
            : Math.Min(T * 0.97, chance.Uniform(0.1, 1) * world.MedianLife);
        int now = Math.Clamp((int)used, 1, path.WearMm.Length);
        int[] at = chance.Some(now, Math.Min(chance.Whole(0, 8), now));
        if (fate < 0.5 && at.Length > 0 && chance.Uniform(0, 1) < 0.8)
        {
            at[^1] = now;
        }

        return Recorded(world, mark, path, now, at, chance);
    }

    private static WearHistory Recorded(World world, string mark, TruePath path, int now, int[] at, Chance chance) =>
        new(
            "drift rough width",
            "drift rough width 4140",
            mark,
            "width",
            world.LimitMm,
            world.ResolutionMm,
            world.GuessHeats,
            false,
            now,
            [new WearSegment(0, [.. at.Select(n => new WearReading(n, world.Read(path.WearMm[n - 1], chance)))])]
        );
}
