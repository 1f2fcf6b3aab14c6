using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Tools;

public sealed class ToolTests
{
    private static readonly GaugeMark Width = new(
        "width",
        Wears.Smaller,
        Measures.Width,
        null,
        Mm(16),
        Mm(15.2),
        Mm(17),
        null
    );
    private static readonly GaugeMark Flat = new(
        "flat",
        Wears.Larger,
        Measures.Flat,
        null,
        Mm(2),
        Mm(1),
        Mm(3.5),
        null
    );

    [Fact]
    public void A_gauge_mark_has_its_limit_in_the_main_direction_of_wear()
    {
        Assert.Equal(Mm(15.2), Width.ScrapSize);
        Assert.Equal(Mm(0.8), Width.LimitFrom(Mm(16)));
        Assert.Equal(Mm(0.3), Width.WearTo(Mm(16), Mm(15.7)));
        Assert.Equal(Mm(-0.2), Width.WearTo(Mm(16), Mm(16.2)));
        Assert.Equal(Mm(3.5), Flat.ScrapSize);
        Assert.Equal(Mm(1.5), Flat.LimitFrom(Mm(2)));
        Assert.Equal(Mm(0.4), Flat.WearTo(Mm(2), Mm(2.4)));
    }

    [Fact]
    public void Without_a_scrap_size_or_past_it_there_is_no_limit()
    {
        Assert.Null((Width with { Least = null }).LimitFrom(Mm(16)));
        Assert.Null(Width.LimitFrom(Mm(15.2)));
        Assert.Null(Width.LimitFrom(Mm(15)));
        Assert.Null(Flat.LimitFrom(Mm(4)));
    }

    [Fact]
    public void Wear_to_the_scrap_size_is_the_limit() =>
        Gen.Select(new ToolGens(Pool.Narrow).Gauge, Lengths.Caliper)
            .Sample(
                (gauge, start) =>
                {
                    Assert.Null(gauge.Refusal());
                    Length? limit = gauge.LimitFrom(start);
                    Assert.True(limit is null || (gauge.ScrapSize!.Value - start).Abs() == limit.Value);
                    Assert.Equal(
                        limit is null,
                        gauge.ScrapSize is not { } scrap || gauge.WearTo(start, scrap) <= Length.Zero
                    );
                }
            );

    [Fact]
    public void What_no_gauge_mark_can_have_is_refused_by_name()
    {
        const string zero = "gauge mark width: a size is above zero and at most 10 m";
        Assert.Null(Width.Refusal());
        Assert.Null((Width with { FromMark = Length.Zero }).Refusal());
        Assert.Equal(zero, (Width with { Start = Length.Zero }).Refusal());
        Assert.Equal(zero, (Width with { Least = Mm(-1) }).Refusal());
        Assert.Equal(zero, (Width with { Greatest = Length.Zero }).Refusal());
        Assert.Equal(zero, (Width with { Resolution = Length.Zero }).Refusal());
        Assert.Equal(zero, (Width with { FromMark = Mm(-0.1) }).Refusal());
        Assert.Equal(
            "gauge mark width: the least usable size 17 mm must lie under the greatest 17 mm",
            (Width with { Least = Mm(17) }).Refusal()
        );
        Assert.Equal(
            "gauge mark width wears smaller, so its scrap size 15.2 mm must lie under the starting size 15.2 mm",
            (Width with { Start = Mm(15.2) }).Refusal()
        );
        Assert.Equal(
            "gauge mark flat wears larger, so its scrap size 3.5 mm must lie over the starting size 4 mm",
            (Flat with { Start = Mm(4) }).Refusal()
        );
        Assert.Equal(
            "gauge mark \"\": 1 to 40 characters with no space at either end",
            (Width with { Name = "" }).Refusal()
        );
    }

    [Fact]
    public void A_struck_tool_is_measured_over_all_once()
    {
        Tool drift = Story.Drift("R1").WithOverall();
        Assert.Equal("width overall", string.Join(' ', drift.GaugeMarks.Select(gauge => gauge.Name)));
        Assert.Equal(Measures.Overall, drift.Gauge("overall")?.Measures);
        Assert.Same(drift, drift.WithOverall());
        Tool own = Story.Drift("R1") with { GaugeMarks = [Width with { Name = "all", Measures = Measures.Overall }] };
        Assert.Same(own, own.WithOverall());
        Tool die = Story.Drift("R1") with { Form = Story.Form("die") };
        Assert.Same(die, die.WithOverall());
    }

    [Fact]
    public void What_no_tool_can_be_is_refused()
    {
        Tool tool = Story.Drift("R1");
        Assert.Null(tool.Refusal());
        Assert.Equal(
            "two gauge marks are named width: each needs a name of its own",
            (tool with { GaugeMarks = [Width, Width] }).Refusal()
        );
        Assert.Equal("costs and hours are zero or more", (tool with { Cost = new(-1, null, null, null) }).Refusal());
        Assert.Equal("guess_heats 0: a number of heats from 0.5 to 100000", (tool with { GuessHeats = 0 }).Refusal());
        Assert.Equal(
            "guess_heats NaN: a number of heats from 0.5 to 100000",
            (tool with { GuessHeats = double.NaN }).Refusal()
        );
        Assert.Equal(
            "gauge mark width: a size is above zero and at most 10 m",
            (tool with { GaugeMarks = [Width with { Start = Length.Zero }] }).Refusal()
        );
        Assert.Equal("a tool has a mark of 1 to 40 characters", (tool with { Mark = default }).Refusal());
    }

    [Fact]
    public void Stations_run_outwards_from_the_shank_mark()
    {
        ToolStation[] stations = [.. Fixed.Samples(ToolGens.Stations.Where(many => many.Length > 1), 1).Single()];
        Tool tool = Story.Drift("R1") with { Stations = [.. stations] };
        Assert.Null(tool.Refusal());
        const string outwards = "stations run from the shank mark outwards, each from_mark larger than the one before";
        Assert.Equal(outwards, (tool with { Stations = [.. stations.Reverse()] }).Refusal());
        Assert.Equal(outwards, (tool with { Stations = [stations[0], stations[0]] }).Refusal());
        Assert.Equal(
            "a station's from_mark is zero or more",
            (tool with { Stations = [stations[0] with { FromMark = Mm(-1) }] }).Refusal()
        );
    }

    [Fact]
    public void A_start_says_how_its_heats_are_known_or_that_they_are_not()
    {
        const string together =
            "heats_before and heats_before_how go together: a number with counted or estimated, or none with unknown";
        Assert.Null(ToolStart.New.Refusal());
        Assert.Null(ToolStart.Unknown.Refusal());
        Assert.True(ToolStart.Unknown.IsUnknown);
        Assert.False(ToolStart.New.IsUnknown);
        Assert.Null(new ToolStart(StartedAs.InUse, Heats.Of(40), HeatsBeforeHow.Estimated).Refusal());
        Assert.Equal(together, new ToolStart(StartedAs.InUse, null, HeatsBeforeHow.Counted).Refusal());
        Assert.Equal(together, new ToolStart(StartedAs.InUse, Heats.Of(40), HeatsBeforeHow.Unknown).Refusal());
        Assert.Equal(together, new ToolStart(StartedAs.InUse, Heats.Of(40), null).Refusal());
        const string isNew = "a new tool has no heats before: leave heats_before empty, or let it start as in use";
        Assert.Equal(isNew, new ToolStart(StartedAs.New, Heats.Of(1), HeatsBeforeHow.Counted).Refusal());
        Assert.Equal(isNew, new ToolStart(StartedAs.New, null, HeatsBeforeHow.Unknown).Refusal());
    }

    [Fact]
    public void Every_tool_that_the_generators_make_can_be() =>
        new ToolGens(Pool.Wide).Tool.Sample(tool =>
        {
            Assert.Null(tool.Refusal());
            Assert.Null(tool.WithOverall().Refusal());
        });

    private static Length Mm(double mm) => Length.FromMm(mm);
}
