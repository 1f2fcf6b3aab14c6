using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>What the tools of one place cost a heat: forecast for a new one, and found on those scrapped.</summary>
/// <param name="Tools">The place.</param>
/// <param name="Cost">What one costs to make.</param>
/// <param name="Life">Weighted heats that a new one lasts.</param>
/// <param name="CostAHeat">An <see cref="Estimate"/>, or why there is none.</param>
/// <param name="Scrapped">How many scrapped tools stand behind the true figures: those whose heats are all known.</param>
/// <param name="TrueLife">Their mean life in weighted heats; null where there is none.</param>
/// <param name="TrueCostAHeat">Their cost with reworks over their heats; null where it is not known.</param>
/// <param name="Steel">The steel that the forecast is for, and whose scrapped tools stand beside it; null where not known.</param>
/// <param name="Others">Scrapped tools of other classes of steel: their steel, how many, their mean life.</param>
public sealed record PlaceHeatCost(
    ToolPlace Tools,
    PlaceCost Cost,
    Estimate Life,
    Estimated CostAHeat,
    int Scrapped,
    double? TrueLife,
    double? TrueCostAHeat,
    string? Steel,
    ImmutableArray<(string Steel, int Number, double Life)> Others
);

/// <summary>What a head of a pattern costs in tooling, apart from bar, fuel and handle.</summary>
/// <param name="Pattern">The pattern's name.</param>
/// <param name="CostAHead">An <see cref="Estimate"/>, or why there is none.</param>
/// <param name="TrueCostAHead">The same with the true cost a heat where scrapped tools give it; null where none does.</param>
/// <param name="TrueStages">At how many stages they do.</param>
/// <param name="Stages">How many stages its cost rests on.</param>
/// <param name="WithoutStages">Stages whose tools have no cost noted, so that they are left out.</param>
public sealed record HeadCost(
    string Pattern,
    Estimated CostAHead,
    double? TrueCostAHead,
    int TrueStages,
    int Stages,
    ImmutableArray<string> WithoutStages
);

/// <summary>What tooling costs.</summary>
/// <param name="Places">A row for each place that has tools or is used by a pattern.</param>
/// <param name="Heads">A row for each pattern.</param>
public sealed record ToolingCosts(ImmutableArray<PlaceHeatCost> Places, ImmutableArray<HeadCost> Heads)
{
    /// <summary>Works out the costs of a shop.</summary>
    /// <param name="lives">The lives of its tools.</param>
    /// <param name="steps">Watches and stops it.</param>
    /// <returns>The costs.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ToolingCosts Of(ShopLives lives, Steps steps = default)
    {
        Shop shop = lives.Shop;
        ImmutableArray<HeatsAHead>[] patterns = [.. HeatsAHead.Of(shop).Values];
        ToolPlace[] used =
        [
            .. patterns
                .SelectMany(stages => stages.Select(stage => stage.Tools).OfType<ToolPlace>())
                .Concat(shop.Tools.Values.Select(tool => ToolPlace.Of(tool.Tool)))
                .Distinct()
                .OrderBy(place => place.Eye is null)
                .ThenBy(place => place.Eye, StringComparer.Ordinal)
                .ThenBy(place => place.Place)
                .ThenBy(place => place.Form, StringComparer.Ordinal),
        ];
        ImmutableArray<PlaceHeatCost>.Builder found = ImmutableArray.CreateBuilder<PlaceHeatCost>(used.Length);
        foreach (ToolPlace place in used)
        {
            found.Add(Of(lives, place));
            steps.At(found.Count, used.Length);
        }

        ImmutableArray<PlaceHeatCost> places = found.MoveToImmutable();
        Dictionary<ToolPlace, PlaceHeatCost> byPlace = places.ToDictionary(place => place.Tools);
        return new ToolingCosts(
            places,
            [.. shop.Patterns.Keys.Zip(patterns, (name, stages) => Head(name, stages, byPlace))]
        );
    }

    /// <summary>A cost over a life: the range of a quotient runs the other way.</summary>
    /// <param name="cost">The cost, zero or more.</param>
    /// <param name="life">The life in heats.</param>
    /// <returns>Cost a heat; <see cref="NotEnoughData"/> where the cost is not known or the life none.</returns>
    public static Estimated AHeat(decimal? cost, Estimate life) =>
        cost is not { } known ? new NotEnoughData(0, 1, "no cost of such a tool is on record")
        : life.Value <= 0 ? new NotEnoughData(0, 1, "such a tool does not last one heat")
        : new Estimate(
            (double)known / life.Value,
            life.High90 is { } high ? (double)known / high : 0,
            life.Low90 > 0 ? (double)known / life.Low90 : null
        );

    private static PlaceHeatCost Of(ShopLives lives, ToolPlace place)
    {
        PlaceCost cost = PlaceCost.Usual(lives.Shop, place);
        Estimate life = lives.At(place).NewLife;
        string? steel = lives.SteelOf(place);
        ToolInShop[] gone =
        [
            .. lives.Shop.Tools.Values.Where(tool =>
                tool.State == ToolState.Scrapped
                && ToolPlace.Of(tool.Tool) == place
                && !tool.Tool.Start.IsUnknown
                && Worked(lives.Shop, tool) > 0
            ),
        ];
        // a true figure stands beside a forecast only for like steel
        bool IsLike(ToolInShop tool) => SteelClasses.Of(tool.Tool.Steel) == SteelClasses.Of(steel);
        (decimal? Cost, double Heats)[] done =
        [
            .. gone.Where(IsLike)
                .Select(tool =>
                    (
                        PlaceCost.Of(lives.Shop, tool).Total + PlaceCost.Reworks(lives.Shop, tool),
                        Worked(lives.Shop, tool)
                    )
                ),
        ];
        double heats = done.Sum(each => each.Heats);
        bool isCostKnown = done.Length > 0 && done.All(each => each.Cost is not null);
        return new PlaceHeatCost(
            place,
            cost,
            life,
            AHeat(cost.Total, life),
            done.Length,
            done.Length > 0 ? heats / done.Length : null,
            isCostKnown ? (double)done.Sum(each => each.Cost!.Value) / heats : null,
            steel,
            [
                .. gone.Where(tool => !IsLike(tool))
                    .GroupBy(tool => tool.Tool.Steel ?? "unknown steel", StringComparer.Ordinal)
                    .Select(same => (same.Key, same.Count(), same.Average(tool => Worked(lives.Shop, tool)))),
            ]
        );
    }

    private static double Worked(Shop shop, ToolInShop tool) =>
        (tool.Tool.Start.HeatsBefore?.Count ?? 0)
        + tool.Events.Select(each => each.What).OfType<HeatsWorked>().Sum(heats => shop.Weighted(tool.Tool, heats));

    private static HeadCost Head(
        string pattern,
        ImmutableArray<HeatsAHead> stages,
        Dictionary<ToolPlace, PlaceHeatCost> places
    )
    {
        (HeatsAHead Stage, Estimate AHeat, double? True)[] known =
        [
            .. stages
                .Where(stage => AHeatOf(stage, places) is not null)
                .Select(stage => (stage, AHeatOf(stage, places)!, places[stage.Tools!.Value].TrueCostAHeat)),
        ];
        int found = known.Count(each => each.True is not null);
        return new HeadCost(
            pattern,
            Sum([.. known.Select(each => (each.Stage.Weighted, each.AHeat))]),
            found > 0 ? known.Sum(each => each.Stage.Weighted * (each.True ?? each.AHeat.Value)) : null,
            found,
            known.Length,
            [.. stages.Where(stage => AHeatOf(stage, places) is null).Select(stage => stage.Stage.Name)]
        );
    }

    private static Estimate? AHeatOf(HeatsAHead stage, Dictionary<ToolPlace, PlaceHeatCost> places) =>
        stage.Tools is { } tools ? places[tools].CostAHeat as Estimate : null;

    // ends added up are wider than nine in ten: the cautious way round
    private static Estimated Sum((double Heats, Estimate AHeat)[] stages) =>
        stages.Length == 0
            ? new NotEnoughData(0, 1, "no cost of its tools is on record")
            : new Estimate(
                stages.Sum(each => each.Heats * each.AHeat.Value),
                stages.Sum(each => each.Heats * each.AHeat.Low90),
                stages.Any(each => each.AHeat.High90 is null)
                    ? null
                    : stages.Sum(each => each.Heats * each.AHeat.High90!.Value)
            );
}
