using System.Runtime.CompilerServices;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;

namespace ToolWear.Screens;

/// <summary>A chart that is asked for.</summary>
/// <param name="Shop">The shop.</param>
/// <param name="Gauge">The gauge mark with its forecast.</param>
internal sealed record ChartAsked(Shop Shop, GaugeForecast Gauge);

/// <summary>Works the figures of charts out beside the screens, each once.</summary>
/// <param name="onScreen">Does something on the screens' thread.</param>
internal sealed class Charts(Action<Action> onScreen)
    : Beside<ChartAsked, ChartFigures>(onScreen, (asked, _) => Make(asked))
{
    // a forecast never changes, so its chart holds as long as it does
    private static readonly ConditionalWeakTable<GaugeForecast, ChartFigures> Made = [];

    private ChartAsked? asked;

    /// <summary>The figures of a chart where they are there; else they are asked for.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="gauge">The gauge mark with its forecast.</param>
    /// <returns>The figures, null while they are being worked out.</returns>
    public ChartFigures? Of(Shop shop, GaugeForecast gauge)
    {
        if (Made.TryGetValue(gauge, out ChartFigures? figures))
        {
            return figures;
        }

        if (!ReferenceEquals(asked?.Gauge, gauge))
        {
            asked = new ChartAsked(shop, gauge);
            Want(asked);
        }

        return null;
    }

    private static ChartFigures Make(ChartAsked asked) =>
        Made.GetValue(asked.Gauge, gauge => ChartFigures.Of(asked.Shop, gauge));
}
