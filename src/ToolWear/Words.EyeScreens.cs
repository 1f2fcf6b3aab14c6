using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear;

/// <content>What the screens of eyes, series and bars say.</content>
public static partial class Words
{
    internal const string FirstLettersDo = " The first letters do, or the arrows.";
    internal const string EyesHeading = "Eyes and handles";
    internal const string BarsHeading = "Stock rack";
    internal const string NewEyeHeading = "A new eye";
    internal const string NewHandleHeading = "A new handle";
    internal const string NewBarHeading = "A new bar";
    internal const string NoEyes = "No eye has been entered yet: a enters one, n a handle as bought.";
    internal const string NoBars = "No bar is in the rack yet: a enters one.";
    internal const string NoSeries = "No series can be proposed for this eye: look at its figures.";
    internal const string NoSeriesYet = "No series is entered for it: p proposes one.";
    internal const string SeriesOfIt = "Its series";
    internal const string DriftsNow = "Drifts that make it now";
    internal const string NoDrifts = "none whose length and width are known";
    internal const string HandleFit = "Handle fit";
    internal const string NoHandleNamed = "no handle is named for it";
    internal const string NoEyeForHandle = "No eye takes this handle yet: p makes one for it and proposes its series.";
    internal const string NotYetRecorded = "Changed here; t enters it in the ledger.";
    internal const string StaysEntered = "It is entered in the ledger: cross its entry out there.";
    internal const string Upset = "to be upset";
    internal const string Proposed = "* is proposed and not entered yet: change what you like, then t enters it.";

    internal const string AskNote = "A note, or nothing.";

    internal const string AboutEyes =
        "Every eye with its outline, tolerance, series, the drifts that make it now, and its handle. The inner outline is the drift that is used first: it must lie inside, or it spoils what no later drift can close.";
    internal const string AboutSeries =
        "The tools for one eye in the order of use: sizes at the mark, where the mark lies from the shank mark, how long each is made and how short it may get, bars, hours. A proposal rests on common practice: change what you like.";
    internal const string AboutBars =
        "The bars in the rack, and what of the shop's series could be cut from the chosen one, forged on its end with the usual loss of 7 in 100. Where the bar is thinner than the tool it has to be upset.";

    internal static string ChangeEyeHeading(string eye) => $"Eye {eye}";

    internal static string ChangeHandleHeading(string handle) => $"Handle {handle}";

    internal static string ChangeBarHeading(string bar) => $"Bar {bar}";

    internal static string SeriesHeading(string eye) => $"Series for eye {eye}";

    internal static string NewPlaceHeading(string eye) => $"Another place of the series for eye {eye}";

    internal static string ChangePlaceHeading(string place) => $"Series: {place}";

    internal static string EyeThere(string eye) => $"there is an eye {eye} already: change that one";

    internal static string HandleThere(string handle) => $"there is a handle {handle} already: change that one";

    internal static string BarThere(string bar) => $"there is a bar {bar} already: change that one";

    internal static string NoHandle(string handle, Shop shop) =>
        $"there is no handle {handle}: "
        + (shop.Handles.IsEmpty ? "none has been entered yet" : $"there are {string.Join(", ", shop.Handles.Keys)}");

    internal static string EyeEntered(string eye) => $"Eye {eye} is entered.";

    internal static string HandleEntered(string handle) => $"Handle {handle} is entered.";

    internal static string BarEntered(string bar) => $"Bar {bar} is entered.";

    internal static string SeriesEntered(string eye, int places) =>
        $"The series for eye {eye}: {places} {(places == 1 ? "place is" : "places are")} entered.";

    internal static string EyeRow(string eye) => $"eye {eye}";

    internal static string HandleRow(string handle) => $"h. {handle}";

    internal static string SizesIn(LengthUnit units) => units == LengthUnit.Mm ? "Sizes in mm." : "Sizes in inches.";

    internal static string AndMore(int more) => $"and {more} more";

    internal static string CouldBeCut(string bar) => $"From {bar}, forged on its end, could be cut";

    internal static string NoToolToCut(string steel) =>
        $"No tool of the series is made of {steel}, or no body of one is known.";

    /// <summary>What is to be known of an eye in short lines.</summary>
    /// <param name="eye">The eye.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The lines.</returns>
    internal static IEnumerable<string> EyeFacts(EyeDescribed eye, LengthUnit units)
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

    internal static IEnumerable<string> HandleFacts(HandleDescribed handle, LengthUnit units)
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

    internal static string SeriesLine(Series series, LengthUnit units)
    {
        string Size(Length? size) => size is { } known ? SizeShown.Eye(known, units) : "-";
        string size =
            series.Section == SectionKind.Round
                ? Size(series.Length ?? series.Width)
                : $"{Size(series.Length)} x {Size(series.Width)}";
        string radius = series.Radius is { } r ? $" r {Size(r)}" : "";
        return $"{SeriesName(null, series.Place, series.Form.Name)}: {SectionKinds.Words.Word(series.Section)} {size}{radius}"
            + (series.Steel is { } steel ? $", {steel}" : "");
    }

    internal static string DriftLine(string mark, string place, string size, string? judged) =>
        $"{mark} {place}: {size}{(judged is null ? "" : ", " + judged)}";

    internal static string EyeOfHandle(EyeDescribed eye, LengthUnit units) =>
        $"Eye {eye.Name}, {SizeShown.Eye(eye.Length, units)} x {SizeShown.Eye(eye.Width, units)}";

    /// <summary>How a handle sits in the eye as it is wanted.</summary>
    /// <param name="handle">The handle.</param>
    /// <param name="eye">The eye.</param>
    /// <param name="wanted">What is wanted of it.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Sentences.</returns>
    internal static IEnumerable<string> HandleInEye(
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

    internal static string HandlesTried(IReadOnlyCollection<EyeMeasured> tried)
    {
        int Of(HandleFits fits) => tried.Count(each => each.HandleFits == fits);
        return tried.Count == 0
            ? "no handle was tried in a measured eye yet"
            : $"tried in {tried.Count} measured eyes: {Of(HandleFits.Yes)} fit, {Of(HandleFits.Tight)} tight, {Of(HandleFits.Loose)} loose";
    }

    /// <summary>The slit of a series, with its warnings.</summary>
    /// <param name="plan">The series.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Sentences with their inks.</returns>
    internal static IEnumerable<(string Sentence, Ink Ink)> SlitSentences(SeriesPlan plan, LengthUnit units)
    {
        if (plan.Slit is { } slit)
        {
            string length = SizeShown.Eye(Length.FromMm(slit.LengthMm), units);
            yield return (
                $"The slit of {length} stretches by {Results.Quantity.Share.Show(slit.StretchShare, units)} round the eye.",
                Ink.Plain
            );
            if (slit.Warning is { } warning)
            {
                yield return (warning, Ink.Warn);
            }
        }
        else if (plan.SlitRefusal is { } refusal)
        {
            yield return (refusal, Ink.Warn);
        }
    }

    /// <summary>What a planned tool is cut from.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Words without a full stop; null where nothing is known.</returns>
    internal static string? StockOf(PlannedTool tool, LengthUnit units)
    {
        string[] parts =
        [
            CutsOf(tool.Stock, units),
            BuyOf(tool.Stock, units) is { } buy ? $"buy {buy}" : "",
            .. tool.Stock.Notes,
        ];
        return string.Join("; ", parts.Where(part => part.Length > 0)) is { Length: > 0 } all ? all : null;
    }

    internal static string StockSentence(PlannedTool tool, LengthUnit units)
    {
        string name = SeriesName(null, tool.Series.Place, tool.Series.Form.Name);
        string weight = tool.Stock.PieceKg is { } kg
            ? $"{kg.ToString("0.00", CultureInfo.InvariantCulture)} kg as cut; "
            : "";
        string hours = tool.Cost.Hours is { } work
            ? $"; {work.ToString("0.0", CultureInfo.InvariantCulture)} hours"
            : "";
        string cost = tool.Cost.Total is { } total
            ? $", usually costs {total.ToString("0", CultureInfo.InvariantCulture)}"
            : "";
        string lasts = tool.Series.GuessHeats is { } heats ? $"; usually lasts {About(heats)} heats" : "";
        return $"{name}: {weight}{StockOf(tool, units) ?? "no bar of its steel in the rack"}{hours}{cost}{lasts}.";
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
