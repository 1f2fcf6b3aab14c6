using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear;

/// <summary>What is left in the slitters and punches of a shop.</summary>
public static class SlitOutlooks
{
    /// <summary>Looks at one slitter or punch.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool with its forecasts.</param>
    /// <returns>The outlook; null where the tool opens no slit.</returns>
    public static SlitOutlook? Of(Shop shop, ToolForecast tool)
    {
        Tool made = tool.Tool.Tool;
        if (!made.Form.OpensASlit)
        {
            return null;
        }

        EyeDescribed? eye = made.Eye is { } name ? shop.Eyes.GetValueOrDefault(name) : null;
        GaugeForecast? edge = ToolNow.Gauge(tool, Measures.Edge) ?? ToolNow.Gauge(tool, Measures.Width);
        GaugeForecast? overall = ToolNow.Gauge(tool, Measures.Overall);
        return SlitOutlook.Of(
            ToolOf(made.Form),
            eye is null ? null : SectionOf(eye),
            edge?.SizeNowMm,
            made.Form.Name == "slitter" ? 0 : shop.SeriesOf(made)?.Width?.Mm ?? 0,
            edge?.History.Gauge.ScrapSize?.Mm,
            overall?.History.LastKnown,
            overall?.History.Gauge.Least,
            overall is null ? null : Dressing.Of(shop, tool.Tool)?.Takes.GetValueOrDefault(overall.History.Gauge.Name)
        );
    }

    /// <summary>How a form of tool opens a slit.</summary>
    /// <param name="form">A form that opens one.</param>
    /// <returns>The kind of opening.</returns>
    public static SlitTool ToolOf(ToolForm form) =>
        form.Name switch
        {
            "slitter" => SlitTool.Slitter,
            "slot punch" => SlitTool.SlotPunch,
            _ => SlitTool.SquarePunch,
        };

    /// <summary>The section of an eye of the shop.</summary>
    /// <param name="eye">The eye.</param>
    /// <returns>The section; null where its figures make none.</returns>
    public static Section? SectionOf(EyeDescribed eye) =>
        Section.TryMake(
            eye.Section,
            eye.Length,
            eye.Width,
            eye.NoseRadius ?? Length.Zero,
            out Section? section,
            out string? _
        )
            ? section
            : null;
}
