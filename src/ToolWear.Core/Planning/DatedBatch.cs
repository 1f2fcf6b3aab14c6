using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Planning;

/// <summary>A batch with the day on which it has to be forged, before its stock and its cost are known.</summary>
/// <param name="Demand">What is asked of the place.</param>
/// <param name="Batch">How many, and when they must be ready.</param>
/// <param name="ForgeBy">The day by which to forge them, never past.</param>
/// <param name="SureUntil">The certainty of what is on hand up to the day before they are ready.</param>
/// <param name="Sure">The certainty with them, up to the next batch or the end of the orders.</param>
/// <param name="SureWithOneFewer">The same with one fewer.</param>
internal sealed record DatedBatch(
    PlaceDemand Demand,
    TimedBatch Batch,
    DateOnly ForgeBy,
    double SureUntil,
    double Sure,
    double SureWithOneFewer
)
{
    // more than these of one place for one order book is no plan
    private const int MostNew = 300;

    /// <summary>The batches of one place; why it was given up, where no number of tools lasts.</summary>
    internal static (ImmutableArray<DatedBatch> Batches, NotEnoughData? GivenUp) Of(
        Shop shop,
        PlaceDemand demand,
        PlaceCover cover,
        double sure,
        DateOnly from
    )
    {
        int lead = demand.Tools.SeriesIn(shop)?.ReadyDays ?? 0;
        (ImmutableArray<TimedBatch> batches, NotEnoughData? givenUp) = TimedBatch.Of(
            demand,
            cover.Cover,
            sure,
            shop.Settings.BatchWindowDays,
            from.AddDays(lead),
            MostNew
        );
        return (
            [
                .. batches.Select(
                    (batch, i) =>
                    {
                        // it has to last to the day before the next batch is ready
                        DateOnly last = i + 1 < batches.Length ? batches[i + 1].ReadyBy.AddDays(-1) : DateOnly.MaxValue;
                        double heats = demand.Through(last);
                        int made = batch.Before + batch.Number;
                        return new DatedBatch(
                            demand,
                            batch,
                            batch.ReadyBy.AddDays(-lead),
                            cover.Cover(batch.Before, demand.Through(batch.ReadyBy.AddDays(-1))),
                            cover.Cover(made, heats),
                            cover.Cover(made - 1, heats)
                        );
                    }
                ),
            ],
            givenUp
        );
    }

    /// <summary>The steel that it is made of; null where nobody said.</summary>
    internal string? SteelIn(Shop shop, PlaceBody? body) =>
        Demand.Tools.SeriesIn(shop)?.Steel ?? (body?.Own ?? body?.Like)?.Tool.Steel;

    /// <summary>The whole batch, its stock cut from the rack, forged in the fire of an earlier one where that serves.</summary>
    internal ForgeBatch Full(
        ShopLives lives,
        StockRack rack,
        PlaceBody? body,
        Dictionary<(string, string, BarSize), DateOnly> fires
    )
    {
        Shop shop = lives.Shop;
        ToolPlace place = Demand.Tools;
        DateOnly by = ForgeBy;
        if (body is not null && SteelIn(shop, body) is { } steel)
        {
            (string, string, BarSize) fire = (place.Form, steel, rack.SizeFor(body.Body, steel));
            by =
                fires.TryGetValue(fire, out DateOnly lit)
                && by.DayNumber - lit.DayNumber <= shop.Settings.BatchWindowDays
                    ? lit
                    : by;
            fires[fire] = by;
        }

        return new ForgeBatch(
            place,
            Batch,
            by,
            SureUntil,
            lives.InService(place),
            lives.Failures(place).Failures,
            place.SeriesIn(shop),
            Sure,
            SureWithOneFewer,
            BatchStock.Of(
                body,
                SteelIn(shop, body),
                (each, steel) => rack.Cut(each, steel, Batch.Number, new BatchName(place, by))
            ),
            PlaceCost.Usual(shop, place)
        );
    }
}
