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
/// <param name="HourRate">What an hour costs; null where the shop has not said.</param>
/// <param name="Assumed">The parts that were not noted for this tool and are the usual ones of its place or form.</param>
/// <param name="Borrowed">Those of them that no tool of the place has noted: they are of such tools for other eyes.</param>
public sealed record PlaceCost(
    decimal? Steel,
    decimal? ForgeHours,
    decimal? GrindHours,
    decimal? Treatment,
    decimal? HourRate,
    ImmutableArray<string> Assumed,
    ImmutableArray<string> Borrowed
)
{
    /// <summary>What one piece weighs and its steel costs a kg, where the cost of the steel comes from them.</summary>
    public (double Kg, decimal AKg)? Stock { get; init; }

    /// <summary>What the hours that are known cost; null where they or the hourly rate are not known.</summary>
    public decimal? HoursCost => Hours * HourRate;

    /// <summary>The hours that are known together; null where none are.</summary>
    public decimal? Hours => ForgeHours is null && GrindHours is null ? null : (ForgeHours ?? 0) + (GrindHours ?? 0);

    /// <summary>Steel, hours at the shop's rate and treatment, as far as known; null where nothing is.</summary>
    public decimal? Total =>
        Steel is null && HoursCost is null && Treatment is null or 0
            ? null
            : (Steel ?? 0) + (HoursCost ?? 0) + (Treatment ?? 0);

    /// <summary>The usual cost of a tool of a place: means over the tools there that have it noted, else over its form.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="place">The place.</param>
    /// <returns>The cost; every part counts as assumed.</returns>
    public static PlaceCost Usual(Shop shop, ToolPlace place) =>
        Usual(shop, place, place.SeriesIn(shop), place.Eye is { } eye ? shop.Eyes.GetValueOrDefault(eye) : null);

    /// <summary>The same with a series and an eye that need not be in the shop yet.</summary>
    internal static PlaceCost Usual(Shop shop, ToolPlace place, Series? series, EyeDescribed? eye)
    {
        _ = PlaceBody.TryFind(shop, place, series, eye, out PlaceBody? body, out string? _);
        BatchStock piece = BatchStock.Of(
            body,
            series?.Steel,
            (each, steel) => new StockRack(shop).Cut(each, steel, 1, new BatchName(place, DateOnly.MinValue))
        );
        PlaceCost usual = Of(shop, place, series?.Steel, ToolCost.Unknown with { Steel = piece.PieceCost });
        return piece.PieceCost is null ? usual : usual with { Stock = (piece.PieceKg!.Value, piece.PriceAKg!.Value) };
    }

    /// <summary>What one tool cost, parts that were not noted taken from the usual.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The cost.</returns>
    public static PlaceCost Of(Shop shop, ToolInShop tool) =>
        Of(shop, ToolPlace.Of(tool.Tool), tool.Tool.Steel, tool.Tool.Cost);

    /// <summary>What the reworks of a tool cost together: their hours at the shop's rate and what else was noted.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The cost, zero where nothing was noted.</returns>
    public static decimal Reworks(Shop shop, ToolInShop tool) =>
        tool
            .Events.Select(each => each.What)
            .OfType<ToolReworked>()
            .Sum(rework => ((rework.Hours ?? 0) * (shop.Settings.HourRate ?? 0)) + (rework.Cost ?? 0));

    private static PlaceCost Of(Shop shop, ToolPlace place, string? made, ToolCost noted)
    {
        List<string> assumed = [];
        List<string> borrowed = [];
        decimal? Part(string name, Func<ToolCost, decimal?> part)
        {
            if (part(noted) is { } known)
            {
                return known;
            }

            // hours are much the same in any steel; what steel and treatment cost is its own
            bool IsLike(Tool tool) =>
                name.EndsWith("hours", StringComparison.Ordinal)
                || made is null
                || SteelClasses.Of(tool.Steel) == SteelClasses.Of(made);
            decimal? here = Mean(shop, tool => ToolPlace.Of(tool) == place && IsLike(tool), part);
            decimal? usual =
                here
                ?? Mean(shop, tool => tool.Form.Name == place.Form && tool.Place == place.Place && IsLike(tool), part);
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

    private static bool IsUntreated(Shop shop, ToolPlace place) => place.SeriesIn(shop)?.Treated == false;

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
