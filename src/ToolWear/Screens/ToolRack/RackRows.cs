using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Results.Tools;

namespace ToolWear.Screens.ToolRack;

/// <summary>The rows of the rack, found by tool.</summary>
internal sealed class RackRows(ShopForecasts? forecasts, LengthUnit units)
{
    private readonly Dictionary<long, RackRow> rows = forecasts is null
        ? []
        : RackTable.Rows(forecasts).ToDictionary(row => row.Tool.Tool.Id);

    /// <summary>The forecasts that they were made from.</summary>
    public ShopForecasts? Forecasts => forecasts;

    /// <summary>The unit that they are shown in.</summary>
    public LengthUnit Units => units;

    public RackRow? Of(long tool) => rows.GetValueOrDefault(tool);

    public string Shown(Column<RackRow> column, RackRow row) => column.Of(row, units).Shown;
}
