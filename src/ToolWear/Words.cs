using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear;

/// <summary>The sentences the user sees.</summary>
public static partial class Words
{
    // what was typed is repeated, however long it was
    private const int MostOfRefusal = 3000;

    /// <summary>What stands beside every forecast. Common practice, no source.</summary>
    public const string ForecastCaution =
        "Heats left is an estimate, not a permission: a drift can crack on any heat. A competent person looks each tool\n"
        + "over and decides; local codes and the employer's rules come first. No inspection record for the authorities.";

    /// <summary>What stands where an eye size is shown. Common practice, no source.</summary>
    public const string EyeCaution =
        "Too tight an eye splits the handle, too loose throws the head: check every head's handle fit by hand.";

    /// <summary>What stands where a finding is entered. 29 CFR 1926.301(c), 29 CFR 1910.242(a).</summary>
    public const string FindingCaution =
        "No mushroomed, chipped, cracked or loose-handled tool in use (29 CFR 1926.301(c), 1910.242(a)).";

    /// <summary>What stands where a tool is added or reworked. Common practice, no source.</summary>
    public const string StruckEndCaution = "Struck end soft, chamfered, square; never a hard face on a hard face.";

    /// <summary>What stands where a tool is ground or mended. Common practice, no source.</summary>
    public const string GrindingCaution =
        "Grinding: guard, rest, eyes and lungs. No plated scrap in the fire; mind welding fume; try unknown steel first.";

    /// <summary>What follows a finding of an over-heated tool. Common practice, no source.</summary>
    public const string OverheatedCaution =
        "An over-heated air-hardening tool is brittle until tempered; a drift stuck in a head that went back to the fire\n"
        + "counts as over-heated. Press it out; never hammer on a cracked one.";

    /// <summary>What stands where a size is read. Common practice, no source.</summary>
    public const string MeasureCaution = "Measure cold: black is not cold.";

    /// <summary>What stands where slitting and opening are begun. Common practice, no source.</summary>
    public const string BlindHoleCaution =
        "Blind holes: little lubricant, dry, lift out often; trapped grease or wet dust can throw the tool. No used\n"
        + "engine oil.";

    /// <summary>What stands at the start of a session. Common practice, no source.</summary>
    public const string HammerCaution =
        "Hold tools by tongs or rod, beside the body, nobody in line; a tool must fit under the raised ram; power off and\n"
        + "ram blocked before touching dies.";

    /// <summary>A refusal.</summary>
    /// <param name="sentence">What is wrong and what would be right.</param>
    /// <returns>The line.</returns>
    public static string Refusal(string sentence) =>
        $"toolwear: {FreeText.Shown(sentence.ReplaceLineEndings(" "), MostOfRefusal)}";

    /// <summary>A body that this program wrote cannot be read.</summary>
    /// <param name="number">The entry's number.</param>
    /// <param name="where">The field at fault, as JSON names it; null where it is none.</param>
    /// <returns>The sentence.</returns>
    public static string EntryUnreadable(long number, string? where) =>
        $"entry {number} of the journal cannot be read: {(where is null ? "a part of it" : $"its field {where}")} does not hold what ToolWear writes there. Nothing was changed. \"toolwear check\" looks further.";

    /// <summary>A journal that is whole holds an entry that cannot be.</summary>
    /// <param name="path">The store.</param>
    /// <param name="why">Which and why.</param>
    /// <returns>The sentence.</returns>
    public static string LedgerImpossible(string path, string why) =>
        $"the journal of {path} holds what cannot be: {why}. Nothing was changed. \"toolwear check\" looks further.";

    /// <summary>The life that was guessed for a tool.</summary>
    /// <param name="wear">Its history.</param>
    /// <param name="outlook">Its forecast, or why there is none.</param>
    /// <returns>For example "one of these usually lasts 60 heats (assumed)"; what the others showed, once they did.</returns>
    public static string Guess(WearHistory wear, Estimated outlook) =>
        outlook is SisterForecast { Teachers: > 0 } taught
            ? $"one of these usually lasts about {About(taught.UsualHeats)} heats (learned from {taught.Teachers} {(taught.Teachers == 1 ? "tool" : "tools")})"
            : $"one of these usually lasts {Heats(wear.GuessHeats)} heats ({(wear.GuessIsAssumed ? "assumed" : "the smith's guess")})";

    /// <summary>Where the forecast that drives verdicts comes from.</summary>
    public const string ForecastBasis =
        "Every tool of this kind and steel wears a little differently; the forecast starts from what its sisters did and\n"
        + "moves to this tool's own readings as they come. If the range is wide, one more caliper reading narrows it.";

    /// <summary>What the forecast that drives verdicts is called.</summary>
    public const string OutlookName = "With its sisters";

    /// <summary>What the columns of heats left mean.</summary>
    public const string LeftExplained =
        "Left: about so many heats; nine times in ten it lies between from and to. Where that range is wider than the\n"
        + "figure, measure once more.";

    /// <summary>What is said where the range is wider than the figure.</summary>
    public const string MeasureOnceMore = "measure once more";

    /// <summary>What stands for heats left where a tool is at or past its limit.</summary>
    public const string Past = "past";

    /// <summary>What marks a range that may be too narrow.</summary>
    public const string NotFollowedMark = "*";

    /// <summary>What stands beside a range until one tool of the kind has been read close to its limit.</summary>
    public const string NotFollowed =
        "No tool of this sort has been followed to its limit yet; the range may be too narrow.";

    /// <summary>How tools of a sort wear, where their readings say so.</summary>
    /// <param name="traits">What the readings of the sort say.</param>
    /// <param name="isFollowed">Whether one was read close to its limit.</param>
    /// <returns>No, one or two sentences.</returns>
    public static string Course(KindTraits traits, bool isFollowed)
    {
        const double likely = 0.8;
        string first =
            traits.ChanceOfFirstCut > likely
                ? "Tools of this sort lose about a third of their limit in the first heats. "
                : "";
        string last =
            !isFollowed
                ? "Past half their limit tools usually wear a little faster; the range allows for it until one of this sort has been measured there."
            : traits.ChanceOfFaster > likely ? "Past half their limit tools of this sort wear faster."
            : traits.ChanceOfSlower > likely ? "Past half their limit tools of this sort wear slower."
            : "";
        return (first + last).Trim();
    }

    /// <summary>What is said when a tool is thrown out as worn and its last size was not read.</summary>
    /// <param name="gauge">The gauge mark that counts as worn out.</param>
    /// <returns>Two sentences.</returns>
    public static string ThrownOutUnread(GaugeHistory gauge) =>
        $"{gauge.Tool.Mark}: its {gauge.Gauge.Name} was not measured after its last heats, so it counts as worn to its limit after {Heats(gauge.Wear.HeatsNow)} heats. Measure the next one before you scrap it.";

    /// <summary>What marks a reading that is more likely wrong than right.</summary>
    public const string Suspect = "likely misread";

    /// <summary>When to measure next.</summary>
    /// <param name="advice">The advice.</param>
    /// <returns>A line of a card with its line end.</returns>
    public static string MeasureNext(MeasuringAdvice advice) =>
        advice.MoreHeats < 0.5
            ? "  Measure it once cold.\n"
            : $"  Measure it after about {About(advice.MoreHeats)} more heats.\n";

    /// <summary>What stands over a list for people.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="units">The unit shown.</param>
    /// <returns>A line with its line end.</returns>
    public static string ShopHeading(Shop shop, LengthUnit units) => $"{SheetSizes(units)}{DemoMark(shop)}\n\n";

    internal static string SheetSizes(LengthUnit units) =>
        $"Sizes in {(units == LengthUnit.Inch ? "inches" : SizeShown.Mark(units))}, heats weighted by their work";

    /// <summary>The mark of the demo.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Words behind a heading, or nothing.</returns>
    public static string DemoMark(Shop shop) => shop.Settings.IsDemo ? "  [demo: an invented shop]" : "";

    /// <summary>The mark of the demo where there is little room.</summary>
    public const string DemoMarkShort = "  [demo]";

    /// <summary>Heats left in words.</summary>
    /// <param name="left">The figures.</param>
    /// <returns>For example "about 34 heats left; nine times in ten between 20 and 55".</returns>
    public static string HeatsLeft(HeatsLeft left)
    {
        string about = left.Q50 is { } middle
            ? $"about {About(middle)} {(About(middle) == "1" ? "heat" : "heats")} left"
            : "more than the readings can bound";
        string from = left.Q05 is { } low ? About(low) : "-";
        return left.Q95 is { } high
            ? $"{about}; nine times in ten between {from} and {About(high)}{(left.IsWide ? $"; {MeasureOnceMore}" : "")}"
            : $"{about}; nineteen times in twenty more than {from}, the readings set no upper bound; {MeasureOnceMore}";
    }

    /// <summary>Heats for people: halves only.</summary>
    /// <param name="heats">Heats.</param>
    /// <returns>For example "11" or "2.5".</returns>
    public static string Heats(double heats) => heats.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Heats that are an estimate: no finer than one.</summary>
    /// <param name="heats">Heats.</param>
    /// <returns>For example "34".</returns>
    public static string About(double heats) => heats.ToString("0", CultureInfo.InvariantCulture);

    /// <summary>A meaning as a sentence.</summary>
    /// <param name="meaning">Without a capital and a full stop.</param>
    /// <returns>With both.</returns>
    internal static string Sentence(string meaning) =>
        meaning.Length == 0 ? "" : $"{char.ToUpperInvariant(meaning[0])}{meaning[1..]}.";
}
