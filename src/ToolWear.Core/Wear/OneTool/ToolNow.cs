using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Wear.OneTool;

/// <summary>What a tool measures now at its gauge marks, and its section there.</summary>
public static class ToolNow
{
    /// <summary>The gauge mark that measures something.</summary>
    /// <param name="tool">The tool with its histories.</param>
    /// <param name="measures">What it measures.</param>
    /// <returns>The first such, or null where there is none.</returns>
    public static GaugeForecast? Gauge(ToolForecast tool, Measures measures) =>
        tool.Gauges.FirstOrDefault(each => each.History.Gauge.Measures == measures);

    /// <summary>The cold length and width of a drift at its mark now.</summary>
    /// <remarks>Where its length is not measured it is taken as its series says: the long way hardly wears.</remarks>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The drift with its forecasts.</param>
    /// <returns>The size; null where the tool is no drift, or its length or width is not known.</returns>
    public static EyeSize? Size(Shop shop, ToolForecast tool) =>
        tool.Tool.Tool.Form.Name == ToolForms.Drift
        && Gauge(tool, Measures.Width)?.SizeNowMm is { } width
        && LengthMm(shop, tool, width) is { } length
            ? new EyeSize(length, width)
            : null;

    /// <summary>The section of a drift at its mark now: as made, worn to the size now; the radius keeps its made value
    /// until it is measured.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The drift with its forecasts.</param>
    /// <returns>The section; null where shape or size is not known.</returns>
    public static Section? SectionNow(Shop shop, ToolForecast tool)
    {
        if (Size(shop, tool) is not { } size || SectionMade(shop, tool.Tool.Tool) is not { } made)
        {
            return null;
        }

        Length length = Length.FromMm(size.LengthMm);
        Length width = Length.FromMm(size.WidthMm);
        Section? section;
        if (Gauge(tool, Measures.NoseRadius)?.SizeNowMm is { } radius)
        {
            _ = Section.TryMake(made.Kind, length, width, Length.FromMm(radius), out section, out string? _);
        }
        else
        {
            _ = made.TryWornTo(length, width, out section, out string? _);
        }

        return section;
    }

    /// <summary>The section of a drift at its mark as it was made.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The drift.</param>
    /// <returns>Its station at the mark, else what its series says; null where neither is known.</returns>
    public static Section? SectionMade(Shop shop, Tool tool)
    {
        Length? mark = MarkOf(tool);
        Station? station = tool.Stations.FirstOrDefault(each => each.FromMark == mark);
        Series? series = shop.SeriesOf(tool);
        return station?.Section ?? (tool.Section is null || tool.Section == series?.Section ? series?.AtMark() : null);
    }

    /// <summary>Where a drift's mark lies: where its width is measured.</summary>
    /// <param name="tool">The drift.</param>
    /// <returns>From the shank mark towards the nose; null where not entered.</returns>
    public static Length? MarkOf(Tool tool) =>
        tool.GaugeMarks.FirstOrDefault(gauge => gauge.Measures == Measures.Width)?.FromMark;

    private static double? LengthMm(Shop shop, ToolForecast tool, double widthMm) =>
        Gauge(tool, Measures.Length) is { } gauge ? gauge.SizeNowMm
        : tool.Tool.Tool.Section == SectionKind.Round ? widthMm
        : shop.SeriesOf(tool.Tool.Tool)?.Length?.Mm;
}
