using ToolWear.Core.Wear.Histories;
using Xunit;

namespace ToolWear.Core.Tests.Wear;

public sealed class WearHistoryTests
{
    [Theory]
    [InlineData(double.NaN, 0.1)]
    [InlineData(double.PositiveInfinity, 0.1)]
    [InlineData(-1, 0.1)]
    [InlineData(1, double.NaN)]
    [InlineData(1, double.NegativeInfinity)]
    public void A_reading_that_cannot_be_is_refused(double heats, double wearMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WearReading(heats, wearMm));

    [Theory]
    [InlineData(0, 0.01, 60, 5)]
    [InlineData(-0.8, 0.01, 60, 5)]
    [InlineData(double.NaN, 0.01, 60, 5)]
    [InlineData(0.8, -0.01, 60, 5)]
    [InlineData(0.8, 0.01, 0, 5)]
    [InlineData(0.8, 0.01, double.PositiveInfinity, 5)]
    [InlineData(0.8, 0.01, 60, -1)]
    [InlineData(0.8, 0.01, 60, 3)]
    public void A_history_that_cannot_be_is_refused(
        double limitMm,
        double resolutionMm,
        double guessHeats,
        double now
    ) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Histories.One("A", now, [(4, 0.1)], limitMm, resolutionMm, guessHeats)
        );

    [Fact]
    public void A_segment_whose_start_is_not_known_has_no_readings()
    {
        Assert.Throws<ArgumentException>(() => Histories.Segment(null, [(1, 0.1)]));
        Assert.Empty(Histories.Segment(null, []).Readings);
        Assert.Throws<ArgumentOutOfRangeException>(() => new WearSegment(double.NaN, []));
    }

    [Fact]
    public void Readings_stand_in_order_of_heats_and_those_of_the_same_heats_as_given()
    {
        WearSegment segment = Histories.Segment(0, [(9, 0.3), (4, 0.2), (9, 0.1)]);
        Assert.Equal([new(4, 0.2), new(9, 0.3), new(9, 0.1)], segment.Readings);
    }

    [Fact]
    public void Histories_with_the_same_contents_are_equal()
    {
        WearHistory one = Histories.One("A", 5, [(4, 0.1)]);
        Assert.Equal(one, Histories.One("A", 5, [(4, 0.1)]));
        Assert.Equal(one.GetHashCode(), Histories.One("A", 5, [(4, 0.1)]).GetHashCode());
        Assert.NotEqual(one, Histories.One("A", 5, [(4, 0.11)]));
        Assert.NotEqual(one, Histories.One("B", 5, [(4, 0.1)]));
    }

    [Fact]
    public void A_tool_without_segments_is_new()
    {
        Assert.Equal([WearSegment.New], Histories.Of("A", 0, []).Segments);
        Assert.Equal(0, Histories.Of("A", 0, []).ReadingsInAll);
    }
}
