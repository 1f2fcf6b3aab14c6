using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tests.Sections;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Planning;

/// <summary>A series proposed for an eye, and what could be cut from a bar.</summary>
public sealed class SeriesPlanTests
{
    private readonly Story story = new();

    // the finish drift is the eye and what it shrinks by: 28.575 x 1.011 / 1.0030084 = 28.80, 19.05 the same 19.20
    // (EN 1993-1-2, 3.4.1.1), to the nearest 0.05 mm
    [Fact]
    public void An_oval_eye_of_1_1_8_by_3_4_in_gets_a_series_that_nests()
    {
        SeriesPlan plan = Propose(Oval(28.575, 19.05));

        Assert.Equal(
            ["slot punch", "rough", "second", "finish"],
            plan.Tools.Select(tool =>
                tool.Series.Place == Place.None ? tool.Series.Form.Name : Places.Words.Word(tool.Series.Place)
            )
        );
        Assert.All(plan.Tools, tool => Assert.False(tool.IsEntered));
        Series finish = plan.Tools[^1].Series;
        Assert.Equal(28.8, finish.Length!.Value.Mm, 1e-9);
        Assert.Equal(19.2, finish.Width!.Value.Mm, 1e-9);
        Assert.Equal(2, plan.Nesting.Length);
        Assert.All(plan.Nesting, step => Assert.False(step.Spoils, step.Sentence()));
        Assert.Null(plan.Slit!.Warning);
        Assert.InRange(plan.Slit.LengthMm, 28.575 - 3, 28.575 - 1);
    }

    // a long flat eye opens with a slitter; the perimeter of a hatchet's stretches 27 % over 2 x 34 mm
    [Fact]
    public void A_slitter_is_proposed_where_its_slit_does_not_stretch_too_far()
    {
        SeriesPlan plan = Propose(Oval(36.5, 17.5) with { Section = SectionKind.Teardrop, NoseRadius = Mm(3.2) });

        Assert.Equal("slitter", plan.Tools[0].Series.Form.Name);
        Assert.Null(plan.Slit!.Warning);
    }

    [Fact]
    public void Any_common_eye_gets_a_series_that_nests_and_bodies_to_cut() =>
        Gen.Select(Gen.Int[150, 450], Gen.Double[1.15, 2.2], Gen.Double[0, 0.05])
            .Sample(
                (length, ratio, taper) =>
                {
                    SeriesPlan plan = Propose(
                        Oval(length / 10.0, length / 10.0 / ratio) with
                        {
                            TaperLength = taper,
                            TaperWidth = taper,
                        }
                    );

                    Assert.All(plan.Nesting, step => Assert.False(step.Spoils, step.Sentence()));
                    foreach (PlannedTool tool in plan.Tools.Where(tool => tool.Series.Form.Name == ToolForms.Drift))
                    {
                        Assert.True(tool.Mark < tool.Least && tool.Least < tool.Overall, tool.ToString());
                    }
                },
                iter: 100
            );

    // against what the invented shop's drifts were forged to: 82 400, 111 400, 155 400 mm3
    [Theory]
    [InlineData(36.8, 17.6, 3.2, 40, 0.030, 82_400)]
    [InlineData(35.18, 22.38, 4.0, 44, 0.035, 111_400)]
    public void The_body_proposed_is_near_what_such_drifts_took(
        double length,
        double width,
        double radius,
        double depth,
        double taper,
        double volume
    )
    {
        Assert.True(
            ToolBlank.TryFor(
                Make.Teardrop(length, width, radius),
                depth,
                taper,
                taper,
                out ToolBlank? blank,
                out string? refusal
            ),
            refusal
        );

        Assert.InRange(blank.Body.VolumeMm3, volume * 0.75, volume * 1.35);
        Assert.Equal(Make.Teardrop(length, width, radius).AreaMm2(), blank.Body.LargestAreaMm2, 1e-9);
        // the struck end and the shank above the mark are 80 mm new, and 40 mm of them have to stay
        Assert.Equal(40, (blank.Overall - blank.Least).Mm, 1e-9);
        Assert.Equal(blank.Overall, blank.Body.Length + Mm(10));
    }

    [Fact]
    public void What_is_entered_stays_and_one_changed_is_to_be_entered_again()
    {
        EyeDescribed eye = Oval(36.5, 20);
        story.Enter(eye);
        SeriesPlan proposed = Propose(eye);
        foreach (PlannedTool tool in proposed.Tools)
        {
            story.Enter(new SeriesDescribed(tool.Series));
        }

        SeriesPlan entered = Propose(eye);
        Assert.All(entered.Tools, tool => Assert.True(tool.IsEntered));
        Series wider = entered.Tools[1].Series with { Width = Mm(30) };
        ImmutableArray<Series> draft =
        [
            .. entered.Tools.Select(tool => tool.Series).Where(each => each.Place != Place.Rough),
            wider,
        ];
        SeriesPlan changed = SeriesPlan.Of(story.Shop, eye, draft);
        Assert.False(Assert.Single(changed.Tools, tool => !tool.IsEntered).IsEntered);
        Assert.True(changed.Nesting[0].Spoils);
    }

    // a steel and a life are those of the shop's other eyes
    [Fact]
    public void Steel_and_life_are_as_the_shop_makes_such_tools()
    {
        story.Enter(
            new SeriesDescribed(
                new Series(
                    "other",
                    Place.Rough,
                    Form("drift"),
                    SectionKind.Oval,
                    Mm(20),
                    Mm(12),
                    null,
                    null,
                    null,
                    44,
                    "1045",
                    false,
                    1,
                    null
                )
            )
        );

        Series rough = Propose(Oval(30, 20)).Tools.Single(tool => tool.Series.Place == Place.Rough).Series;

        Assert.Equal(("1045", 44.0, false, 1), (rough.Steel, rough.GuessHeats, rough.Treated, rough.ReadyDays));
    }

    [Fact]
    public void An_eye_whose_figures_make_no_section_gets_a_reason()
    {
        Assert.False(
            SeriesPlan.TryFor(
                story.Shop,
                Oval(20, 30) with
                {
                    Section = SectionKind.Teardrop,
                },
                out SeriesPlan? plan,
                out string? refusal
            )
        );
        Assert.Null(plan);
        Assert.StartsWith("A teardrop is longer than it is wide", refusal, StringComparison.Ordinal);
    }

    // by hand: a body of 40 000 mm3 with 7 % lost from a round of 20 mm, 314.159 mm2: 136.24 mm, cut as 137, so 3 with a cut of 2 each from 500 mm; 500
    // mm weigh 157 080 mm3 x 7.85e-6 = 1.233 kg, at 4 a kilogram 4.93
    [Fact]
    public void A_bar_gives_as_many_pieces_as_fit_and_says_where_it_is_too_thin()
    {
        story.Enter(new ToolAdded(Drift("R1") with { Eye = "hatchet", Stations = Square(20, 100) }));
        story.Enter(new ToolAdded(Drift("F1", Place.Finish) with { Eye = "hatchet", Stations = Square(10, 100) }));
        Described(Place.Rough);
        Described(Place.Finish);
        BarDescribed bar = new("b", "4140", SectionKind.Round, Mm(20), null, Mm(500), null, 4);
        story.Enter(bar);

        BarCuts cuts = BarCuts.Of(story.Shop, bar);

        Assert.Equal(1.233, cuts.WeightKg!.Value, 5e-4);
        Assert.Equal(4.93m, Math.Round(cuts.Worth!.Value, 2));
        Assert.Equal(2, cuts.Cuts.Length);
        CutFromBar rough = cuts.Cuts.Single(cut => cut.Tools.Place == Place.Rough);
        Assert.Equal(137, rough.Stock.LengthMm);
        Assert.Equal(3, rough.Pieces);
        Assert.True(rough.Stock.MustBeUpset);
        Assert.False(cuts.Cuts.Single(cut => cut.Tools.Place == Place.Finish).Stock.MustBeUpset);
        Assert.Empty(BarCuts.Of(story.Shop, bar with { Steel = "H13" }).Cuts);
        Assert.Null(BarCuts.Of(story.Shop, bar with { Length = null }).Cuts[0].Pieces);
    }

    private SeriesPlan Propose(EyeDescribed eye)
    {
        Assert.True(SeriesPlan.TryFor(story.Shop, eye, out SeriesPlan? plan, out string? refusal), refusal);
        return plan;
    }

    private void Described(Place place) =>
        story.Enter(
            new SeriesDescribed(
                new Series(
                    "hatchet",
                    place,
                    Form("drift"),
                    SectionKind.Rectangle,
                    Mm(20),
                    Mm(20),
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

    private static ImmutableArray<Station> Square(double side, double length) =>
        [
            new(BodyPart.FullSize, Mm(0), Make.Rectangle(side, side, 0)),
            new(BodyPart.Nose, Mm(length), Make.Rectangle(side, side, 0)),
        ];

    private static EyeDescribed Oval(double length, double width) =>
        new(
            "O",
            SectionKind.Oval,
            Mm(length),
            Mm(width),
            null,
            Mm(40),
            0.035,
            0.035,
            Fit.SlipOn,
            Driving.OneFace,
            null,
            null,
            null,
            null,
            null
        );
}
