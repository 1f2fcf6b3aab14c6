using ToolWear.Core.Eyes;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>The cold eye that a worn drift makes now.</summary>
public static class EyeNow
{
    /// <summary>Forecasts the eye of a drift: by shrinkage, and by the shop's own allowance from three measured eyes on.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="drift">The drift.</param>
    /// <returns>The eye; null where the tool is no drift, or its length or width is not known.</returns>
    public static EyeForecast? Of(ShopForecasts all, ToolForecast drift)
    {
        Tool tool = drift.Tool.Tool;
        return ToolNow.Size(all.Shop, drift) is { } size
            ? EyeForecast.For(
                size,
                all.Shop.Settings.KnockOutOf(tool.Place),
                tool.Eye is { } eye ? all.Eyes.At(eye, tool.Place) : []
            )
            : null;
    }
}
