using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>What a card says of the eye, the slit, and of making the tool into another.</summary>
internal static class EyeText
{
    public const string HoldsNothing =
        "It holds no other drift of the shop's series with 0.5 mm to clean up all round.";
    public const string CouldBecome = "By its section as it is now it could be made into";

    // the rest is a matter for make-into
    private const int MostOffers = 4;

    /// <summary>What it makes of its eye, at most 80 columns wide; nothing for a tool that neither makes an eye nor opens
    /// a slit.</summary>
    public static string Of(Card card)
    {
        string eye = card.Drift is { } drift
            ? $"\nEye\n{Lines(Drift(drift, card))}{Wrapped.Of(Cautions.EyeCaution, "  ", "  ")}"
            : "";
        return card.Slit is { } slit ? $"{eye}\nSlit\n{Lines(Slit(slit, card.Units))}" : eye;
    }

    /// <summary>The eye in a sentence or two: what it is, its seat, how deep to drive it or that no depth serves.</summary>
    public static string Short(DriftOutlook drift, LengthUnit units)
    {
        string judged =
            drift.Seat is { } seat
                ? $", seat {Size(seat.MovementMm, units)} {(seat.MovementMm < 0 ? "short" : "beyond")} of {Size(EyeFigures.SeatToleranceMm(drift), units)} allowed"
            : EyeFigures.Judged(drift) is { } word ? $", {word}"
            : "";
        string depth = drift.Drive switch
        {
            DriveTo to => $"; {Depth(to, units)}, to mark {Mark(to, units)}, {Sizes(to.Eye, units)}.",
            NoDepth none => $". No depth serves any more. {none.Why(units)}",
            _ => ".",
        };
        return $"The eye it makes now: about {Sizes(drift.Eye.Eye, units)} {SizeShown.Mark(units)}{judged}{depth}";
    }

    /// <summary>What it can be made into, cautions first, at most 80 columns wide but for names; nothing where nothing can
    /// be said.</summary>
    public static string Into(Card card)
    {
        if (card.Into is not { } into)
        {
            return "";
        }

        string cautions = "\n" + string.Concat(CautionsOf(into).Select(line => Wrapped.Of(line)));
        int more = into.Offers.Length - MostOffers;
        return into.Never is not null ? cautions
            : into.Offers.IsEmpty ? cautions + Wrapped.Of(HoldsNothing)
            : $"{cautions}{CouldBecome}\n{MadeIntoTable.Offers.Over(into.Offers.Take(MostOffers), card.Units).ToText()}"
                + (more > 0 ? Wrapped.Of($"and {more} more: toolwear make-into {card.Forecast.Tool.Mark}") : "");
    }

    /// <summary>What has to be thought of before a tool is made into another, the gravest first.</summary>
    public static ImmutableArray<string> CautionsOf(MadeInto into)
    {
        if (into.Never is { } never)
        {
            return [$"Not to be made into anything: {never.Words}: {never.How}."];
        }

        string[] doubt = into.Doubt is { } doubtful ? [$"First: {doubtful.Words}: {doubtful.How}."] : [];
        return
        [
            .. doubt,
            .. into.SteelIsUnknown ? ["Its steel is unknown: make a trial piece first."] : (string[])[],
            .. into.Offers.IsEmpty ? [] : (string[])[Cautions.MakeIntoCaution, Cautions.GrindingCaution],
        ];
    }

    /// <summary>Where the two sizes of an eye come from.</summary>
    public static string From(DriftOutlook drift, LengthUnit units) =>
        $"Length {drift.Eye.LengthInWords(units)}; width {drift.Eye.WidthInWords(units)}.";

    private static IEnumerable<string> Drift(DriftOutlook drift, Card card)
    {
        LengthUnit units = card.Units;
        string unit = SizeShown.Mark(units);
        string judged = EyeFigures.Judged(drift) is { } word ? ", " + word : "";
        yield return $"The eye it makes now: about {Sizes(drift.Eye.Eye, units)} {unit}{judged}.";
        yield return From(drift, units);
        if (drift is { IsInside: not null, Seat: null, Wanted.Tolerance: { } wanted })
        {
            yield return $"Its tolerance: {Size(wanted.LeastLength.Mm, units)} to {Size(wanted.GreatestLength.Mm, units)} {unit} long, "
                + $"{Size(wanted.LeastWidth.Mm, units)} to {Size(wanted.GreatestWidth.Mm, units)} {unit} wide.";
        }

        if (EyeFigures.Waist(drift) is { } waist)
        {
            yield return $"Its waist: {Sizes(waist, units)} {unit}.";
        }

        if (EyeFigures.FarFace(drift) is { } far)
        {
            yield return $"Its far face: {Sizes(far, units)} {unit}.";
        }

        if (drift.Seat is { } seat)
        {
            yield return $"The head sits {Size(seat.MovementMm, units)} {unit} {(seat.MovementMm < 0 ? "short of" : "beyond")} its place on the handle; {Size(EyeFigures.SeatToleranceMm(drift), units)} {unit} either way is allowed.";
        }

        if (drift.Drive is DriveTo to)
        {
            yield return $"Drive it {Size(to.DeeperMm, units)} {unit} {(to.DeeperMm < 0 ? "less deep" : "deeper")}: new mark {Mark(to, units)} {unit} from the shank mark, and the eye is {Sizes(to.Eye, units)} {unit}.";
        }
        else if (drift.Drive is NoDepth none)
        {
            yield return $"No depth serves any more. {none.Why(units)}";
        }

        foreach (
            (Measures measures, double? mm) in new[]
            {
                (Measures.Length, drift.Limits?.Least.LengthMm),
                (Measures.Width, drift.Limits?.Least.WidthMm),
            }
        )
        {
            GaugeMark? gauge = ToolNow.Gauge(card.Forecast, measures)?.History.Gauge;
            if (gauge is { ScrapSize: null } && mm is { } least)
            {
                yield return $"No scrap size is set for its {gauge.Name}; by the eye's tolerance it is done under {Size(least, units)} {unit}.";
            }
        }
    }

    private static IEnumerable<string> Slit(SlitOutlook slit, LengthUnit units)
    {
        string unit = SizeShown.Mark(units);
        if (slit.Slit is { } opened)
        {
            yield return $"Its edge opens a slit of {Size(slit.EdgeMm, units)} {unit}, which stretches by {Quantity.Share.Show(opened.StretchShare, units)} round the eye.";
        }

        if ((slit.Slit?.Warning ?? slit.SlitRefusal) is { } warning)
        {
            yield return warning;
        }

        if (slit.IsAtItsLimit)
        {
            yield return "Its edge is narrower than the slit needs: it is at its limit.";
        }

        yield return slit switch
        {
            { History: null } =>
                "Dressings left: fewer than three sizes after one are on record, so nobody knows what one takes off.",
            { Dressings: null } => "Dressings left: set the least length at its gauge mark over all.",
            _ =>
                $"Dressings left: {slit.Dressings.Dressings} at {SizeShown.Wear(slit.History.LossMm, units)} {unit} each, about {(slit.HeatsByLength is { } heats ? Words.About(heats) : "-")} heats by length.",
        };
    }

    private static string Lines(IEnumerable<string> lines) =>
        string.Concat(lines.Select(line => Wrapped.Of(line, "  ", "    ")));

    private static string Depth(DriveTo to, LengthUnit units) =>
        $"{Size(to.DeeperMm, units)} {(to.DeeperMm < 0 ? "less deep" : "deeper")}";

    private static string Mark(DriveTo to, LengthUnit units) => SizeShown.Eye(to.MarkFor(units), units);

    private static string Sizes(EyeSize eye, LengthUnit units) =>
        $"{Size(eye.LengthMm, units)} x {Size(eye.WidthMm, units)}";

    private static string Size(double? mm, LengthUnit units) => mm is { } known ? Quantity.Gap.Show(known, units) : "-";
}
