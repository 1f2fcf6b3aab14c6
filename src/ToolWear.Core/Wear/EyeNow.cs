using ToolWear.Core.Eyes;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear;

/// <summary>The cold eye that a worn drift makes now, by shrinkage from its sizes at the gauge marks.</summary>
public static class EyeNow
{
    /// <summary>Predicts the eye of a drift.</summary>
    /// <param name="shop">The shop, for its temperatures.</param>
    /// <param name="forecast">The drift with its histories.</param>
    /// <returns>The eye; null where the tool is no drift, or its length or width is not known.</returns>
    public static EyeSize? Of(Shop shop, ToolForecast forecast)
    {
        Tool tool = forecast.Tool.Tool;
        if (tool.Form.Name != "drift" || SizeNowMm(forecast, Measures.Width) is not { } widthMm)
        {
            return null;
        }

        double? lengthMm = tool.Section == Sections.SectionKind.Round ? widthMm : SizeNowMm(forecast, Measures.Length);
        KnockOut temperatures = new(
            SteelTemperature.Of(shop.Settings.DriftCelsius(tool.Place)),
            SteelTemperature.Of(shop.Settings.EyeCelsius(tool.Place))
        );
        return lengthMm is { } length ? temperatures.Eyes(new EyeSize(length, widthMm)) : null;
    }

    /// <summary>The size at a gauge mark now: as last known where it has not worked since, else as forecast.</summary>
    private static double? SizeNowMm(ToolForecast forecast, Measures measures)
    {
        if (forecast.Gauges.FirstOrDefault(each => each.History.Gauge.Measures == measures) is not { } gauge)
        {
            return null;
        }

        GaugeHistory history = gauge.History;
        bool isAsRead = history.HeatsSinceKnown <= 0 || gauge.Forecast is null;
        return isAsRead ? history.LastKnown?.Mm
            : history.Gauge.Wears == Wears.Smaller ? history.Start?.Mm - gauge.Forecast!.WearNowMm
            : history.Start?.Mm + gauge.Forecast!.WearNowMm;
    }
}
