using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class TimedBatchTests
{
    private static readonly ToolPlace Rough = new("H", Place.Rough, "drift");

    // tools of 10 heats each, one in service: so many new ones cover 10 (r + 1) heats for sure
    private static double TenEach(int newTools, double heats) => heats <= 10 * (newTools + 1) ? 1 : 0;

    [Fact]
    public void A_tool_is_ready_on_the_day_on_which_those_on_hand_fall_short()
    {
        // 6 heats a day: 6, 12, 18, 24, 30, 36
        (var batches, var givenUp) = TimedBatch.Of(
            Demand(6, 6),
            TenEach,
            0.9,
            windowDays: 0,
            DateOnly.MinValue,
            mostNew: 50
        );
        Assert.Null(givenUp);
        Assert.Equal(
            [(1, 0, 2), (1, 1, 4), (1, 2, 6)],
            batches.Select(each => (each.Number, each.Before, each.ReadyBy.Day))
        );
    }

    [Fact]
    public void What_is_needed_within_one_window_is_forged_together()
    {
        (var batches, _) = TimedBatch.Of(Demand(6, 6), TenEach, 0.9, windowDays: 2, DateOnly.MinValue, mostNew: 50);
        Assert.Equal([(2, 0, 2), (1, 2, 6)], batches.Select(each => (each.Number, each.Before, each.ReadyBy.Day)));
        (batches, _) = TimedBatch.Of(Demand(6, 6), TenEach, 0.9, windowDays: 30, DateOnly.MinValue, mostNew: 50);
        Assert.Equal(3, Assert.Single(batches).Number);
    }

    [Fact]
    public void Nothing_is_ready_before_it_can_be()
    {
        (var batches, _) = TimedBatch.Of(
            Demand(6, 6),
            TenEach,
            0.9,
            windowDays: 1,
            new DateOnly(2026, 5, 4),
            mostNew: 50
        );
        Assert.Equal(
            [(2, 2, 4), (1, 6, 6)],
            batches.Select(each => (each.Number, each.WantedOn.Day, each.ReadyBy.Day))
        );
    }

    [Fact]
    public void One_day_may_take_several()
    {
        (var batches, _) = TimedBatch.Of(Demand(1, 35), TenEach, 0.9, windowDays: 0, DateOnly.MinValue, mostNew: 50);
        Assert.Equal(3, Assert.Single(batches).Number);
    }

    [Fact]
    public void Tools_that_never_last_are_given_up()
    {
        (_, var givenUp) = TimedBatch.Of(Demand(1, 5), (_, _) => 0, 0.9, windowDays: 0, DateOnly.MinValue, mostNew: 50);
        Assert.NotNull(givenUp);
    }

    private static PlaceDemand Demand(int days, double heats) =>
        new(
            Rough,
            [.. Enumerable.Range(1, days).Select(day => new DayHeats(new DateOnly(2026, 5, day), heats, "fair"))],
            true
        );
}
