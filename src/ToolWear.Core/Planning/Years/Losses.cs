using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Lifetimes;

namespace ToolWear.Core.Planning.Years;

/// <summary>Tools of one form and steel that one cause ended, in one hand.</summary>
/// <param name="Form">The form's name.</param>
/// <param name="Steel">The steel; null where it is not known.</param>
/// <param name="Cause">What ended them.</param>
/// <param name="Hand">Whose session they worked in last; null where nobody said.</param>
/// <param name="Tools">How many, at least one.</param>
/// <param name="Heats">Weighted heats from new that each of them reached, the fewest first; those whose heats are known.</param>
/// <param name="LedTo">What led to it, with how many; those of which it was said.</param>
public sealed record Loss(
    string Form,
    string? Steel,
    ScrapCause Cause,
    string? Hand,
    int Tools,
    ImmutableArray<double> Heats,
    ImmutableArray<(LedTo LedTo, int Tools)> LedTo
)
{
    /// <summary>How many known ends a middle needs.</summary>
    public const int Enough = 3;

    /// <summary>The heats that half of them reached; null where too few are known.</summary>
    public double? Middle =>
        Heats.Length < Enough ? null : (Heats[(Heats.Length - 1) / 2] + Heats[Heats.Length / 2]) / 2;

    /// <summary>Gathers what was lost, the commonest first. What was made into another tool is no loss.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="year">The year; null for all records.</param>
    /// <returns>The losses.</returns>
    public static ImmutableArray<Loss> All(Shop shop, int? year = null) =>
        [
            .. shop
                .Tools.Values.Where(tool =>
                    tool.Scrapped is { Cause: not ScrapCause.MadeInto } end && (year is null || end.On.Year == year)
                )
                .GroupBy(tool => (tool.Tool.Form.Name, tool.Tool.Steel, tool.Scrapped!.Cause, Hand: HandOf(shop, tool)))
                .Select(lost => new Loss(
                    lost.Key.Name,
                    lost.Key.Steel,
                    lost.Key.Cause,
                    lost.Key.Hand,
                    lost.Count(),
                    [.. lost.Select(tool => ShopFailures.HeatsFromNew(shop, tool)).OfType<double>().Order()],
                    LedToOf(lost)
                ))
                .OrderByDescending(loss => loss.Tools)
                .ThenBy(loss => (loss.Form, loss.Cause))
                .ThenBy(loss => loss.Steel, StringComparer.Ordinal)
                .ThenBy(loss => loss.Hand, StringComparer.Ordinal),
        ];

    /// <summary>What led to the loss of some tools, the commonest first.</summary>
    /// <param name="lost">Scrapped tools.</param>
    /// <returns>Each with how many; those of which it was said.</returns>
    internal static ImmutableArray<(LedTo LedTo, int Tools)> LedToOf(IEnumerable<ToolInShop> lost) =>
        [
            .. lost.Select(tool => tool.Scrapped!.LedTo)
                .OfType<LedTo>()
                .CountBy(led => led)
                .OrderByDescending(led => led.Value)
                .Select(led => (led.Key, led.Value)),
        ];

    private static string? HandOf(Shop shop, ToolInShop tool) =>
        shop.HistoryOf(tool).LastOrDefault(each => each.Entered.What is HeatsWorked).Entered?.What is HeatsWorked last
            ? shop.Sessions[last.Session].Opened.Hand
            : null;
}
