using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>How many new tools one place needs over the whole order book.</summary>
/// <param name="Demand">What the orders ask of it.</param>
/// <param name="InService">The tools there.</param>
/// <param name="Failures">How many such tools cracked or broke on record; where none did, wear alone is reckoned with.</param>
/// <param name="Needs">A <see cref="Replacements"/>, or why there is none.</param>
public sealed record PlacePlan(
    PlaceDemand Demand,
    ImmutableArray<CountedTool> InService,
    int Failures,
    Estimated Needs
);

/// <summary>What to forge, how many, when, from which bar.</summary>
/// <param name="Sure">The certainty asked for.</param>
/// <param name="From">The day the plan begins.</param>
/// <param name="Calendar">The days at the hammer.</param>
/// <param name="Places">Each place that the orders use, with what it needs.</param>
/// <param name="Batches">What to forge, by day.</param>
/// <param name="Cuts">What is cut from each bar, and what to buy.</param>
public sealed record ForgeList(
    double Sure,
    DateOnly From,
    SessionCalendar Calendar,
    ImmutableArray<PlacePlan> Places,
    ImmutableArray<ForgeBatch> Batches,
    CutList Cuts
)
{
    /// <summary>The cheapest way out for each place that a late order waits for.</summary>
    public ImmutableArray<WayOut> WaysOut { get; init; } = [];

    /// <summary>Makes the list.</summary>
    /// <param name="lives">The lives of the shop's tools.</param>
    /// <param name="from">The day it begins.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <param name="until">The last session day that counts, null for the whole order book.</param>
    /// <param name="steps">Watches and stops it.</param>
    /// <returns>The list.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The certainty is no share.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ForgeList Of(ShopLives lives, DateOnly from, double sure, DateOnly? until, Steps steps = default)
    {
        if (Replacements.RefuseSure(sure) is { } refusal)
        {
            throw new ArgumentOutOfRangeException(nameof(sure), refusal);
        }

        Shop shop = lives.Shop;
        // what the hammer alone could do asks every place how far its tools go; what they lack then moves the days
        ImmutableArray<PlaceDemand> asked = PlaceDemand.Of(shop, SessionCalendar.Of(shop, from), null);
        Dictionary<ToolPlace, PlaceCover?> byPlace = Covers(lives, asked, steps);
        Dictionary<ToolPlace, Waiting> waits = asked
            .Select(demand => (demand.Tools, Wait: Lacks(shop, demand, byPlace[demand.Tools], sure, from)))
            .Where(each => each.Wait is not null)
            .ToDictionary(each => each.Tools, each => each.Wait!.Value);
        SessionCalendar calendar = SessionCalendar.Of(shop, from, waits);
        (PlacePlan Plan, ImmutableArray<DatedBatch> Batches)[] places =
        [
            .. PlaceDemand
                .Of(shop, calendar, until)
                .Select(demand => Plan(lives, demand, byPlace[demand.Tools], sure, from)),
        ];
        (DatedBatch Batch, PlaceBody? Body)[] dated =
        [
            .. places
                .SelectMany(place => place.Batches)
                .OrderBy(batch => batch.ForgeBy)
                .ThenBy(batch => batch.Batch.ReadyBy)
                .Select(batch =>
                    (batch, PlaceBody.TryFind(shop, batch.Demand.Tools, out PlaceBody? body, out _) ? body : null)
                ),
        ];
        StockRack rack = new(
            shop,
            dated
                .Where(each => each.Body is not null && each.Batch.SteelIn(shop, each.Body) is not null)
                .Select(each => new StockWanted(
                    each.Body!.Body,
                    each.Batch.SteelIn(shop, each.Body)!,
                    each.Batch.Batch.Number
                ))
        );
        Dictionary<(string, string, BarSize), DateOnly> fires = [];
        ImmutableArray<ForgeBatch> full = [.. dated.Select(each => each.Batch.Full(lives, rack, each.Body, fires))];
        return new ForgeList(
            sure,
            from,
            calendar,
            [.. places.Select(place => place.Plan)],
            // a batch that goes into an earlier fire stands with it
            [.. full.OrderBy(batch => batch.ForgeBy)],
            rack.Cuts()
        )
        {
            WaysOut =
            [
                .. calendar.Late.SelectMany(late => late.WaitsFor).Distinct().Select(place => WayOut.Of(lives, place)),
            ],
        };
    }

    private static Dictionary<ToolPlace, PlaceCover?> Covers(
        ShopLives lives,
        ImmutableArray<PlaceDemand> asked,
        Steps steps
    )
    {
        PlaceCover?[] covers = new PlaceCover?[asked.Length];
        int done = 0;
        // no place knows of another
        Parallel.For(
            0,
            asked.Length,
            new ParallelOptions { CancellationToken = steps.Stop },
            i =>
            {
                covers[i] = Replacements.RefuseDemand(asked[i].Heats) is null
                    ? lives.At(asked[i].Tools).UpTo(asked[i].Heats)
                    : null;
                steps.At(Interlocked.Increment(ref done), asked.Length);
            }
        );
        return asked.Zip(covers).ToDictionary(each => each.First.Tools, each => each.Second);
    }

    /// <summary>What the tools of a place give until a new one can be ready, where that is less than is asked for: more
    /// likely than not a session would stop. Where it is merely less sure than wished, one goes on with what there is.</summary>
    private static Waiting? Lacks(Shop shop, PlaceDemand demand, PlaceCover? cover, double sure, DateOnly from)
    {
        DateOnly ready = from.AddDays(demand.Tools.SeriesIn(shop)?.ReadyDays ?? 0);
        double asked = demand.Through(ready.AddDays(-1));
        double enough = Math.Min(sure, 0.5);
        if (cover is null || cover.Cover(0, asked) >= enough)
        {
            return null;
        }

        int lasts = 0;
        while (cover.Cover(0, lasts + 1) >= enough)
        {
            lasts++;
        }

        return new Waiting(ready, lasts);
    }

    private static (PlacePlan Plan, ImmutableArray<DatedBatch> Batches) Plan(
        ShopLives lives,
        PlaceDemand demand,
        PlaceCover? cover,
        double sure,
        DateOnly from
    )
    {
        ImmutableArray<CountedTool> tools = lives.InService(demand.Tools);
        if (cover is null)
        {
            string refusal = Replacements.RefuseDemand(demand.Heats) ?? "its heats are too many to plan for";
            return (new PlacePlan(demand, tools, 0, new NotEnoughData(0, 1, refusal.TrimEnd('.'))), []);
        }

        (ImmutableArray<DatedBatch> batches, NotEnoughData? givenUp) = DatedBatch.Of(
            lives.Shop,
            demand,
            cover,
            sure,
            from
        );
        int failures = lives.Failures(demand.Tools).Failures;
        return (new PlacePlan(demand, tools, failures, givenUp ?? cover.Needs(demand.Heats, sure)), batches);
    }
}
