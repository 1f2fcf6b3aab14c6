using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Hammer;

namespace ToolWear.Screens.ForgeList;

/// <summary>A place of a series against what the open orders ask of it.</summary>
/// <param name="Eye">The eye.</param>
/// <param name="Place">The place.</param>
/// <param name="Asked">Weighted heats that the open orders ask.</param>
/// <param name="Left">Heats left in its tools, as often more as less.</param>
/// <param name="Low">Heats left in its tools where each ends at the low end of its range (nine times in ten).</param>
/// <param name="Unknown">How many of its tools have no forecast.</param>
/// <param name="Needed">How many new tools are missing at the middle.</param>
/// <param name="By">The day of the first order that cannot be met with what is there, null where all can.</param>
public sealed record PlaceShort(
    string Eye,
    Place Place,
    double Asked,
    double Left,
    double Low,
    int Unknown,
    int Needed,
    DateOnly? By
);

/// <summary>The forge list in its first form: drifts whose forecast ends before the open orders do.</summary>
public static class ForgeListText
{
    /// <summary>Every place of drifts that the open orders use.</summary>
    /// <param name="forecasts">The shop with its forecasts.</param>
    /// <returns>By eye and place.</returns>
    public static ImmutableArray<PlaceShort> Of(ShopForecasts forecasts)
    {
        Shop shop = forecasts.Shop;
        return
        [
            .. from order in shop.Orders.Values
            where order.State == OrderState.Open
            from stage in LastTime.Stages(shop, order.Pattern)
            where stage is { Eye: not null, HeatsAHead: not null, Form.Name: "drift" }
            group (order, stage) by (stage.Eye!, stage.Place) into place
            orderby place.Key
            select OfPlace(forecasts, place.Key.Item1, place.Key.Place, [.. place]),
        ];
    }

    /// <summary>Draws the list.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="forecasts">The forecasts, null while they are being worked out.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ShopForecasts? forecasts, int first)
    {
        string[] lines = forecasts is null ? [Words.WorkingOut] : [.. Lines(forecasts, Math.Max(20, body.Width))];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            body.Put(0, i, lines[first + i], i == 0 && first == 0 ? Ink.Strong : Ink.Plain);
        }

        return lines.Length;
    }

    private static IEnumerable<string> Lines(ShopForecasts forecasts, int width)
    {
        ImmutableArray<PlaceShort> places = Of(forecasts);
        if (places.IsEmpty)
        {
            return Picture.Wrap(Words.NoOpenOrders, width);
        }

        return Picture.Wrap(
            Words.ForgeColumns
                + "\n"
                + string.Join('\n', places.Select(Words.ForgeRow))
                + "\n\n"
                + Words.ForgeFirst
                + "\n"
                + Words.ForecastCautionShort,
            width
        );
    }

    private static PlaceShort OfPlace(
        ShopForecasts forecasts,
        string eye,
        Place place,
        ImmutableArray<(OrderDescribed Order, PatternStage Stage)> asked
    )
    {
        Shop shop = forecasts.Shop;
        ToolForecast[] tools =
        [
            .. forecasts.InService.Where(each =>
                each.Tool.Tool.Form.Name == "drift" && each.Tool.Tool.Eye == eye && each.Tool.Tool.Place == place
            ),
        ];
        double left = tools.Sum(each => each.HeatsLeft?.Q50 ?? 0);
        double sum = 0;
        DateOnly? by = null;
        foreach ((OrderDescribed order, PatternStage stage) in asked.OrderBy(each => each.Order.DueOn))
        {
            sum += Heats(shop, order, stage);
            by ??= sum > left ? order.DueOn : null;
        }

        double life =
            shop.Series.GetValueOrDefault(new SeriesKey(eye, place, "drift"))?.GuessHeats ?? GuessedLife.Assumed;
        return new(
            eye,
            place,
            sum,
            left,
            tools.Sum(each => each.HeatsLeft?.Q05 ?? 0),
            tools.Count(each => each.HeatsLeft is null),
            sum > left ? (int)Math.Ceiling((sum - left) / life) : 0,
            by
        );
    }

    private static double Heats(Shop shop, OrderDescribed order, PatternStage stage)
    {
        Work main = stage.Form!.MainWork(stage.Place);
        Work work = stage.Work ?? main;
        double factor = work == main ? 1 : shop.Settings.Factor(stage.Place, work);
        return order.Heads * stage.HeatsAHead!.Value * factor * (stage.Load ?? 1);
    }
}
