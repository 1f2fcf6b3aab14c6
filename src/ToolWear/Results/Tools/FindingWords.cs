using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Wording;

namespace ToolWear.Results.Tools;

/// <summary>What is said of findings, of what follows from them, and of which tool may be used next.</summary>
internal static class FindingWords
{
    private const string OverheatedShort = "Over-heated air-hardening steel is brittle until tempered.";

    public const string OnceMore = "Press the same key again to record it anyway.";

    public static string SaidOtherwise(ToolMark tool, string before) => $"{tool} was {before}.";

    public static string LookedForBefore(ToolLookedFor before) =>
        $"{before.Tool} was {(before.Seen ? "seen" : "not seen")} on {before.On:yyyy-MM-dd}.";

    public static string LedTo(LedTo led) =>
        led switch
        {
            Core.Ledger.LedTo.LeftIn => "left in too long",
            Core.Ledger.LedTo.Water => "water on hot steel",
            Core.Ledger.LedTo.MissedBlow => "missed blow",
            Core.Ledger.LedTo.StruckCold => "struck cold",
            Core.Ledger.LedTo.HeatTreatment => "poor heat treatment",
            _ => "not known what led to it",
        };

    /// <summary>What was found, what follows from it, and the caution that belongs to it; on a screen in short, for there it
    /// stands beside the question.</summary>
    public static string Found(Shop shop, ToolLookedOver found, bool isShort = false)
    {
        string mark = found.Tool.Text;
        // it stands wherever a finding is entered, a sound one too
        string inUse = isShort ? "" : " " + Cautions.FindingCaution;
        if (found.Finding == Finding.Sound)
        {
            return shop.TryFind(found.Tool, out ToolInShop? tool) && LookedOver.Of(shop, tool).Forbids is { } still
                ? $"{mark}: looked over, but {still.Words}. Looking alone does not bring it back: {still.How}.{inUse}"
                : $"{mark}: sound.{inUse}";
        }

        FindingRule rule = LookingOver.RuleOf(shop, found);
        string at = found.Part is { } part ? $" at the {ToolLookedOver.PartWords.Word(part)}" : "";
        string caution =
            rule.Caution == CautionOf.Overheated ? " " + (isShort ? OverheatedShort : Cautions.OverheatedCaution) : "";
        string follows =
            !rule.Steps.IsEmpty
                ? $"Before it is used again: {string.Join("; ", rule.Steps.Select(each => each.How))}; then a sound look."
            : rule.Forbids ? $"It is out for good: {rule.Else}."
            : Sentence(rule.Else);
        return $"{mark}: {ToolLookedOver.FindingWords.Word(found.Finding)}{at}. {follows}{caution}{inUse}";
    }

    /// <summary>Why a tool should not have been used, and what to do; null where nothing speaks against it.</summary>
    public static string? Against(Shop shop, ShopForecasts? forecasts, long tool) =>
        Working.Against(shop, forecasts, tool) is { IsEmpty: false } why
            ? $"{shop.Tools[tool].Mark} should not be used: {string.Join("; ", why)}."
            : null;

    /// <summary>The tools that worked in a session though they should not have, and why.</summary>
    public static ImmutableArray<string> UsedAllTheSame(Shop shop, ShopForecasts? forecasts, string session) =>
        [
            .. shop
                .Tools.Values.Where(tool => tool.WorkedIn(session))
                .Select(tool => Against(shop, forecasts, tool.Id))
                .OfType<string>(),
        ];

    public static string NotToBeUsed(OpenFinding found) =>
        found.Next is { } next ? $"! {next.Deed} it first" : "! out: not to be used";

    public static string DressAfter(Dressing dressing) =>
        dressing.Gone >= dressing.After
            ? $"! dress it: {Words.Heats(dressing.Gone)} heats since the last"
            : $"dress after about {Words.About(dressing.After)}; {Words.Heats(dressing.Gone)} gone";

    /// <summary>The same where there is little room.</summary>
    public static string DressShortly(Dressing dressing) =>
        dressing.Gone >= dressing.After
            ? $"! dress: {Words.Heats(dressing.Gone)} heats"
            : $"dress: {Words.Heats(dressing.Gone)} of about {Words.About(dressing.After)}";

    /// <summary>When a tool is dressed, how anybody knows, and whether heats left count what that takes off.</summary>
    public static string? DressedByNow(Shop shop, ToolForecast tool) =>
        Dressing.Of(shop, tool.Tool) is not { } dressing
            ? tool.Tool.Tool.Form.DressedAfter is null
                ? null
                : "Dress it when its flat shows. Practice names no number of heats; after three dressings your own records do."
            : $"{Sentence(DressAfter(dressing))[..^1]} ({(dressing.Learned == 0 ? "common practice" : $"by {dressing.Learned} dressings on record")})"
                + (
                    tool.Gauges.All(gauge => gauge.Forecast is null) ? "."
                    : tool.Gauges.Any(gauge => gauge.Forecast?.EndsAfter < double.PositiveInfinity)
                        ? "; heats left count what dressing takes off."
                    : "; what dressing takes off is not known, heats left do not count it."
                );

    /// <summary>The places of the rack of which no tool is to be used next, and why.</summary>
    public static string NoneNext(ShopForecasts all)
    {
        string[] none =
        [
            .. from twins in NextToTake.None(all)
            let like = twins[0].Tool.Tool
            let what = like.Place == Place.None ? like.Form.Name : $"{Places.Words.Word(like.Place)} {like.Form}"
            select $"{(like.Eye is { } eye ? $"{eye} " : "")}{what} ({Needs(all, twins)})",
        ];
        return none.Length == 0 ? "" : $"None to use next: {string.Join(", ", none)}.";
    }

    /// <summary>That none of some tools is to be used next, and what each needs first.</summary>
    public static string NoneToUse(ShopForecasts all, IEnumerable<ToolForecast> tools) =>
        Needs(all, tools) is { Length: > 0 } why ? $"none: {why}" : "none in service";

    private static string Needs(ShopForecasts all, IEnumerable<ToolForecast> tools) =>
        string.Join(", ", tools.Select(each => $"{each.Tool.Mark} {all.VerdictOf(each).Shown}"));

    public static string Sentence(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
}
