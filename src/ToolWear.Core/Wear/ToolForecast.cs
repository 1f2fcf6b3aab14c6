using System.Collections.Immutable;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Wear;

/// <summary>A tool with the forecasts of its gauge marks. Its own end is the earliest over them.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Gauges">One for each gauge mark, in their order.</param>
/// <param name="UsualSession">Weighted heats of its next usual session.</param>
public sealed record ToolForecast(ToolInShop Tool, ImmutableArray<GaugeForecast> Gauges, double UsualSession)
{
    /// <summary>The gauge mark that ends the tool first.</summary>
    /// <remarks>Where no forecast speaks, the first gauge mark with a limit; null where none has one.</remarks>
    public GaugeForecast? Deciding { get; } = FindDeciding(Gauges);

    /// <summary>Heats left of the whole tool, the earliest end over its gauge marks; null where no forecast speaks.</summary>
    public HeatsLeft? HeatsLeft { get; } = FindHeatsLeft(Gauges);

    /// <summary>Whether every range that counts rests on a tool of its kind that was followed to its limit.</summary>
    public bool FollowedToItsLimit => Deciding?.FollowedToItsLimit ?? true;

    /// <summary>F(k): the chance that the tool is past its limit after k more heats, the largest over its gauge marks.</summary>
    /// <param name="moreHeats">k in weighted heats, zero or more.</param>
    /// <returns>The chance, or null where no forecast speaks.</returns>
    public double? ChancePastLimit(double moreHeats) => Gauges.Max(each => each.Forecast?.ChancePastLimit(moreHeats));

    private static GaugeForecast? FindDeciding(ImmutableArray<GaugeForecast> gauges)
    {
        GaugeForecast[] speaking = [.. gauges.Where(each => each.Forecast is not null)];
        return speaking.Length > 0
            ? speaking[WholeTool.Deciding([.. speaking.Select(each => each.Forecast!)])]
            : gauges.FirstOrDefault(each => each.History.Wear.LimitMm is not null);
    }

    private static HeatsLeft? FindHeatsLeft(ImmutableArray<GaugeForecast> gauges)
    {
        Forecast[] speaking = [.. gauges.Select(each => each.Forecast).OfType<Forecast>()];
        return speaking.Length > 0 ? WholeTool.HeatsLeft(speaking) : null;
    }
}
