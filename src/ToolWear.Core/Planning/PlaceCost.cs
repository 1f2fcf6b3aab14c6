using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>What a tool of a place costs to make, in the shop's own money.</summary>
/// <param name="Steel">Steel; null where not known.</param>
/// <param name="ForgeHours">Hours at the fire; null where not known.</param>
/// <param name="GrindHours">Hours at the grinder; null where not known.</param>
/// <param name="Treatment">Heat treatment, zero where the series says that there is none; null where not known.</param>
/// <param name="HourRate">What an hour costs.</param>
/// <param name="Assumed">The parts that were not noted for this tool and are the usual ones of its place or form.</param>
/// <param name="Borrowed">Those of them that no tool of the place has noted: they are of such tools for other eyes.</param>
public sealed record PlaceCost(
    decimal? Steel,
    decimal? ForgeHours,
    decimal? GrindHours,
    decimal? Treatment,
    decimal HourRate,
    ImmutableArray<string> Assumed,
    ImmutableArray<string> Borrowed
)
{
    /// <summary>The hours that are known together; null where none are.</summary>
    public decimal? Hours => ForgeHours is null && GrindHours is null ? null : (ForgeHours ?? 0) + (GrindHours ?? 0);

    /// <summary>Steel, hours at the shop's rate and treatment, as far as known; null where nothing is.</summary>
    public decimal? Total =>
        Steel is null && Hours is null && Treatment is null
            ? null
            : (Steel ?? 0) + ((Hours ?? 0) * HourRate) + (Treatment ?? 0);

    /// <summary>The usual cost of a tool of a place: means over the tools there that have it noted, else over its form.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="place">The place.</param>
    /// <returns>The cost; every part counts as assumed.</returns>
    public static PlaceCost Usual(Shop shop, ToolPlace place) => Of(shop, place, ToolCost.Unknown);

    /// <summary>What one tool cost, parts that were not noted taken from the usual.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The cost.</returns>
    public static PlaceCost Of(Shop shop, ToolInShop tool) => Of(shop, ToolPlace.Of(tool.Tool), tool.Tool.Cost);

    /// <summary>What the reworks of a tool cost together: their hours at the shop's rate and what else was noted.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The cost, zero where nothing was noted.</returns>
    public static decimal Reworks(Shop shop, ToolInShop tool) =>
        tool
            .Events.Select(each => each.What)
            .OfType<ToolReworked>()
            .Sum(rework => ((rework.Hours ?? 0) * shop.Settings.HourRate) + (rework.Cost ?? 0));

    private static PlaceCost Of(Shop shop, ToolPlace place, ToolCost noted)
    {
        List<string> assumed = [];
        List<string> borrowed = [];
        decimal? Part(string name, Func<ToolCost, decimal?> part)
        {
            if (part(noted) is { } known)
            {
                return known;
            }

            decimal? here = Mean(shop, tool => ToolPlace.Of(tool) == place, part);
            decimal? usual =
                here ?? Mean(shop, tool => tool.Form.Name == place.Form && tool.Place == place.Place, part);
            if (usual is not null)
            {
                assumed.Add(name);
                borrowed.AddRange(here is null ? [name] : []);
            }

            return usual;
        }

        return new PlaceCost(
            Part("steel", cost => cost.Steel),
            Part("forge hours", cost => cost.ForgeHours),
            Part("grind hours", cost => cost.GrindHours),
            Part("treatment", cost => cost.Treatment) ?? (IsUntreated(shop, place) ? 0 : null),
            shop.Settings.HourRate,
            [.. assumed],
            [.. borrowed]
        );
    }

    private static bool IsUntreated(Shop shop, ToolPlace place) =>
        place.Eye is { } eye
        && shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form))?.Treated == false;

    private static decimal? Mean(Shop shop, Func<Tool, bool> belongs, Func<ToolCost, decimal?> part)
    {
        decimal[] known =
        [
            .. shop
                .Tools.Values.Where(tool => belongs(tool.Tool))
                .Select(tool => part(tool.Tool.Cost))
                .OfType<decimal>(),
        ];
        return known.Length > 0 ? known.Average() : null;
    }
}
