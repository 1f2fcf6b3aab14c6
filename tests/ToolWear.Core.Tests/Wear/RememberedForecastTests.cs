using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Testing.LargeShops;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>What is kept from one entry to the next must be what would be worked out anew; what nobody asks for is not.</summary>
public sealed class RememberedForecastTests
{
    private static readonly Gen<(int Eyes, int Drifts, int Entries, int Seed, int[] Out)> Shops = Gen.Select(
        Gen.Int[1, 3],
        Gen.Int[3, 5],
        Gen.Int[30, 60],
        Gen.Int[1, 1_000_000],
        Gen.Int[0, 1_000_000].Array[6]
    );

    [Fact]
    public void What_is_kept_from_the_shop_before_is_what_would_be_worked_out_anew() =>
        Shops.Sample(
            made =>
            {
                (int eyes, int drifts, int entries, int seed, int[] crossedOut) = made;
                Shop shop = Shop.Empty;
                ShopForecasts? kept = null;
                int accepted = 0;
                foreach ((DateOnly day, LedgerEntry entry) in LargeShop.Ledger(eyes, eyes * drifts, entries, seed))
                {
                    shop = After(shop, day, entry) ?? shop;
                    if (++accepted % 15 != 0)
                    {
                        continue;
                    }

                    kept = Compare(shop, kept);
                    // what is crossed out goes back to readings of before
                    long number = 1 + (crossedOut[accepted / 15 % crossedOut.Length] % shop.Ledger.Count);
                    if (After(shop, day, new EntryCrossedOut(number, "")) is { } without)
                    {
                        shop = without;
                        kept = Compare(shop, kept);
                    }
                }

                Assert.NotNull(kept);
            },
            iter: 3,
            threads: 1,
            print: made => $"{made}, out {string.Join(' ', made.Item5)}"
        );

    private static Shop? After(Shop shop, DateOnly day, LedgerEntry entry) =>
        shop.After(
            new Entered(shop.NextNumber, new DateTimeOffset(day, TimeOnly.MinValue, TimeSpan.Zero), day, entry)
        ).After;

    private static ShopForecasts Compare(Shop shop, ShopForecasts? before)
    {
        ShopForecasts kept = ShopForecasts.Of(shop, before);
        Assert.Equal(Figures(ShopForecasts.Of(shop)), Figures(kept));
        return kept;
    }

    private static List<string> Figures(ShopForecasts forecasts)
    {
        ShopLives lives = new(forecasts);
        return
        [
            .. forecasts.All.SelectMany(tool =>
                tool.Gauges.Select(gauge =>
                    gauge.Outlook is SisterForecast forecast
                        ? $"{gauge.History.Tool.Mark} {forecast.ChancePastLimitNow:r} {forecast.WearNowMm:r} {Said(forecast.HeatsLeftIfNotPast)}"
                        : $"{gauge.History.Tool.Mark} {gauge.Outlook}"
                )
            ),
            .. forecasts.Tools.Select(tool =>
                $"{tool.Tool.Mark} {forecasts.VerdictOf(tool)} {tool.EnoughToday} {tool.Deciding?.History.Gauge.Name} {(tool.HeatsLeft is { } left ? Said(left) : "")}"
            ),
            .. forecasts
                .Tools.Select(tool => ToolPlace.Of(tool.Tool.Tool))
                .Distinct()
                .Select(place => $"{place} {lives.At(place).NewLife} {lives.At(place).UpTo(60).Cover(1, 60):r}"),
        ];
    }

    private static string Said(HeatsLeft left) => $"{left.Q05:r} {left.Q50:r} {left.Q95:r}";
}
