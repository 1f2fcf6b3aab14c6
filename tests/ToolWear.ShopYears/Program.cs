using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Demo;
using ToolWear.ShopYears;

// nice dotnet run -c Release --project tests/ToolWear.ShopYears -- SEED YEARS
// Lives YEARS years of the demo shop by the day, the plan made anew once a month and followed, then the same years with
// every batch one smaller: how many sessions were not stopped for want of a tool, and how many tools were left over.
if (
    args.Length != 2
    || !int.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out int seed)
    || !int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out int years)
    || years < 2
)
{
    Console.Error.WriteLine("give two whole numbers: a seed and how many years, two or more");
    return 2;
}

DateOnly first = new(2026, 11, 12);
Shop shop = Shop.Empty;
foreach (LedgerEntry entry in DemoShop.Entries(first).Append(new SettingChanged("hammer_days", "tue fri")))
{
    shop =
        shop.After(new Entered(shop.NextNumber, DateTimeOffset.UnixEpoch, first, entry)).After
        ?? throw new InvalidOperationException("the demo shop is faulty");
}

ShopForecasts forecasts = ShopForecasts.Of(shop);
foreach (int fewer in (int[])[0, 1])
{
    Stopwatch watch = Stopwatch.StartNew();
    ImmutableArray<YearResult> lived =
    [
        .. Enumerable
            .Range(0, years)
            .Select(year => ShopYear.Live(shop, forecasts, first, (seed * 10_007) + year, fewer)),
    ];
    Console.WriteLine(
        $"seed {seed}, {years} years, {(fewer == 0 ? "as planned" : "every batch one smaller")} ({watch.Elapsed.TotalMinutes:0.0} min)"
    );
    Say("sessions a year", lived, year => year.Sessions);
    Say("share not stopped", lived, year => 1 - ((double)year.Stopped / year.Sessions));
    Say("tools made a year", lived, year => year.Made);
    Say("made in haste", lived, year => year.Urgent);
    Say("left over unused", lived, year => year.LeftOver);
    Console.WriteLine(
        "stopped at: "
            + string.Join(
                ", ",
                lived
                    .SelectMany(year => year.StoppedAt)
                    .GroupBy(place => place, StringComparer.Ordinal)
                    .OrderByDescending(place => place.Count())
                    .Select(place => $"{place.Key} {place.Count()}")
                    .DefaultIfEmpty("none")
            )
    );
}

return 0;

// the years are alike and apart: mean and standard error over them
static void Say(string what, ImmutableArray<YearResult> lived, Func<YearResult, double> figure)
{
    double[] each = [.. lived.Select(figure)];
    double mean = each.Average();
    double se = Math.Sqrt(each.Sum(x => (x - mean) * (x - mean)) / (each.Length - 1) / each.Length);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what, -18} {mean, 9:0.0000}  se {se:0.0000}"));
}
