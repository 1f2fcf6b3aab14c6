using System.Globalization;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Testing.Wear;

namespace ToolWear.Benchmarks;

/// <summary>What forecasts cost: by tools, by readings, beside plain loops, in a large shop, and asked again.</summary>
internal sealed class ForecastCosts(int runs, int seed, TextWriter said)
{
    private const int Tools = 11;
    private const int Readings = 5;
    private const int Kinds = 40;
    private const int ToolsAKind = 10;
    private const int ManyTools = 1200;

    private int made;

    /// <summary>All of them.</summary>
    public void Measure()
    {
        BesidePlainLoops();
        Growth("forecast by tools of a kind", [50, 100, 200, 400], tools => (tools, Readings));
        Growth("forecast by readings a tool, 40 tools", [3, 6, 12, 24], readings => (40, readings));
        LargeShop();
        OneReadingMore(ManyTools / 4);
        OneReadingMore(ManyTools);
    }

    private void BesidePlainLoops()
    {
        double ours = 0;
        double plain = 0;
        WearHistory[] kind = WornKind.Of(Tools, Readings, seed);
        ours = Figures(SisterForecasts.Of(kind)).First();
        plain = new PlainForecast(kind, 0).F(0);
        if (Math.Abs(ours - plain) > 1e-5)
        {
            throw new InvalidOperationException($"{ours} is not what plain loops say: {plain}");
        }

        // ours forecasts all of the kind, the plain loops only one of its tools
        (double one, double two) = Measuring.InTurns(
            runs,
            _ => OfKind(Tools, Readings),
            _ => Measuring.Timed(() => plain += new PlainForecast(kind, 0).F(0))
        );
        string hash = Measuring.Hash(plain.ToString("0.00000", CultureInfo.InvariantCulture));
        Measuring.Row(
            said,
            "forecast of a whole kind; plain loops: 1 tool",
            Tools,
            one,
            two,
            two / one,
            "ratio >= 5",
            hash
        );
    }

    private void Growth(string what, int[] sizes, Func<int, (int Tools, int Readings)> sized)
    {
        List<(double N, double Cost)> points = [];
        foreach (int n in sizes)
        {
            (int tools, int readings) = sized(n);
            OfKind(tools, readings);
            double[] costs = [.. Enumerable.Range(0, runs).Select(_ => OfKind(tools, readings))];
            points.Add((n, Measuring.Median(costs)));
            string hash = Measuring.Hash(
                string.Join(' ', Figures(SisterForecasts.Of(WornKind.Of(tools, readings, seed))))
            );
            double? slope = n == sizes[^1] ? Measuring.Slope(points) : null;
            string goal = slope is null ? "" : "ratio <= 1.1";
            Measuring.Row(said, what + (slope is null ? "" : "; slope"), n, points[^1].Cost, null, slope, goal, hash);
        }
    }

    private double OfKind(int tools, int readings)
    {
        WearHistory[] kind = WornKind.Of(tools, readings, (seed * 1_000_000) + ++made);
        return Measuring.Timed(() => SisterForecasts.Of(kind));
    }

    // forty kinds of ten tools; then nothing has changed
    private void LargeShop()
    {
        List<double> first = [];
        List<double> again = [];
        string hash = "";
        for (int run = -1; run < runs; run++)
        {
            WearHistory[] all =
            [
                .. Enumerable
                    .Range(0, Kinds)
                    .SelectMany(kind => WornKind.Of(ToolsAKind, Readings, (seed * 1_000_000) + ++made)),
            ];
            first.Add(Measuring.Timed(() => Forecasted.InOrder([.. all])));
            again.Add(Measuring.Timed(() => hash = Hash(Forecasted.InOrder([.. all]))));
        }

        double whole = Measuring.Median(first.Skip(1));
        Measuring.Row(
            said,
            "forecast of 400 tools in 40 kinds",
            Kinds * ToolsAKind,
            whole,
            null,
            null,
            "ours <= 3000",
            hash
        );
        Measuring.Row(
            said,
            "... asked again, nothing changed",
            Kinds * ToolsAKind,
            Measuring.Median(again.Skip(1)),
            whole,
            Measuring.Median(again.Skip(1)) / whole,
            "ratio <= 0.05",
            hash
        );
    }

    // one kind, then one tool after the other is read once more
    private void OneReadingMore(int tools)
    {
        WearHistory[] kind = WornKind.Of(tools, Readings, (seed * 1_000_000) + ++made);
        double whole = Measuring.Timed(() => SisterForecasts.Of(kind));
        List<double> costs = [];
        for (int run = 0; run < Math.Min(runs, tools); run++)
        {
            kind = [.. kind.Select((history, i) => i == run ? ReadOnceMore(history) : history)];
            costs.Add(Measuring.Timed(() => SisterForecasts.Of(kind)));
        }

        double again = Measuring.Median(costs);
        string hash = Measuring.Hash(string.Join(' ', Figures(SisterForecasts.Of(kind))));
        Measuring.Row(said, "one reading more; the kind from nothing", tools, again, whole, again / whole, "", hash);
    }

    private static WearHistory ReadOnceMore(WearHistory history)
    {
        WearReading last = history.Last.Readings[^1];
        WearSegment more = new(0, history.Last.Readings.Add(new(last.Heats + 1, last.WearMm)));
        return new(
            history.Kind,
            history.Group,
            history.Tool,
            history.Gauge,
            history.LimitMm,
            history.ResolutionMm,
            history.GuessHeats,
            history.GuessIsAssumed,
            last.Heats + 1,
            [more]
        );
    }

    private static IEnumerable<double> Figures(SisterForecasts kind) =>
        kind.Tools.OfType<SisterForecast>().Select(tool => tool.ChancePastLimitNow);

    private static string Hash(IEnumerable<Forecasted> all) =>
        Measuring.Hash(
            string.Join(' ', all.Select(each => each.Outlook).OfType<SisterForecast>().Select(tool => tool.WearNowMm))
        );
}
