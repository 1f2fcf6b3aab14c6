using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>A batch with the day on which it has to be forged, before its stock and its cost are known.</summary>
/// <param name="Demand">What is asked of the place.</param>
/// <param name="Batch">How many, and when they must be ready.</param>
/// <param name="ForgeBy">The day by which to forge them.</param>
/// <param name="IsLate">Whether that day is past.</param>
/// <param name="Sure">The certainty with them, up to the next batch or the end of the orders.</param>
/// <param name="SureWithOneFewer">The same with one fewer.</param>
internal sealed record DatedBatch(
    PlaceDemand Demand,
    TimedBatch Batch,
    DateOnly ForgeBy,
    bool IsLate,
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
        Series? series = SeriesOf(shop, demand.Tools);
        int window = series?.Treated == true ? TimedBatch.TreatedWindowDays : 0;
        (ImmutableArray<TimedBatch> batches, NotEnoughData? givenUp) = TimedBatch.Of(
            demand,
            cover.Cover,
            sure,
            window,
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
                        DateOnly by = batch.ReadyBy.AddDays(-(series?.ReadyDays ?? 0));
                        int made = batch.Before + batch.Number;
                        return new DatedBatch(
                            demand,
                            batch,
                            by,
                            by < from,
                            cover.Cover(made, heats),
                            cover.Cover(made - 1, heats)
                        );
                    }
                ),
            ],
            givenUp
        );
    }

    /// <summary>The whole batch, its stock cut from the rack.</summary>
    internal ForgeBatch Full(ShopLives lives, StockRack rack)
    {
        Series? series = SeriesOf(lives.Shop, Demand.Tools);
        ImmutableArray<CountedTool> tools = lives.InService(Demand.Tools);
        return new ForgeBatch(
            Demand.Tools,
            Batch,
            ForgeBy,
            IsLate,
            tools,
            lives.Failures(Demand.Tools).Failures,
            series,
            Sure,
            SureWithOneFewer,
            Stock(lives.Shop, series, rack),
            PlaceCost.Usual(lives.Shop, Demand.Tools)
        );
    }

    private static Series? SeriesOf(Shop shop, ToolPlace place) =>
        place.Eye is { } eye ? shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form)) : null;

    private BatchStock Stock(Shop shop, Series? series, StockRack rack)
    {
        ToolPlace place = Demand.Tools;
        if (!PlaceBody.TryFind(shop, place, out PlaceBody? found, out string? refusal))
        {
            return BatchStock.Unknown(refusal);
        }

        if ((series?.Steel ?? found.Like.Tool.Steel) is not { } steel)
        {
            return BatchStock.Unknown("its steel is not known");
        }

        BatchStock stock = rack.Cut(found.Body, steel, Batch.Number, new BatchName(place, ForgeBy));
        return found.IsOwn
            ? stock
            : stock with
            {
                Notes = stock.Notes.Add($"reckoned like {found.Like.Mark}, made for another eye"),
            };
    }
}
