using BenchmarkDotNet.Attributes;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Benchmarks;

/// <summary>One kind of eleven tools with five readings each, forecast whole. Goal: median under 0.15 s, under 20 MB.</summary>
[MemoryDiagnoser]
public class KindForecast
{
    private const int Tools = 11;
    private const int Readings = 5;

    private int round;

    /// <summary>Each time readings that the program has not seen: it remembers kinds and what the readings of a tool say.</summary>
    [Benchmark]
    public SisterForecasts Forecast() => SisterForecasts.Of(WornKind.Of(Tools, Readings, ++round));
}
