using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Sections;
using ToolWear.Core.Wear;

namespace ToolWear;

/// <content>What is said of eyes, slits and of making a worn tool into another.</content>
public static partial class Words
{
    internal const string EyeCautionShort =
        "Too tight an eye splits the handle, too loose throws the head: check each fit.";
    internal const string EyeHeading = "Eye";
    internal const string SlitHeading = "Slit";
    internal const string TheGuess = "the smith's guess";
    internal const string HoldsNothing =
        "It holds no other drift of the shop's series with 0.5 mm to clean up all round.";
    internal const string CouldBecome = "By its section as it is now it could be made into";
    internal const string TrialFirst = "Its steel is unknown: make a trial piece first.";
    internal const string SlitAtItsLimit = "Its edge is narrower than the slit needs: it is at its limit.";
    internal const string NoDressing = "Dressings left: none is on record yet, so nobody knows what one takes off.";
    internal const string NoLeastLength = "Dressings left: set the least length at its gauge mark over all.";

    /// <summary>A share in whole hundreds.</summary>
    /// <param name="share">The share.</param>
    /// <returns>For example "29 %".</returns>
    internal static string WholePercent(double share) =>
        (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    /// <summary>Where a clearance is least, in one word.</summary>
    /// <param name="clearance">The clearance.</param>
    /// <returns>nose, back, cheek or ends.</returns>
    internal static string Nearest(Clearance clearance) =>
        clearance.LeastAt == NearestAt.Cheek ? "cheek"
        : clearance.EndsAlike ? "ends"
        : clearance.LeastAt == NearestAt.Nose ? "nose"
        : "back";

    internal static string TheirLives(int tools) => tools == 1 ? "one such tool" : $"{tools} such tools";

    /// <summary>How an eye lies to what it is judged by.</summary>
    /// <param name="outlook">The drift.</param>
    /// <returns>Words without a full stop; null where it is not judged.</returns>
    internal static string? EyeJudged(DriftOutlook? outlook)
    {
        if (outlook?.Wanted?.Judged is not { } judged || outlook.IsInside is not { } isInside)
        {
            return null;
        }

        string by = outlook.Seat is null ? "tolerance" : "seat tolerance";
        if (isInside)
        {
            return $"inside its {by}";
        }

        EyeSize eye = outlook.Eye.Eye;
        string[] faults =
        [
            eye.LengthMm < judged.LeastLength.Mm ? "too short" : "",
            eye.LengthMm > judged.GreatestLength.Mm ? "too long" : "",
            eye.WidthMm < judged.LeastWidth.Mm ? "too narrow" : "",
            eye.WidthMm > judged.GreatestWidth.Mm ? "too wide" : "",
        ];
        return $"outside its {by}: {string.Join(" and ", faults.Where(fault => fault.Length > 0))}";
    }

    internal static string EyeNowLine(string length, string width, string unit, string? judged) =>
        $"The eye it makes now: about {length} x {width} {unit}{(judged is null ? "" : ", " + judged)}.";

    internal static string EyeFrom(string length, string width) => $"Length {length}; width {width}.";

    internal static string ToleranceLine(string length, string width, string unit) =>
        $"Its tolerance: {length} {unit} long, {width} {unit} wide.";

    internal static string WaistLine(string length, string width, string unit) =>
        $"Its waist: {length} x {width} {unit}.";

    internal static string FarFaceLine(string length, string width, string unit) =>
        $"Its far face: {length} x {width} {unit}.";

    internal static string SeatLine(double movementMm, string movement, string tolerance, string unit) =>
        $"The head sits {movement} {unit} {(movementMm < 0 ? "short of" : "beyond")} its place on the handle; {tolerance} {unit} either way is allowed.";

    internal static string DriveLine(double deeperMm, string deeper, string mark, string eye, string unit) =>
        $"Drive it {deeper} {unit} {(deeperMm < 0 ? "less deep" : "deeper")}: new mark {mark} {unit} from the shank mark, and the eye is {eye} {unit}.";

    internal static string NoDepthLine(string why) => $"No depth serves any more. {why}";

    internal static string ScrapProposed(string gauge, string size, string unit) =>
        $"No scrap size is set for its {gauge}; by the eye's tolerance it is done under {size} {unit}.";

    internal static string SlitLine(string edge, string stretch, string unit) =>
        $"Its edge opens a slit of {edge} {unit}, which stretches by {stretch} round the eye.";

    internal static string DressingsLine(string left, string loss, string unit, string heats) =>
        $"Dressings left: {left} at {loss} {unit} each, about {heats} heats by length.";

    internal static string NotMadeInto(ToolLookedOver never) =>
        $"Not to be made into anything: found {ToolLookedOver.FindingWords.Word(never.Finding)} on {never.On:yyyy-MM-dd}{ByWhom(never.By)}.";

    internal static string ThinkFirst(ToolLookedOver doubt) =>
        doubt.Finding == Finding.Stuck
            ? $"Found stuck on {doubt.On:yyyy-MM-dd}{ByWhom(doubt.By)}: if it went back to the fire in the head it counts as over-heated and is not made into anything."
            : $"Found heat-checked on {doubt.On:yyyy-MM-dd}{ByWhom(doubt.By)}: every check has to be ground out first.";

    internal static string OfferInWords(MadeIntoOffer offer, Core.Measure.LengthUnit units) =>
        SeriesName(offer.Series.Eye, offer.Series.Place, offer.Series.Form.Name)
        + $" ({offer.Making.Clearance.ToWords(units)}{(offer.Heats is { } heats ? $"; about {About(heats)} heats" : "")})";

    internal static string NoEyeOf(Core.Tools.ToolMark tool) =>
        $"{tool}: its length and width are not both known, or it is no drift";

    internal static string MoreOffers(int more, Core.Tools.ToolMark tool) =>
        $"and {more} more: toolwear make-into {tool}";

    internal static string ScrapComesFrom(ScrapProposal scrap) =>
        scrap.Like is { } like
            ? $"The scrap size proposed is that of {like.Mark}."
            : "The scrap size proposed follows from the eye's tolerance.";

    internal const string DoesScrap =
        "Scraps the tool, or says what it was made into; what it could still be made into stands below.";
    internal const string AskCause =
        "What ended it: worn, cracked, broken, bent, soft, glass-hard, lost, made-into, other; the first letters do, or the arrows.";
    internal const string AskInto = "Only with made-into: the mark of the new tool, which is added first. Else empty.";
    internal const string MadeIntoHow = "To do so: Esc, add the new tool, and come back with made-into and its mark.";

    internal static string ScrapHeading(Core.Tools.ToolMark tool) => $"Scrap {tool}";

    internal static string ScrappedNow(Core.Tools.ToolMark tool) => $"{tool} is scrapped. Bksp takes it back.";

    internal static string EyeShort(string length, string width, string unit) =>
        $"The eye it makes now: about {length} x {width} {unit}";

    internal static string SeatShort(double movementMm, string movement, string tolerance) =>
        $", seat {movement} {(movementMm < 0 ? "short" : "beyond")} of {tolerance} allowed";

    internal static string DriveShort(double deeperMm, string deeper, string mark, string eye) =>
        $"; {deeper} {(deeperMm < 0 ? "less deep" : "deeper")}, to mark {mark}, {eye}";

    private static string ByWhom(string? who) => who is null ? "" : $" by {who}";
}
