using ToolWear.Core.Wear;

namespace ToolWear;

/// <content>What is said of eyes, slits and of making a worn tool into another.</content>
public static partial class Words
{
    internal const string EyeCautionShort =
        "Too tight an eye splits the handle, too loose throws the head: check each fit.";

    internal static string OfferInWords(MadeIntoOffer offer, Core.Measure.LengthUnit units) =>
        SeriesName(offer.Series.Eye, offer.Series.Place, offer.Series.Form.Name)
        + $" ({offer.Making.Clearance.ToWords(units)}{(offer.Heats is { } heats ? $"; about {About(heats)} heats" : "")})";

    internal static string NoEyeOf(Core.Tools.ToolMark tool) =>
        $"{tool}: its length and width are not both known, or it is no drift";

    internal static string ScrapComesFrom(ScrapProposal scrap) =>
        scrap.Like is { } like
            ? $"The scrap size proposed is that of {like.Mark}."
            : "The scrap size proposed follows from the eye's tolerance.";

    internal const string AskCause =
        "What ended it: worn, cracked, broken, bent, soft, glass-hard, lost, made-into, other; the first letters do, or the arrows.";
    internal const string AskInto = "Only with made-into: the mark of the new tool, which is added first. Else empty.";
    internal const string MadeIntoHow = "To do so: Esc, add the new tool, and come back with made-into and its mark.";

    internal static string ScrapHeading(Core.Tools.ToolMark tool) => $"Scrap {tool}";

    internal static string ScrappedNow(Core.Tools.ToolMark tool) => $"{tool} is scrapped. Bksp takes it back.";
}
