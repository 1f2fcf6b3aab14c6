using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;

namespace ToolWear.Benchmarks;

/// <summary>1000 orders, 40 patterns, 400 tools. Goal: at most 2 s beyond the forecast.</summary>
[MemoryDiagnoser]
[SimpleJob(launchCount: 1, warmupCount: 1, iterationCount: 5)]
public class LargePlan
{
    private ShopForecasts? forecasts;

    [GlobalSetup]
    public void Make()
    {
        Shop shop = LargeOrderBook.Make();
        forecasts = ShopForecasts.Of(shop);
    }

    /// <summary>The forge list from forecasts that are there.</summary>
    [Benchmark]
    public ForgeList Plan() => ForgeList.Of(new ShopLives(forecasts!), LargeOrderBook.Today, 0.9, until: null);

    /// <summary>Makes it once and says how long its parts took.</summary>
    /// <param name="said">Where to.</param>
    internal static void Once(TextWriter said)
    {
        Shop shop = LargeOrderBook.Make();
        Stopwatch watch = Stopwatch.StartNew();
        ShopForecasts made = ShopForecasts.Of(shop);
        said.WriteLine($"forecast of {shop.Tools.Count} tools: {watch.Elapsed.TotalSeconds:0.00} s");
        for (int i = 0; i < 3; i++)
        {
            watch.Restart();
            TimeSpan before = Environment.CpuUsage.TotalTime;
            OrderBook book = OrderBook.Of(shop, LargeOrderBook.Today);
            TimeSpan calendar = watch.Elapsed;
            ForgeList list = ForgeList.Of(new ShopLives(made), LargeOrderBook.Today, 0.9, until: null);
            said.WriteLine(
                $"{book.Orders.Length} orders over {book.Calendar.Days.Length} days: {calendar.TotalSeconds:0.00} s; "
                    + $"forge list of {list.Batches.Length} batches, {list.Batches.Sum(batch => batch.Number)} tools: "
                    + $"{(watch.Elapsed - calendar).TotalSeconds:0.00} s, {(Environment.CpuUsage.TotalTime - before).TotalSeconds:0.00} s of a core"
            );
        }
    }
}
