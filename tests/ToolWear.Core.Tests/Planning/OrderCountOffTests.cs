using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class OrderCountOffTests
{
    [Fact]
    public void Heads_come_off_the_order_that_is_due_first_and_then_off_the_next()
    {
        Story story = Shop();
        OrderDescribed later = Enter(story, "later", "hatchet", 10, 20);
        OrderDescribed sooner = Enter(story, "sooner", "hatchet", 4, 6);
        Enter(story, "other", "hammer", 4, 1);

        Assert.Equal([sooner with { Heads = 1 }], OrderCountOff.Of(story.Shop, "hatchet", 3));
        Assert.Equal([sooner with { State = OrderState.Done }], OrderCountOff.Of(story.Shop, "hatchet", 4));
        Assert.Equal(
            [sooner with { State = OrderState.Done }, later with { Heads = 8 }],
            OrderCountOff.Of(story.Shop, "hatchet", 6)
        );
        Assert.Equal(
            [OrderState.Done, OrderState.Done],
            OrderCountOff.Of(story.Shop, "hatchet", 99).Select(order => order.State)
        );
    }

    [Fact]
    public void Nothing_comes_off_where_nobody_counted_or_said_the_pattern_or_no_order_is_open()
    {
        Story story = Shop();
        Enter(story, "fair", "hatchet", 4, 6);
        Assert.Empty(OrderCountOff.Of(story.Shop, "hatchet", null));
        Assert.Empty(OrderCountOff.Of(story.Shop, "hatchet", 0));
        Assert.Empty(OrderCountOff.Of(story.Shop, null, 4));
        ImmutableArray<OrderDescribed> done = OrderCountOff.Of(story.Shop, "hatchet", 4);
        story.Enter(Assert.Single(done));
        Assert.Empty(OrderCountOff.Of(story.Shop, "hatchet", 4));
    }

    private static Story Shop()
    {
        Story story = new();
        foreach (string pattern in (string[])["hatchet", "hammer"])
        {
            story.Enter(
                new PatternDescribed(pattern, [new PatternStage("cheeks", null, null, Place.None, null, 3, null)])
            );
        }

        return story;
    }

    private static OrderDescribed Enter(Story story, string name, string pattern, int heads, int due)
    {
        OrderDescribed order = new(name, pattern, heads, Story.Day(due), OrderState.Open);
        story.Enter(order);
        return order;
    }
}
