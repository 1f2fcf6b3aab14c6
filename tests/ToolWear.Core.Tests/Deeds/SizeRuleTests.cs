using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using Xunit;

namespace ToolWear.Core.Tests.Deeds;

public sealed class SizeRuleTests
{
    [Theory]
    // as typed in a shop of mm: a slipped point, a fraction read as inches, growth beyond what may wear
    [InlineData(13.60, true, false)]
    [InlineData(1360, false, false)]
    [InlineData(1.29, false, false)]
    [InlineData(330.60, false, false)]
    [InlineData(15.30, false, false)]
    [InlineData(8.90, false, false)]
    [InlineData(14.60, true, true)]
    [InlineData(12.70, true, false)]
    public void A_reading_is_held_against_what_the_tool_began_at(double mm, bool can, bool isAsked)
    {
        SizeRule rule = SizeRule.Of(Shop().Shop, Read("H5", mm));
        Assert.Equal(can, rule.Cannot is null);
        Assert.Equal(isAsked, rule.Unlikely is not null);
    }

    [Theory]
    [InlineData(0.53, "0.53 in is 13.46 mm: if so, type 0.53in.")]
    [InlineData(1360, "Is it 13.60 mm?")]
    [InlineData(1.35, "Is it 13.50 mm?")]
    [InlineData(500, null)]
    public void What_was_probably_meant_is_said(double mm, string? meant)
    {
        string said = SizeRule.Of(Shop().Shop, Read("H5", mm)).Cannot!;
        Assert.Equal(meant is not null, said.Contains(meant ?? "?", StringComparison.Ordinal));
        Assert.Equal(meant is not null, said.Contains("Is it", StringComparison.Ordinal) || said.Contains("if so"));
    }

    [Fact]
    public void In_a_shop_of_inches_bare_millimetres_are_recognised()
    {
        Story story = Shop();
        story.Enter(new SettingChanged("units", "in"));
        string said = SizeRule.Of(story.Shop, Read("H5", 13.46 * 25.4)).Cannot!;
        Assert.Contains("13.460 mm is 0.530 in: if so, type 13.460mm.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fraction_that_cannot_be_is_said_to_be_inches()
    {
        Assert.True(SizeText.TryParse("13 1/64", LengthUnit.Mm, out TypedSize size, out _));
        SizeRule rule = SizeRule.Of(Shop().Shop, Read("H5", size.Length.Mm) with { Resolution = size.Resolution });
        Assert.Contains("inches", rule.Cannot, StringComparison.Ordinal);
    }

    [Theory]
    // the series is made 14.00 and wears smaller
    [InlineData(12.8, null, true, false)]
    [InlineData(32, null, false, false)]
    [InlineData(10.0, null, true, true)]
    [InlineData(12.8, 140.0, false, false)]
    [InlineData(12.8, 1.4, false, false)]
    [InlineData(12.8, 20.0, true, true)]
    public void A_scrap_size_and_a_start_are_held_against_the_series(
        double scrap,
        double? start,
        bool can,
        bool isAsked
    )
    {
        SizeRule rule = SizeRule.Of(Shop().Shop, new ToolAdded(Drift("H6", start, scrap)));
        Assert.Equal(can, rule.Cannot is null);
        Assert.Equal(isAsked, rule.Unlikely is not null);
    }

    [Fact]
    public void Of_a_tool_in_use_without_a_series_the_scrap_size_is_held_against_its_first_reading()
    {
        Story story = new();
        story.Enter(new ToolAdded(Drift("R1", null, 32) with { Eye = null, Start = ToolStart.Unknown }));
        Assert.NotNull(SizeRule.Of(story.Shop, Read("R1", 13.1)).Cannot);
        Assert.NotNull(SizeRule.Of(story.Shop, Read("R1", 31.5)).Unlikely);
        Assert.Equal(default, SizeRule.Of(story.Shop, Read("R1", 33)));
    }

    [Fact]
    public void A_rework_may_bring_a_size_back_but_not_far_beyond_what_it_began_at()
    {
        Story story = Shop();
        SizeRule Reforged(double before, double after) =>
            SizeRule.Of(
                story.Shop,
                new ToolReworked(
                    Mark("H5"),
                    Story.Day(2),
                    Rework.Reforged,
                    "width",
                    Length.FromMm(before),
                    Length.FromMm(after),
                    null,
                    null,
                    null
                )
            );
        Assert.Equal(default, Reforged(12.9, 14.1));
        Assert.NotNull(Reforged(12.9, 141).Cannot);
        Assert.NotNull(Reforged(12.9, 15.4).Cannot);
    }

    [Fact]
    public void A_flat_that_grows_is_held_against_its_limit_alone()
    {
        Story story = new();
        Assert.True(ToolForms.TryFind("fuller", out ToolForm form, out _));
        GaugeMark flat = new(
            "flat",
            Wears.Larger,
            Measures.Flat,
            null,
            Length.FromMm(0.5m),
            null,
            Length.FromMm(3m),
            null
        );
        story.Enter(
            new ToolAdded(Drift("F1", 14, 12) with { Form = form, Eye = null, Place = Place.None, GaugeMarks = [flat] })
        );
        Assert.Equal(default, SizeRule.Of(story.Shop, Read("F1", 3.2, "flat")));
        Assert.NotNull(SizeRule.Of(story.Shop, Read("F1", 32, "flat")).Cannot);
    }

    [Fact]
    public void A_series_ten_times_its_eye_cannot_be()
    {
        Series series = Shop().Shop.Series.Values.First();
        Assert.NotNull(
            SizeRule.Of(Shop().Shop, new SeriesDescribed(series with { Length = Length.FromMm(345m) })).Cannot
        );
    }

    private static ToolMeasured Read(string tool, double mm, string gauge = "width") =>
        new(Mark(tool), gauge, Story.Day(2), null, Length.FromMm(mm), null, null, null);

    private static ToolMark Mark(string text) => Story.Mark(text);

    private static Tool Drift(string mark, double? start, double scrap)
    {
        Assert.True(ToolForms.TryFind("drift", out ToolForm form, out _));
        return new(
            Mark(mark),
            form,
            "H",
            Place.Rough,
            null,
            "4140",
            null,
            null,
            ToolStart.New,
            null,
            ToolCost.Unknown,
            null,
            null,
            [
                new(
                    "width",
                    Wears.Smaller,
                    Measures.Width,
                    null,
                    start is { } mm ? Length.FromMm(mm) : null,
                    Length.FromMm(scrap),
                    null,
                    null
                ),
            ],
            []
        );
    }

    private static Story Shop()
    {
        Story story = new();
        Assert.True(ToolForms.TryFind("drift", out ToolForm form, out _));
        story.Enter(Eye());
        story.Enter(
            new SeriesDescribed(
                new(
                    "H",
                    Place.Rough,
                    form,
                    SectionKind.Rectangle,
                    Length.FromMm(34.5m),
                    Length.FromMm(14m),
                    null,
                    null,
                    null,
                    60,
                    "4140",
                    false,
                    0,
                    null
                )
            )
        );
        story.Enter(new ToolAdded(Drift("H5", 14, 12.8)));
        return story;
    }

    private static EyeDescribed Eye() =>
        new(
            "H",
            SectionKind.Rectangle,
            Length.FromMm(36.5m),
            Length.FromMm(17.5m),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null
        );
}
