using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>A row of the list: an eye or a handle.</summary>
/// <param name="Eye">The eye; null for a handle.</param>
/// <param name="Handle">The handle; null for an eye.</param>
internal sealed record EyeOrHandle(EyeDescribed? Eye, HandleDescribed? Handle)
{
    /// <summary>What tells it from all others.</summary>
    public string Key => Eye is { } eye ? "e" + eye.Name : "h" + Handle!.Name;

    /// <summary>Its name.</summary>
    public string Name => Eye?.Name ?? Handle!.Name;
}

/// <summary>What is told of one eye or handle: short facts, sections to draw, then sentences.</summary>
/// <param name="Facts">Short lines that stand beside the drawing.</param>
/// <param name="Outlines">The sections, the eye's first, each with how far it lies towards the nose.</param>
/// <param name="Told">Lines below, each with its ink.</param>
internal sealed record EyePage(
    ImmutableArray<string> Facts,
    ImmutableArray<(Section Section, double ShiftMm)> Outlines,
    ImmutableArray<(string Line, Ink Ink)> Told
)
{
    private const string NoSeriesYet = "It has no series yet: p proposes one.";
    private const string SeriesOfIt = "Its series";
    private const string DriftsNow = "Drifts that make it now";
    private const string NoDrifts = "none whose length and width are known";
    private const string HandleFit = "Handle fit";
    private const string NoHandleNamed = "no handle is named for it";
    private const string NoEyeForHandle = "No eye takes this handle yet: p makes one for it and proposes its series.";

    /// <summary>Makes the page.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecasts">The forecasts; null while they are being worked out.</param>
    /// <param name="row">The eye or handle.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The page.</returns>
    public static EyePage Of(Shop shop, ShopForecasts? forecasts, EyeOrHandle row, LengthUnit units) =>
        row.Eye is { } eye
            ? OfEye(shop, forecasts, eye, units)
            : new([.. HandleFacts(row.Handle!, units)], [], [.. OfHandle(shop, row.Handle!, units)]);

    private static EyePage OfEye(Shop shop, ShopForecasts? forecasts, EyeDescribed eye, LengthUnit units)
    {
        SeriesPlan? plan = shop.Series.Keys.Any(key => key.Eye == eye.Name)
            ? SeriesPlan.Of(shop, eye, [.. shop.Series.Values.Where(series => series.Eye == eye.Name)])
            : null;
        List<(string, Ink)> told = [];
        told.AddRange(SeriesOf(plan, units));
        told.AddRange(DriftsOf(forecasts, eye, units));
        told.AddRange(FitOf(shop, eye, units));
        return new(
            [.. EyeFacts(eye, units)],
            SlitOutlooks.SectionOf(eye) is { } section ? Outline(section, plan) : [],
            [.. told]
        );
    }

    // the eye, and in it the drift used first: where it would burst the eye one sees it
    private static ImmutableArray<(Section, double)> Outline(Section section, SeriesPlan? plan)
    {
        Section? firstDrift = plan
            ?.Tools.Where(tool => tool.Series.Form.Name == ToolForms.Drift && tool.Series.Place != Place.Opener)
            .Select(tool => tool.Series.AtMark())
            .FirstOrDefault(drift => drift is not null);
        return firstDrift is null
            ? [(section, 0)]
            : [(section, 0), (firstDrift, Inside.Of(section, firstDrift).ShiftMm)];
    }

    private static IEnumerable<(string, Ink)> SeriesOf(SeriesPlan? plan, LengthUnit units)
    {
        if (plan is null)
        {
            yield return (NoSeriesYet, Ink.Warn);
            yield break;
        }

        yield return (SeriesOfIt, Ink.Strong);
        foreach (PlannedTool tool in plan.Tools)
        {
            yield return ("  " + SeriesLine(tool.Series, units), Ink.Plain);
        }

        foreach (NestingStep step in plan.Nesting)
        {
            yield return ("  " + step.Sentence(units), step.Spoils ? Ink.Warn : Ink.Plain);
        }

        foreach ((string sentence, Ink ink) in QuoteText.SlitSentences(plan, units))
        {
            yield return ("  " + sentence, ink);
        }
    }

    private static IEnumerable<(string, Ink)> DriftsOf(ShopForecasts? forecasts, EyeDescribed eye, LengthUnit units)
    {
        yield return (DriftsNow, Ink.Strong);
        if (forecasts is null)
        {
            yield return ("  " + Words.WorkingOut, Ink.Quiet);
            yield break;
        }

        bool isAny = false;
        foreach (ToolForecast tool in forecasts.InService.Where(each => each.Tool.Tool.Eye == eye.Name))
        {
            if (DriftOutlooks.Of(forecasts, tool) is { } outlook)
            {
                isAny = true;
                yield return (
                    "  "
                        + DriftLine(
                            tool.Tool.Mark.Text,
                            RackTable.PlaceOrForm(tool.Tool.Tool),
                            $"{Quantity.Gap.Show(outlook.Eye.Eye.LengthMm, units)} x {Quantity.Gap.Show(outlook.Eye.Eye.WidthMm, units)}",
                            EyeFigures.Judged(outlook)
                        ),
                    outlook.IsInside == false ? Ink.Warn : Ink.Plain
                );
            }
        }

        if (!isAny)
        {
            yield return ("  " + NoDrifts, Ink.Quiet);
        }
    }

    private static IEnumerable<(string, Ink)> FitOf(Shop shop, EyeDescribed eye, LengthUnit units)
    {
        yield return (HandleFit, Ink.Strong);
        if (eye.Handle is { } name && shop.Handles.GetValueOrDefault(name) is { } handle)
        {
            foreach (string line in HandleInEye(handle, eye, DriftOutlooks.WantedOf(shop, eye), units))
            {
                yield return ("  " + line, Ink.Plain);
            }
        }
        else
        {
            yield return ("  " + NoHandleNamed, Ink.Quiet);
        }

        EyeMeasured[] tried =
        [
            .. shop
                .EyesMeasured.Select(each => each.What)
                .OfType<EyeMeasured>()
                .Where(each => each.Eye == eye.Name && each.HandleFits is not null),
        ];
        yield return ("  " + HandlesTried(tried), Ink.Plain);
    }

    private static IEnumerable<(string, Ink)> OfHandle(Shop shop, HandleDescribed handle, LengthUnit units)
    {
        EyeDescribed[] eyes = [.. shop.Eyes.Values.Where(eye => eye.Handle == handle.Name)];
        if (eyes.Length == 0)
        {
            yield return (NoEyeForHandle, Ink.Warn);
        }

        foreach (EyeDescribed eye in eyes)
        {
            yield return (EyeOfHandle(eye, units), Ink.Strong);
            foreach (string line in HandleInEye(handle, eye, DriftOutlooks.WantedOf(shop, eye), units))
            {
                yield return ("  " + line, Ink.Plain);
            }
        }
    }

    private static IEnumerable<string> EyeFacts(EyeDescribed eye, LengthUnit units)
    {
        string Size(Length? size) => size is { } known ? SizeShown.Eye(known, units) : "-";
        string radius = eye.NoseRadius is { } r ? $" r {Size(r)}" : "";
        yield return $"{SectionKinds.Words.Word(eye.Section)} {Size(eye.Length)} x {Size(eye.Width)}{radius}";
        yield return $"depth {Size(eye.Depth)}, taper {TaperText(eye.TaperLength)} / {TaperText(eye.TaperWidth)}";
        yield return (eye.Fit is { } fit ? EyeDescribed.FitWords.Word(fit) : "fit not known")
            + (eye.Driven is { } driven ? $", driven {DrivenText(driven)}" : "");
        yield return eye.LeastLength is null || eye.LeastWidth is null
            ? "no tolerance set"
            : $"length {Size(eye.LeastLength)} to {Size(eye.GreatestLength)}";
        if (eye.LeastLength is not null && eye.LeastWidth is not null)
        {
            yield return $"width {Size(eye.LeastWidth)} to {Size(eye.GreatestWidth)}";
        }

        yield return $"handle {eye.Handle ?? "-"}";
    }

    private static IEnumerable<string> HandleFacts(HandleDescribed handle, LengthUnit units)
    {
        yield return $"{SizeShown.Eye(handle.Length, units)} x {SizeShown.Eye(handle.Width, units)} where it enters the eye";
        yield return handle.Taper is > 0 and { } taper ? $"taper {TaperText(taper)}" : "no taper: it is wedged";
        if (handle.SeatTolerance is { } seat)
        {
            yield return $"seat {SizeShown.Eye(seat, units)} either way";
        }

        if (handle.Note is { } note)
        {
            yield return note.ReplaceLineEndings(" ");
        }
    }

    private static string SeriesLine(Series series, LengthUnit units)
    {
        string Size(Length? size) => size is { } known ? SizeShown.Eye(known, units) : "-";
        string size =
            series.Section == SectionKind.Round
                ? Size(series.Length ?? series.Width)
                : $"{Size(series.Length)} x {Size(series.Width)}";
        string radius = series.Radius is { } r ? $" r {Size(r)}" : "";
        return $"{Words.SeriesName(null, series.Place, series.Form.Name)}: {SectionKinds.Words.Word(series.Section)} {size}{radius}"
            + (series.Steel is { } steel ? $", {steel}" : "");
    }

    private static string DriftLine(string mark, string place, string size, string? judged) =>
        $"{mark} {place}: {size}{(judged is null ? "" : ", " + judged)}";

    private static string EyeOfHandle(EyeDescribed eye, LengthUnit units) =>
        $"Eye {eye.Name}, {SizeShown.Eye(eye.Length, units)} x {SizeShown.Eye(eye.Width, units)}";

    private static IEnumerable<string> HandleInEye(
        HandleDescribed handle,
        EyeDescribed eye,
        EyeWanted wanted,
        LengthUnit units
    )
    {
        yield return $"{handle.Name} {SizeShown.Eye(handle.Length, units)} x {SizeShown.Eye(handle.Width, units)}: {Spare(handle, wanted.Size, units)} at the face";
        if (
            wanted is { Driving: Driving.BothFaces, DepthMm: { } depth }
            && EyeAlongDepth.TryFor(
                Driving.BothFaces,
                wanted.Size,
                depth,
                wanted.TaperLength,
                wanted.TaperWidth,
                out EyeAlongDepth? along,
                out string? _
            )
        )
        {
            yield return $"{Spare(handle, along.Waist, units)} at the waist";
        }

        if (wanted.Seat is { } seat)
        {
            string tolerance = SizeShown.Eye(Length.FromMm(seat.ToleranceMm), units);
            string ofEye = SizeShown.Wear(seat.ToleranceMm * seat.HandleTaper, units);
            yield return $"its seat may lie {tolerance} {SizeShown.Mark(units)} either way: {ofEye} of eye at its taper of {TaperText(seat.HandleTaper)}";
        }
    }

    private static string HandlesTried(EyeMeasured[] tried)
    {
        int Of(HandleFits fits) => tried.Count(each => each.HandleFits == fits);
        return tried.Length == 0
            ? "no handle was tried in a measured eye yet"
            : $"tried in {tried.Length} measured eyes: {Of(HandleFits.Yes)} fit, {Of(HandleFits.Tight)} tight, {Of(HandleFits.Loose)} loose";
    }

    private static string Spare(HandleDescribed handle, EyeSize eye, LengthUnit units)
    {
        string Way(double mm) => SizeShown.Wear(Math.Abs(mm), units) + (mm < 0 ? " too large" : " to spare");
        return $"{Way(eye.LengthMm - handle.Length.Mm)} in length, {Way(eye.WidthMm - handle.Width.Mm)} in width";
    }

    private static string TaperText(double? taper) => taper?.ToString("0.###", CultureInfo.InvariantCulture) ?? "-";

    private static string DrivenText(Driving driven) =>
        driven switch
        {
            Driving.BothFaces => "from both faces",
            Driving.OneFace => "from one face",
            _ => "right through",
        };
}
