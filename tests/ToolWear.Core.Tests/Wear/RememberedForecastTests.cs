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
    [Theory]
    [InlineData(1)]
    public void A_forecast_that_leans_on_what_is_remembered_is_the_forecast_worked_out_anew(int seed)
    {
        Shop shop = Shop.Empty;
        int compared = 0;
        foreach ((DateOnly day, LedgerEntry entry) in LargeShop.Ledger(2, 6, 70, seed))
        {
            DateTimeOffset at = new(day, TimeOnly.MinValue, TimeSpan.Zero);
            Step step = shop.After(new Entered(shop.NextNumber, at, day, entry));
            shop = step.After ?? throw new InvalidOperationException(step.Refusal);
            if (shop.Ledger.Count % 12 != 0)
            {
                continue;
            }

            List<string> remembered = Figures(ShopForecasts.Of(shop, TestContext.Current.CancellationToken));
            KindMemo.Forget();
            LikelihoodMemo.Forget();
            Assert.Equal(Figures(ShopForecasts.Of(shop, TestContext.Current.CancellationToken)), remembered);
            compared += remembered.Count;
        }

        Assert.True(compared > 20, $"only {compared} forecasts");
    }

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
