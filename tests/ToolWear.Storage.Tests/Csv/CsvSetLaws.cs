using CsCheck;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

public sealed class CsvSetLaws
{
    [Fact]
    public void Any_shop_survives_export_and_import_with_the_same_bytes_and_histories() =>
        RandomShop.Gen.Sample(shop => RoundTrip.Through(shop.Shop, shop.Today), iter: 500);

    [Fact]
    public void The_random_shops_hold_what_makes_the_law_hard()
    {
        int scrapped = 0;
        int crossedOut = 0;
        int sharedMarks = 0;
        int between = 0;
        int heads = 0;
        int again = 0;
        RandomShop.Gen.Sample(
            shop =>
            {
                scrapped += shop.Shop.Tools.Values.Count(tool => tool.Scrapped is not null);
                crossedOut += shop.Shop.CrossedOut.Count;
                heads += shop.Shop.Sessions.Values.Sum(session => session.HeadsByStage.Count);
                again += shop.Shop.Ledger.Count(each => each.What is Core.Ledger.EntryCountsAgain);
                sharedMarks +=
                    shop.Shop.Tools.Count - shop.Shop.Tools.Values.Select(tool => tool.Mark).Distinct().Count();
                between += shop.Shop.Tools.Values.Sum(tool =>
                    tool.Events.Count(each => each.What is Core.Ledger.ToolReworked)
                );
            },
            iter: 200,
            threads: 1
        );
        Assert.True(scrapped > 50 && crossedOut > 50 && sharedMarks > 20 && between > 100);
        Assert.True(heads > 20 && again > 20, $"{heads} stages with heads, {again} counting again");
    }
}
