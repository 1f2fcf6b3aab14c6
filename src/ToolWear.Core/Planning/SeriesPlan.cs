using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Planning;

/// <summary>A tool of a series that is still to be made, with what it takes.</summary>
/// <param name="Series">Its place, and what it is made like.</param>
/// <param name="IsEntered">Whether the shop's ledger has that place already, just so.</param>
/// <param name="Mark">Where its drive mark lies from the shank mark: as on the last one made, else as proposed; null where not known.</param>
/// <param name="Overall">How long it is made; null where not known.</param>
/// <param name="Least">How short it may get; null where not known.</param>
/// <param name="Stock">What it is cut from.</param>
/// <param name="Cost">What such a tool usually costs.</param>
public sealed record PlannedTool(
    Series Series,
    bool IsEntered,
    Length? Mark,
    Length? Overall,
    Length? Least,
    BatchStock Stock,
    PlaceCost Cost
);

/// <summary>The series for an eye: what is entered, and a proposal for the places that are not.</summary>
/// <param name="Eye">The eye.</param>
/// <param name="Tools">The tools in the order of use.</param>
/// <param name="Slit">The slit that its slitter or punch opens; null where there is none or it does not serve.</param>
/// <param name="SlitRefusal">Why its slit does not serve; null where it does.</param>
/// <param name="Nesting">Each drift before the next.</param>
public sealed record SeriesPlan(
    EyeDescribed Eye,
    ImmutableArray<PlannedTool> Tools,
    Slit? Slit,
    string? SlitRefusal,
    ImmutableArray<NestingStep> Nesting
)
{
    // a slot punch is 6 mm thick, a slitter 3 (common practice, no source)
    private const double PunchMm = 6;
    private const double SlitterMm = 3;

    /// <summary>The series of an eye as entered; where the shop has none yet, one proposed for it.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="eye">The eye, which need not be in the shop yet.</param>
    /// <param name="plan">The series, where there is one.</param>
    /// <param name="refusal">Otherwise the reason, with what is allowed.</param>
    /// <returns>True where there is one.</returns>
    public static bool TryFor(
        Shop shop,
        EyeDescribed eye,
        [NotNullWhen(true)] out SeriesPlan? plan,
        [NotNullWhen(false)] out string? refusal
    )
    {
        ImmutableArray<Series> entered = [.. shop.Series.Values.Where(series => series.Eye == eye.Name)];
        refusal = null;
        plan =
            !entered.IsEmpty ? Of(shop, eye, entered)
            : TryPropose(shop, eye, out ImmutableArray<Series> proposed, out refusal) ? Of(shop, eye, proposed)
            : null;
        return plan is not null;
    }

    /// <summary>The series of an eye with places as given, in the shop or not.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="eye">The eye.</param>
    /// <param name="series">The places.</param>
    /// <param name="numbers">How many of each place are cut; null for one of each.</param>
    /// <returns>The series.</returns>
    public static SeriesPlan Of(
        Shop shop,
        EyeDescribed eye,
        ImmutableArray<Series> series,
        Func<Series, int>? numbers = null
    )
    {
        ImmutableArray<Series> ordered =
        [
            .. series.OrderByDescending(each => each.Form.OpensASlit).ThenBy(each => each.Place),
        ];
        StockRack rack = new(shop);
        Slit? slit = null;
        string? refusal = null;
        if (
            ordered.FirstOrDefault(each => each.Form.OpensASlit) is { Length: { } length } opener
            && Wear.SlitOutlooks.SectionOf(eye) is { } section
        )
        {
            SlitTool tool = Wear.SlitOutlooks.ToolOf(opener.Form);
            double punch = tool == SlitTool.Slitter ? 0 : opener.Width?.Mm ?? 0;
            _ = Slit.TryFor(tool, length.Mm, punch, section, out slit, out refusal);
        }

        return new(
            eye,
            [.. ordered.Select(each => Planned(shop, eye, each, rack, numbers?.Invoke(each) ?? 1))],
            slit,
            refusal,
            [.. NestingStep.Of([.. ordered.Where(IsDrift).Select(Named).OfType<NamedSection>()])]
        );
    }

    private static bool IsDrift(Series series) => series.Form.Name == ToolForms.Drift;

    private static NamedSection? Named(Series series) =>
        series.AtMark() is { } section ? new(Places.Words.Word(series.Place), section) : null;

    private static PlannedTool Planned(Shop shop, EyeDescribed eye, Series series, StockRack rack, int number)
    {
        ToolPlace place = new(series.Eye, series.Place, series.Form.Name);
        _ = PlaceBody.TryFind(shop, place, series, eye, out PlaceBody? body, out string? _);
        GaugeMark? overall = body?.Own?.Tool.GaugeMarks.FirstOrDefault(gauge => gauge.Measures == Measures.Overall);
        return new(
            series,
            shop.Series.GetValueOrDefault(new SeriesKey(series.Eye, series.Place, series.Form.Name)) == series,
            body?.Own is { } own ? Wear.OneTool.ToolNow.MarkOf(own.Tool) : body?.Blank?.Mark,
            overall?.Start ?? body?.Blank?.Overall,
            overall?.Least ?? body?.Blank?.Least,
            // no day is set for it yet
            BatchStock.Of(
                body,
                series.Steel,
                (each, steel) => rack.Cut(each, steel, number, new BatchName(place, DateOnly.MinValue))
            ),
            PlaceCost.Usual(shop, place, series, eye)
        );
    }

    private static bool TryPropose(
        Shop shop,
        EyeDescribed eye,
        out ImmutableArray<Series> series,
        [NotNullWhen(false)] out string? refusal
    )
    {
        series = [];
        if (
            !Section.TryMake(
                eye.Section,
                eye.Length,
                eye.Width,
                eye.NoseRadius ?? Length.Zero,
                out Section? section,
                out refusal
            )
            || !SeriesProposal.TryFor(
                section,
                shop.Settings.KnockOutOf(Place.Finish),
                eye.TaperLength ?? 0,
                eye.TaperWidth ?? 0,
                SeriesSteps.Usual,
                out SeriesProposal? proposal,
                out refusal
            )
        )
        {
            return false;
        }

        Series Drift(Place place, Section drift) =>
            Like(shop, eye, place, ToolForms.Drift, drift.Kind) with
            {
                Length = drift.EyeLength,
                Width = drift.EyeWidth,
                Radius = drift.Radius > Length.Zero ? drift.Radius : null,
                TaperLength = proposal.TaperLength,
                TaperWidth = proposal.TaperWidth,
            };
        series =
        [
            Opener(shop, eye, section, proposal.Slits.Shortest),
            Drift(Place.Rough, proposal.Rough),
            Drift(Place.Second, proposal.Second),
            Drift(Place.Finish, proposal.Finish),
        ];
        return true;
    }

    // The shortest slit that does not stretch too far, 3 to 1 mm shorter than the eye: by a slitter; where none serves by
    // a slot punch, whose slug leaves more round the eye; else the longest of those.
    private static Series Opener(Shop shop, EyeDescribed eye, Section section, Slit shortest)
    {
        Slit slit = shortest;
        foreach (SlitTool tool in (SlitTool[])[SlitTool.Slitter, SlitTool.SlotPunch])
        {
            for (double s = HalfMm(shortest.LengthMm); s <= section.EyeLength.Mm - 1; s += 0.5)
            {
                if (
                    (tool == SlitTool.Slitter || section.EyeWidth.Mm >= PunchMm)
                    && Slit.TryFor(tool, s, PunchMm, section, out Slit? found, out string? _)
                )
                {
                    slit = found;
                    if (found.Warning is null)
                    {
                        return OpenerOf(shop, eye, found);
                    }
                }
            }
        }

        return OpenerOf(shop, eye, slit);
    }

    private static Series OpenerOf(Shop shop, EyeDescribed eye, Slit slit)
    {
        bool isPunch = slit.Tool == SlitTool.SlotPunch;
        double thick = isPunch ? PunchMm : SlitterMm;
        return Like(shop, eye, Place.None, isPunch ? "slot punch" : "slitter", SectionKind.Rectangle) with
        {
            Length = Length.FromMm(slit.LengthMm),
            Width = Length.FromMm(thick),
            Radius = Length.FromMm(thick / 2),
        };
    }

    private static double HalfMm(double mm) => Math.Round(mm * 2) / 2;

    // steel, life and days are those of the shop's other eyes
    private static Series Like(Shop shop, EyeDescribed eye, Place place, string formName, SectionKind section)
    {
        _ = ToolForms.TryFind(formName, out ToolForm form, out string _);
        Series? like = shop.Series.Values.LastOrDefault(each => each.Place == place && each.Form == form);
        return new(
            eye.Name,
            place,
            form,
            section,
            null,
            null,
            null,
            null,
            null,
            like?.GuessHeats,
            like?.Steel,
            like?.Treated,
            like?.ReadyDays,
            null
        );
    }
}
