using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;

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

        SessionCalendar calendar = SessionCalendar.Of(lives.Shop, from);
        ImmutableArray<PlaceDemand> demands = PlaceDemand.Of(lives.Shop, calendar, until);
        (PlacePlan Plan, ImmutableArray<DatedBatch> Batches)[] places = new (PlacePlan, ImmutableArray<DatedBatch>)[
            demands.Length
        ];
        int done = 0;
        // no place knows of another
        Parallel.For(
            0,
            demands.Length,
            new ParallelOptions { CancellationToken = steps.Stop },
            i =>
            {
                places[i] = Plan(lives, demands[i], sure, from);
                steps.At(Interlocked.Increment(ref done), demands.Length);
            }
        );
        StockRack rack = new(lives.Shop);
        ImmutableArray<ForgeBatch> full =
        [
            .. places
                .SelectMany(place => place.Batches)
                .OrderBy(batch => batch.ForgeBy)
                .ThenBy(batch => batch.Batch.ReadyBy)
                .Select(batch => batch.Full(lives, rack)),
        ];
        return new ForgeList(sure, from, calendar, [.. places.Select(place => place.Plan)], full, rack.Cuts());
    }

    private static (PlacePlan Plan, ImmutableArray<DatedBatch> Batches) Plan(
        ShopLives lives,
        PlaceDemand demand,
        double sure,
        DateOnly from
    )
    {
        ImmutableArray<CountedTool> tools = lives.InService(demand.Tools);
        if (Replacements.RefuseDemand(demand.Heats) is { } refusal)
        {
            return (new PlacePlan(demand, tools, 0, new NotEnoughData(0, 1, refusal.TrimEnd('.'))), []);
        }

        PlaceCover cover = lives.At(demand.Tools).UpTo(demand.Heats);
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
