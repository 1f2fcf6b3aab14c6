using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>How many new tools one place needs over the whole order book.</summary>
/// <param name="Demand">What the orders ask of it.</param>
/// <param name="InService">The tools there.</param>
/// <param name="Needs">A <see cref="Replacements"/>, or why there is none.</param>
public sealed record PlacePlan(PlaceDemand Demand, ImmutableArray<CountedTool> InService, Estimated Needs);

/// <summary>What to forge, how many, when, from which bar.</summary>
/// <param name="Sure">The certainty asked for.</param>
/// <param name="From">The day the plan begins.</param>
/// <param name="Calendar">The days at the hammer.</param>
/// <param name="Places">Each place that the orders use, with what it needs.</param>
/// <param name="Batches">What to forge, by day.</param>
/// <param name="SharedBars">Sentences on bars that two batches want.</param>
public sealed record ForgeList(
    double Sure,
    DateOnly From,
    SessionCalendar Calendar,
    ImmutableArray<PlacePlan> Places,
    ImmutableArray<ForgeBatch> Batches,
    ImmutableArray<string> SharedBars
)
{
    // more than these of one place for one order book is no plan
    private const int MostNew = 300;

    /// <summary>Makes the list.</summary>
    /// <param name="lives">The lives of the shop's tools.</param>
    /// <param name="from">The day it begins.</param>
    /// <param name="sure">The certainty, above 0 and below 1.</param>
    /// <param name="until">The last session day that counts, null for the whole order book.</param>
    /// <returns>The list.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The certainty is no share.</exception>
    public static ForgeList Of(ShopLives lives, DateOnly from, double sure, DateOnly? until)
    {
        if (Replacements.RefuseSure(sure) is { } refusal)
        {
            throw new ArgumentOutOfRangeException(nameof(sure), refusal);
        }

        SessionCalendar calendar = SessionCalendar.Of(lives.Shop, from);
        ImmutableArray<PlaceDemand> demands = PlaceDemand.Of(lives.Shop, calendar, until);
        ImmutableArray<PlacePlan> places =
        [
            .. demands.Select(demand => new PlacePlan(
                demand,
                lives.InService(demand.Tools),
                Needs(lives.At(demand.Tools), demand.Heats, sure)
            )),
        ];
        StockRack rack = new(lives.Shop);
        ForgeBatch[] batches =
        [
            .. demands
                .SelectMany(demand => Timed(lives, demand, sure, from))
                .OrderBy(batch => batch.ForgeBy)
                .ThenBy(batch => batch.Batch.ReadyBy)
                .Select(batch => Full(lives, batch, rack)),
        ];
        return new ForgeList(sure, from, calendar, places, [.. batches], rack.Shared());
    }

    private static Estimated Needs(PlaceLives lives, double heats, double sure) =>
        Replacements.RefuseDemand(heats) is { } refusal ? new NotEnoughData(0, 1, refusal) : lives.Needs(heats, sure);

    private sealed record Dated(
        PlaceDemand Demand,
        TimedBatch Batch,
        DateOnly ForgeBy,
        bool IsLate,
        double Sure,
        double SureWithOneFewer
    );

    private static IEnumerable<Dated> Timed(ShopLives shopLives, PlaceDemand demand, double sure, DateOnly from)
    {
        PlaceLives lives = shopLives.At(demand.Tools);
        Series? series = SeriesOf(shopLives.Shop, demand.Tools);
        int window = series?.Treated == true ? TimedBatch.TreatedWindowDays : 0;
        (ImmutableArray<TimedBatch> batches, _) = TimedBatch.Of(demand, lives.Cover, sure, window, MostNew);
        for (int i = 0; i < batches.Length; i++)
        {
            TimedBatch batch = batches[i];
            double heats =
                i + 1 < batches.Length
                    ? demand.Days.Where(day => day.On < batches[i + 1].ReadyBy).Sum(day => day.Heats)
                    : demand.Heats;
            DateOnly by = batch.ReadyBy.AddDays(-(series?.ReadyDays ?? 0));
            int made = batch.Before + batch.Number;
            yield return new Dated(
                demand,
                batch,
                by,
                by < from,
                lives.Cover(made, heats),
                lives.Cover(made - 1, heats)
            );
        }
    }

    private static ForgeBatch Full(ShopLives lives, Dated dated, StockRack rack)
    {
        ToolPlace place = dated.Demand.Tools;
        Series? series = SeriesOf(lives.Shop, place);
        return new ForgeBatch(
            place,
            dated.Batch.Number,
            dated.ForgeBy,
            dated.Batch.ReadyBy,
            dated.IsLate,
            Why(lives, dated),
            series,
            dated.Sure,
            dated.SureWithOneFewer,
            Stock(lives.Shop, dated, series, rack),
            PlaceCost.Usual(lives.Shop, place)
        );
    }

    private static Series? SeriesOf(Shop shop, ToolPlace place) =>
        place.Eye is { } eye ? shop.Series.GetValueOrDefault(new SeriesKey(eye, place.Place, place.Form)) : null;

    private static string Why(ShopLives lives, Dated dated)
    {
        ImmutableArray<CountedTool> tools = lives.InService(dated.Demand.Tools);
        string[] marks = [.. tools.Where(tool => tool.WhyNot is null).Select(tool => tool.Forecast.Tool.Mark.Text)];
        string others = dated.Batch.Before == 0 ? "" : $" and {dated.Batch.Before} new";
        string run =
            marks.Length == 0 && others.Length == 0
                ? "no tool that counts is in service there"
                : $"{string.Join(", ", marks)}{others} may run out";
        string not = string.Concat(
            tools
                .Where(tool => tool.WhyNot is not null)
                .Select(tool => $"; {tool.Forecast.Tool.Mark} is not counted on: {tool.WhyNot}")
        );
        return $"{run} on order {dated.Batch.Order}, session of {dated.Batch.ReadyBy:yyyy-MM-dd}{not}";
    }

    private static BatchStock Stock(Shop shop, Dated dated, Series? series, StockRack rack)
    {
        ToolPlace place = dated.Demand.Tools;
        ToolInShop? own = WithBody(shop, tool => ToolPlace.Of(tool) == place, series);
        ToolInShop? like =
            own ?? WithBody(shop, tool => tool.Place == place.Place && tool.Form.Name == place.Form, series);
        if (like is null)
        {
            return BatchStock.Unknown("the stations of no tool of this sort are entered, so its stock is not known");
        }

        if ((series?.Steel ?? like.Tool.Steel) is not { } steel)
        {
            return BatchStock.Unknown("its steel is not known");
        }

        Station[] stations =
        [
            .. like.Tool.Stations.Select(each => new Station(BodyPart.Body, each.FromMark, each.Section)),
        ];
        if (!Body.TryMake(stations, out Body? body, out string? refusal))
        {
            return BatchStock.Unknown(refusal);
        }

        BatchStock stock = rack.Cut(body, steel, dated.Batch.Number, $"{place} by {dated.ForgeBy:yyyy-MM-dd}");
        return own is null
            ? stock with
            {
                Notes = stock.Notes.Add($"reckoned like {like.Mark}, made for another eye"),
            }
            : stock;
    }

    // the last made; of those for other eyes the one whose section is nearest
    private static ToolInShop? WithBody(Shop shop, Func<Tool, bool> belongs, Series? series) =>
        shop
            .Tools.Values.Where(tool => tool.Tool.Stations.Length > 1 && belongs(tool.Tool))
            .Reverse()
            .MinBy(tool => Math.Abs(Size(shop.SeriesOf(tool.Tool)) - Size(series)));

    private static double Size(Series? series) => (series?.Length?.Mm ?? 0) * (series?.Width?.Mm ?? 0);
}
