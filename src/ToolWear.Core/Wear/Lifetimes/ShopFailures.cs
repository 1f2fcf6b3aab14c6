using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear.Lifetimes;

/// <summary>The cracks and breaks that the ledger holds of one sort of tool: those of one form and place.</summary>
/// <remarks>
/// A tool failed at the weighted heats it had when it was first found cracked or broken, or was scrapped for it. Every
/// other tool, in service, worn out or discarded, is watched to its last heat. One that came in use with its heats known
/// is watched from those on. One whose heats from new nobody knows cannot be placed and is left out.
/// </remarks>
/// <param name="Lives">The tools that can be placed.</param>
/// <param name="LeftOut">How many tools of the sort are left out.</param>
public sealed record ShopFailures(ImmutableArray<WatchedLife> Lives, int LeftOut)
{
    /// <summary>How many of <see cref="Lives"/> cracked or broke.</summary>
    public int Failures => Lives.Count(life => life.Failed);

    /// <summary>Gathers the sort that a tool belongs to.</summary>
    /// <remarks>Its steel stands alone from eight failures in that steel on, where its curve no longer leans on what is
    /// common; until then all steels are taken together.</remarks>
    /// <param name="shop">The shop.</param>
    /// <param name="like">A tool of the sort.</param>
    /// <returns>What is on record.</returns>
    public static ShopFailures Of(Shop shop, Tool like) => Of(shop, like.Form.Name, like.Place, like.Steel);

    /// <summary>Gathers a sort of tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="form">The form's name.</param>
    /// <param name="place">The place.</param>
    /// <param name="steel">The steel; null where it is not known.</param>
    /// <returns>What is on record.</returns>
    public static ShopFailures Of(Shop shop, string form, Place place, string? steel)
    {
        ToolInShop[] sort =
        [
            .. shop.Tools.Values.Where(each => each.Tool.Form.Name == form && each.Tool.Place == place),
        ];
        ShopFailures ofSteel = Gather(shop, [.. sort.Where(each => each.Tool.Steel == steel)]);
        return steel is not null && ofSteel.Failures >= WeibullFit.EnoughFailures ? ofSteel : Gather(shop, sort);
    }

    /// <summary>All weighted heats of a tool since it was made; sudden failures know no rework.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Zero or more, or null where it came in use and nobody knows with how many.</returns>
    public static double? HeatsFromNew(Shop shop, ToolInShop tool) => Watched(shop, tool, DateOnly.MaxValue)?.Heats;

    /// <summary>The life of a tool as known on a day, its end for any cause that lies in the tool.</summary>
    /// <remarks>One that was lost, made into another or put away for something else did not end: it is watched to its last
    /// heat.</remarks>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="until">The last day that counts.</param>
    /// <returns>The life, null where it cannot be placed on a scale of heats.</returns>
    public static WatchedLife? EndedBy(Shop shop, ToolInShop tool, DateOnly until)
    {
        if (Watched(shop, tool, until) is not var (heats, from, hasFailed))
        {
            return null;
        }

        bool hasEnded = hasFailed || (tool.Scrapped is { HasFailed: true } scrapped && scrapped.On <= until);
        return hasEnded && heats <= 0 ? null : new WatchedLife(heats, hasEnded, from);
    }

    private static ShopFailures Gather(Shop shop, ToolInShop[] tools)
    {
        ImmutableArray<WatchedLife> lives = [.. tools.Select(tool => LifeOf(shop, tool)).OfType<WatchedLife>()];
        return new(lives, tools.Length - lives.Length);
    }

    // a cracked struck end is cut back, and the tool goes on
    private static bool IsTheEnd(ToolLookedOver found) =>
        FindingTable.Of(found.Finding, found.Part, SteelClass.Unknown).Wear == WearSays.Nothing;

    // a failure before the first heat on record has no place on a scale of heats
    private static WatchedLife? LifeOf(Shop shop, ToolInShop tool) =>
        Watched(shop, tool, DateOnly.MaxValue) is not var (heats, from, hasFailed) || (hasFailed && heats <= 0)
            ? null
            : new WatchedLife(heats, hasFailed, from);

    private static (double Heats, double From, bool HasFailed)? Watched(Shop shop, ToolInShop tool, DateOnly until)
    {
        if (tool.Tool.Start.IsUnknown)
        {
            return null;
        }

        double from = tool.Tool.Start.HeatsBefore?.Count ?? 0;
        double heats = from;
        foreach ((HistoryPlace place, Entered entered) in shop.HistoryOf(tool))
        {
            if (place.Day > until)
            {
                break;
            }

            switch (entered.What)
            {
                case HeatsWorked worked:
                    heats += shop.Weighted(tool.Tool, worked);
                    break;
                case ToolLookedOver { Finding: Finding.Cracked or Finding.Broken } found when IsTheEnd(found):
                case ToolScrapped { Cause: ScrapCause.Cracked or ScrapCause.Broken }:
                    return (heats, from, true);
                default:
                    break;
            }
        }

        return (heats, from, false);
    }
}
