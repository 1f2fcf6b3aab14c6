using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear.Histories;

/// <summary>Makes the histories that forecasts start from out of the ledger.</summary>
public static class ShopHistories
{
    /// <summary>The histories of one tool, a gauge mark each.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="before">The number of the first entry that is left out of the tool's history; all it has where none is.</param>
    /// <returns>One for each of its gauge marks, in their order.</returns>
    public static ImmutableArray<GaugeHistory> Of(Shop shop, ToolInShop tool, long before = long.MaxValue)
    {
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history =
            before == long.MaxValue
                ? WithEyes(shop, tool)
                : [.. shop.HistoryOf(tool).Where(each => each.Entered.Number < before)];
        ImmutableArray<GaugeHistory> walked =
        [
            .. tool.Tool.GaugeMarks.Select(gauge => GaugeWalk.Of(shop, tool, gauge, history)),
        ];
        if (!walked.IsEmpty && walked.All(HasNoSizes) && !tool.Tool.Start.IsUnknown && !history.Any(IsStartedHere))
        {
            walked = walked.SetItem(0, walked[0] with { Wear = ByHeatsAlone(walked[0].Wear) });
        }

        return history.Any(IsWornOut) && UnreadEnd(walked) is { } end
            ? walked.Replace(end, end with { Wear = end.Wear with { IsThrownOut = true } })
            : walked;
    }

    /// <summary>The gauge mark that counts as worn out where a tool is thrown out as worn and it was not read last.</summary>
    /// <param name="tool">The histories of the tool.</param>
    /// <returns>The first that can wear out, which usually decides; null where it has none or it was read last.</returns>
    public static GaugeHistory? UnreadEnd(ImmutableArray<GaugeHistory> tool) =>
        tool.FirstOrDefault(each => each.Wear.LimitMm is not null || each.Wear.IsByHeatsAlone)
            is { HeatsSinceKnown: > 0 } end
            ? end
            : null;

    private static bool HasNoSizes(GaugeHistory gauge) => gauge.Wear.LimitMm is null && gauge.Readings.IsEmpty;

    private static bool IsWornOut((HistoryPlace Place, Entered Entered) each) =>
        each.Entered.What is ToolScrapped { Cause: ScrapCause.Worn };

    private static bool IsStartedHere((HistoryPlace Place, Entered Entered) each) =>
        each.Entered.What is ToolStartedHere;

    private static WearHistory ByHeatsAlone(WearHistory wear) =>
        new(
            wear.Kind,
            wear.Group,
            wear.Tool,
            wear.Gauge,
            null,
            wear.ResolutionMm,
            wear.GuessHeats,
            wear.GuessIsAssumed,
            wear.HeatsNow,
            []
        )
        {
            IsByHeatsAlone = true,
        };

    /// <summary>The kind of a gauge mark: tools of one kind learn from each other.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="gauge">One of its gauge marks.</param>
    /// <returns>Form, place where it has one, and the gauge mark's name, joined by one space.</returns>
    internal static string KindOf(Tool tool, GaugeMark gauge) => KindOf(tool.Form.Name, tool.Place, gauge.Name);

    /// <summary>The kind of a gauge mark of a tool still to be made.</summary>
    /// <param name="form">The form's name.</param>
    /// <param name="place">The place.</param>
    /// <param name="gauge">The gauge mark's name.</param>
    /// <returns>Form, place where it has one, and the gauge mark's name, joined by one space.</returns>
    internal static string KindOf(string form, Place place, string gauge) =>
        place == Place.None ? $"{form} {gauge}" : $"{form} {Places.Words.Word(place)} {gauge}";

    private static ImmutableArray<(HistoryPlace Place, Entered Entered)> WithEyes(Shop shop, ToolInShop tool)
    {
        (HistoryPlace, Entered)[] eyes =
        [
            .. shop
                .EyesMeasured.Where(eye => shop.EyeMakers.GetValueOrDefault(eye.Number) == tool.Id)
                .Select(eye => (shop.PlaceOf(tool, eye), eye)),
        ];
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history = shop.HistoryOf(tool);
        return eyes.Length == 0 ? history : [.. history.Concat(eyes).OrderBy(each => each.Item1)];
    }

    /// <summary>Weighted heats of a tool's next session, as its last three went; ten where it had none yet.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Weighted heats, above zero.</returns>
    public static double UsualSession(Shop shop, ToolInShop tool)
    {
        // common practice, no source: an evening's work of one tool
        const double assumed = 10;
        double[] last =
        [
            .. shop.HistoryOf(tool)
                .Select(each => each.Entered.What)
                .OfType<HeatsWorked>()
                .GroupBy(heats => heats.Session, StringComparer.Ordinal)
                .Select(session => session.Sum(heats => shop.Weighted(tool.Tool, heats)))
                .TakeLast(3),
        ];
        double mean = last.Length == 0 ? 0 : last.Average();
        return mean > 0 ? mean : assumed;
    }
}
