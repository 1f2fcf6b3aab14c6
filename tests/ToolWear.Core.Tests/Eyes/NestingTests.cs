using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Sections;
using Xunit;

namespace ToolWear.Core.Tests.Eyes;

public sealed class NestingTests
{
    private static readonly NamedSection HatchetRough = new("rough", Make.Teardrop(34.5, 14.0, 2.6));
    private static readonly NamedSection HatchetSecond = new("second", Make.Teardrop(36.0, 16.4, 3.0));
    private static readonly NamedSection HatchetFinish = new("finish", Make.Teardrop(36.8, 17.6, 3.2));

    // worked apart from the program, to 0.01 mm
    [Fact]
    public void A_hatchets_series_nests_by_0_52_and_0_27()
    {
        IReadOnlyList<NestingStep> steps = NestingStep.Of([HatchetRough, HatchetSecond, HatchetFinish]);

        Assert.Equal(2, steps.Count);
        Assert.Equal(0.52, steps[0].Clearance.ClearanceMm, 0.005);
        Assert.Equal(0.27, steps[1].Clearance.ClearanceMm, 0.005);
        Assert.Equal("rough lies in second, inside by 0.5, least at the nose.", steps[0].Sentence());
        Assert.False(steps[0].Spoils);
    }

    // worked apart from the program, to 0.01 mm: tomahawk, cross-peen, adze
    [Fact]
    public void The_other_series_nest_by_the_figures_worked_out()
    {
        Section tomahawk = Make.Teardrop(35.18, 22.38, 4.0);
        Assert.Equal(0.706, Inside.Of(tomahawk, Make.Teardrop(33.4, 20.4, 3.5)).ClearanceMm, 0.0005);

        Section peenSecond = Make.Oval(24.6, 16.6);
        Assert.Equal(0.73, Inside.Of(peenSecond, Make.Rectangle(22.0, 12.5, 6)).ClearanceMm, 0.005);
        Assert.Equal(0.49, Inside.Of(Make.Oval(25.6, 17.6), peenSecond).ClearanceMm, 0.005);

        Section adzeSecond = Make.Rectangle(31.0, 24.4, 3);
        Assert.Equal(1.0, Inside.Of(adzeSecond, Make.Rectangle(29.0, 21.5, 3)).ClearanceMm, 0.005);
        Assert.Equal(0.525, Inside.Of(Make.Rectangle(32.05, 25.6, 3), adzeSecond).ClearanceMm, 1e-9);
    }

    [Fact]
    public void A_drift_that_spoils_the_next_is_warned_of()
    {
        NestingStep step = Assert.Single(
            NestingStep.Of([new NamedSection("rough", Make.Rectangle(34, 15, 3)), HatchetFinish])
        );

        Assert.True(step.Spoils);
        Assert.Matches("^rough bursts the nose by 3\\.[12] in finish: it spoils a corner", step.Sentence());
    }

    // worked apart from the program: an adze's second worn to 30.2 x 23.6 holds the rough by 0.6, short way 1.05
    [Fact]
    public void A_worn_adze_second_can_be_ground_to_a_rough_but_a_tomahawk_opener_not()
    {
        NamedSection rough = new("adze rough", Make.Rectangle(29.0, 21.5, 3));
        NamedSection opener = new("tomahawk rough", Make.Teardrop(33.4, 20.4, 3.5));
        Assert.True(
            MakingInto.TryFrom(
                Make.Rectangle(30.2, 23.6, 3),
                [rough, opener],
                Length.FromMm(0.5m),
                out IReadOnlyList<MakingInto>? makings,
                out string? refusal
            ),
            refusal
        );

        Assert.True(makings[0].Possible);
        Assert.Equal(0.6, makings[0].Clearance.ClearanceMm, 1e-6);
        Assert.Equal("inside by 0.6, least at the ends", makings[0].Clearance.ToWords());
        Assert.Equal(0.6, makings[0].LengthwaysMm, 1e-9);
        Assert.Equal(1.05, makings[0].WidthwaysMm, 1e-9);
        Assert.False(makings[1].Possible);
    }

    [Fact]
    public void The_clean_up_allowance_has_to_come_off_all_round()
    {
        NamedSection target = new("smaller", Make.Round(19));
        Section worn = Make.Round(20);

        Assert.True(
            MakingInto.TryFrom(worn, [target], Length.FromMm(0.5m), out IReadOnlyList<MakingInto>? just, out _)
        );
        Assert.True(Assert.Single(just).Possible);
        Assert.True(
            MakingInto.TryFrom(worn, [target], Length.FromMm(0.51m), out IReadOnlyList<MakingInto>? short_, out _)
        );
        Assert.False(Assert.Single(short_).Possible);
        Assert.False(MakingInto.TryFrom(worn, [target], Length.FromMm(-1m), out _, out string? why));
        Assert.Equal("The clean-up all round must be 0 to 20 mm; -1 is not.", why);
    }
}
