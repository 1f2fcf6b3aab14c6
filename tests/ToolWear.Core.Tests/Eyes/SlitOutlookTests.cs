using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class SlitOutlookTests
{
    private static readonly Section Hatchet = Make.Teardrop(36.5, 17.5, 3.2);

    // by hand: (184 - 130) / 1.5 = 36 dressings of 12 heats each, and 8 heats left of the edge as it is
    [Fact]
    public void Heats_by_length_are_those_of_the_dressings_left_and_of_the_edge_as_it_is()
    {
        SlitOutlook outlook = Of(33.4, 32, new DressingHistory(4, 1.5, 12, 4));

        Assert.Equal(36, outlook.Dressings!.Dressings);
        Assert.Equal((36 * 12) + 8, outlook.HeatsByLength);
        Assert.Equal(432, Of(33.4, 32, new DressingHistory(4, 1.5, 12, 20)).HeatsByLength);
        Assert.False(outlook.IsAtItsLimit);
    }

    [Fact]
    public void Without_a_dressing_on_record_nothing_is_said_of_those_left()
    {
        SlitOutlook outlook = Of(33.4, 32, null);

        Assert.Null(outlook.Dressings);
        Assert.Null(outlook.HeatsByLength);
    }

    // the shortest slit worth trying is 3 mm shorter than the eye
    [Theory]
    [InlineData(31.9, 32.0, true)]
    [InlineData(32.1, 32.0, false)]
    [InlineData(33.4, null, true)]
    [InlineData(33.6, null, false)]
    public void An_edge_narrower_than_the_slit_needs_is_at_its_limit(double edge, double? least, bool isAtItsLimit) =>
        Assert.Equal(isAtItsLimit, Of(edge, least, null).IsAtItsLimit);

    [Fact]
    public void The_stretch_is_that_of_the_edge_as_it_is_now()
    {
        Slit slit = Assert.IsType<Slit>(Of(33.4, 32, null).Slit);

        Assert.Equal((Hatchet.PerimeterMm() / 66.8) - 1, slit.StretchShare, 1e-12);
        Assert.NotNull(slit.Warning);
        Assert.NotNull(Of(37, 32, null).SlitRefusal);
    }

    private static SlitOutlook Of(double edge, double? least, DressingHistory? history) =>
        SlitOutlook.Of(SlitTool.Slitter, Hatchet, edge, 0, least, Length.FromMm(184m), Length.FromMm(130m), history);
}
