using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.OneTool;

/// <summary>A tool with the forecasts of its gauge marks. Its own end is the earliest over them.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Gauges">One for each gauge mark, in their order.</param>
/// <param name="UsualSession">Weighted heats of its next usual session.</param>
public sealed record ToolForecast(ToolInShop Tool, ImmutableArray<GaugeForecast> Gauges, double UsualSession)
{
    private readonly Lazy<int?> enoughToday = new(() => OneTool.EnoughToday.Of(k => Chance(Gauges, k)));
    private readonly (HeatsLeft? Left, GaugeForecast? Deciding) end = EndOf(Gauges);

    /// <summary>The gauge mark that ends the tool first.</summary>
    /// <remarks>Where no forecast speaks, the first gauge mark with a limit; null where none has one.</remarks>
    public GaugeForecast? Deciding => end.Deciding;

    /// <summary>Heats left of the whole tool, the earliest end over its gauge marks; null where no forecast speaks.</summary>
    public HeatsLeft? HeatsLeft => end.Left;

    /// <summary>Whether every range that counts rests on a tool of its kind that was followed to its limit.</summary>
    public bool FollowedToItsLimit => Deciding?.FollowedToItsLimit ?? true;

    /// <summary>F(k): the chance that the tool is past its limit after k more heats, the largest over its gauge marks.</summary>
    /// <param name="moreHeats">k in weighted heats, zero or more.</param>
    /// <returns>The chance, or null where no forecast speaks.</returns>
    public double? ChancePastLimit(double moreHeats) => Chance(Gauges, moreHeats);

    /// <summary>How many heats more it should do in one day; null where no forecast speaks.</summary>
    public int? EnoughToday => enoughToday.Value;

    /// <summary>How many heats more of some work it should do in one day, as worked, rounded down.</summary>
    /// <param name="weight">How much a heat of that work counts.</param>
    /// <param name="since">Weighted heats since this forecast.</param>
    /// <returns>Heats from 0 on; <see cref="EnoughToday.MostAhead"/> and more mean any number; null where no forecast
    /// speaks or the work does not wear it.</returns>
    public int? EnoughOf(double weight, double since = 0) =>
        EnoughToday is not { } weighted || weight <= 0 ? null
        : weighted >= OneTool.EnoughToday.MostAhead ? OneTool.EnoughToday.MostAhead
        : (int)Math.Floor((Math.Max(0, weighted - since) / weight) + 1e-9);

    private static double? Chance(ImmutableArray<GaugeForecast> gauges, double moreHeats) =>
        gauges.Max(each => each.Forecast?.ChancePastLimit(moreHeats));

    private static (HeatsLeft?, GaugeForecast?) EndOf(ImmutableArray<GaugeForecast> gauges)
    {
        GaugeForecast[] speaking = [.. gauges.Where(each => each.Forecast is not null)];
        if (speaking.Length == 0)
        {
            return (null, gauges.FirstOrDefault(each => each.History.Wear.LimitMm is not null));
        }

        Forecast[] forecasts = [.. speaking.Select(each => each.Forecast!)];
        HeatsLeft left = WholeTool.HeatsLeft(forecasts);
        return (left, speaking[WholeTool.Deciding(forecasts, left)]);
    }
}
