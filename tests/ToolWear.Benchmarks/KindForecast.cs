using BenchmarkDotNet.Attributes;
using ToolWear.Core.Wear;

namespace ToolWear.Benchmarks;

/// <summary>One kind of eleven tools with five readings each, forecast whole. Goal: median under 0.15 s, under 20 MB.</summary>
[MemoryDiagnoser]
public class KindForecast
{
    private const int Tools = 11;
    private const int Readings = 5;

    private WearHistory[] kind = [];
    private int round;

    [GlobalSetup]
    public void Make()
    {
        Random chance = new(7);
        kind = [.. Enumerable.Range(1, Tools).Select(i => Tool($"T{i}", chance))];
    }

    /// <summary>Each time another kind to the program, which remembers those it has forecast.</summary>
    [Benchmark]
    public SisterForecasts Forecast()
    {
        round++;
        return SisterForecasts.Of([.. kind.Select(history => history with { Kind = $"kind {round}" })]);
    }

    private static WearHistory Tool(string mark, Random chance)
    {
        const double limitMm = 0.8;
        double life = 50 * Math.Exp((0.6 * chance.NextDouble()) - 0.3);
        WearReading[] readings =
        [
            .. Enumerable
                .Range(1, Readings)
                .Select(j => j * 7.0)
                .Select(n => new WearReading(n, Math.Round((limitMm * n / life) + (0.05 * chance.NextDouble()), 2))),
        ];
        return new(
            "drift rough width",
            "drift rough width 4140",
            mark,
            "width",
            limitMm,
            0.01,
            60,
            false,
            Readings * 7,
            [new WearSegment(0, [.. readings])]
        );
    }
}
