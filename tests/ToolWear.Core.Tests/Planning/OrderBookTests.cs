using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class OrderBookTests
{
    [Fact]
    public void Each_open_order_has_its_heats_its_last_day_and_what_comes_late()
    {
        Story story = Shop();
        Enter(story, "later", 5, 20);
        Enter(story, "sooner", 20, 4);
        OrderBook book = OrderBook.Of(story.Shop, Story.Day(1));

        // 1 May 2026 is a Friday; 6 a day: Fri 6, Mon 6, Tue 6, Wed 2 and 4, Thu 1; 3 + 0.5 heats a head
        Assert.Equal("sooner later", string.Join(' ', book.Orders.Select(order => order.Order.Order)));
        Assert.Equal([70, 17.5], book.Orders.Select(order => order.Heats));
        Assert.Equal([Story.Day(6), Story.Day(7)], book.Orders.Select(order => order.DoneOn!.Value));
        Assert.Equal([8, 0], book.Orders.Select(order => order.HeadsLate));
        Assert.DoesNotContain(book.Orders, order => order.IsLearned);
        Assert.Equal(2, book.Stages["hatchet"].Length);
    }

    [Fact]
    public void An_order_beyond_any_calendar_has_no_last_day_and_all_its_rest_is_late()
    {
        Story story = Shop();
        story.Enter(new SettingChanged("heads_a_day", "0.5"));
        Enter(story, "endless", 100_000, 20);
        OrderOutlook order = Assert.Single(OrderBook.Of(story.Shop, Story.Day(1)).Orders);
        Assert.Null(order.DoneOn);
        Assert.InRange(order.HeadsLate, 99_980, 100_000);
    }

    private static Story Shop()
    {
        Story story = new() { Today = Story.Day(1) };
        story.Enter(
            new PatternDescribed(
                "hatchet",
                [
                    new PatternStage("cheeks", null, Story.Form("drift"), Place.Rough, Work.Cheeks, 3, null),
                    new PatternStage("bit", null, null, Place.None, null, 0.5, null),
                ]
            )
        );
        return story;
    }

    private static void Enter(Story story, string name, int heads, int due) =>
        story.Enter(new OrderDescribed(name, "hatchet", heads, Story.Day(due), OrderState.Open));
}
