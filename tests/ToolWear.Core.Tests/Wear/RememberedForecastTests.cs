using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Sisters;
using ToolWear.Testing.LargeShops;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>What is remembered from one entry to the next must be what would be worked out anew.</summary>
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
    public void A_forecast_that_leans_on_what_is_remembered_is_the_forecast_worked_out_anew() =>
        Shops.Sample(
            made =>
            {
                (int eyes, int drifts, int entries, int seed, int[] crossedOut) = made;
                Shop shop = Shop.Empty;
                int compared = 0;
                int accepted = 0;
                foreach ((DateOnly day, LedgerEntry entry) in LargeShop.Ledger(eyes, eyes * drifts, entries, seed))
                {
                    shop = After(shop, day, entry) ?? shop;
                    if (++accepted % 15 != 0)
                    {
                        continue;
                    }

                    compared += Compare(shop);
                    // what is crossed out goes back to readings that were remembered before
                    long number = 1 + (crossedOut[accepted / 15 % crossedOut.Length] % shop.Ledger.Count);
                    if (After(shop, day, new EntryCrossedOut(number, "")) is { } without)
                    {
                        shop = without;
                        compared += Compare(shop);
                    }
                }

                Assert.True(compared > 0, $"only {compared} forecasts");
            },
            iter: 3,
            threads: 1,
            print: made => $"{made}, out {string.Join(' ', made.Item5)}"
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Any_row_of_a_likelihood_is_the_same_whether_it_was_kept_or_is_worked_out_again(bool keepsLikely)
    {
        ToolRecord tool = ToolRecord.Of(
            new(
                "drift rough width",
                "drift rough width 4140",
                "H5",
                "width",
                1.2,
                0.05,
                60,
                false,
                45,
                [new(0, [new(10, 0.2), new(21, 0.45), new(38, 0.7)])]
            )
        )!;
        ToolLikelihood likelihood = new(tool, keepsLikely);
        for (int node = 0; node < Nodes.All.Length; node++)
        {
            double[] row = likelihood.At(node).ToArray();
            Assert.Equal(1, row.Max());
            Assert.Equal(likelihood.Again(node), row);
        }
    }

    private static Shop? After(Shop shop, DateOnly day, LedgerEntry entry) =>
        shop.After(
            new Entered(shop.NextNumber, new DateTimeOffset(day, TimeOnly.MinValue, TimeSpan.Zero), day, entry)
        ).After;

    private static int Compare(Shop shop)
    {
        List<string> remembered = Figures(ShopForecasts.Of(shop, TestContext.Current.CancellationToken));
        KindMemo.Forget();
        LikelihoodMemo.Forget();
        Assert.Equal(Figures(ShopForecasts.Of(shop, TestContext.Current.CancellationToken)), remembered);
        return remembered.Count;
    }

    private static List<string> Figures(ShopForecasts forecasts) =>
        [
            .. forecasts
                .All.Values.SelectMany(tool => tool.Gauges)
                .Select(gauge =>
                    gauge.Outlook is SisterForecast forecast
                        ? $"{gauge.History.Tool.Mark} {forecast.ChancePastLimitNow:r} {forecast.WearNowMm:r} {forecast.HeatsLeftIfNotPast.Q05:r} {forecast.HeatsLeftIfNotPast.Q50:r} {forecast.HeatsLeftIfNotPast.Q95:r}"
                        : $"{gauge.History.Tool.Mark} {gauge.Outlook}"
                ),
        ];
}
