using System.Collections.Immutable;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results;

namespace ToolWear.Screens.ToolRack;

/// <summary>The rows of the rack's table, found by tool.</summary>
internal sealed class RackRows
{
    private readonly Dictionary<long, RackRow> rows = [];

    public RackRows(ShopForecasts? forecasts, Core.Measure.LengthUnit units)
    {
        (Forecasts, Units) = (forecasts, units);
        if (forecasts is null)
        {
            return;
        }

        Table table = RackTable.Of(forecasts, units);
        for (int i = 0; i < table.Rows.Length; i++)
        {
            ToolForecast tool = forecasts.Tools[i];
            rows.Add(
                tool.Tool.Id,
                new RackRow(
                    table.Columns,
                    table.Rows[i],
                    forecasts.VerdictOf(tool).Verdict,
                    tool.HeatsLeft is null || tool.FollowedToItsLimit,
                    tool.HeatsLeft is { IsWide: true }
                )
            );
        }
    }

    /// <summary>The forecasts that they were made from.</summary>
    public ShopForecasts? Forecasts { get; }

    /// <summary>The unit that they are in.</summary>
    public Core.Measure.LengthUnit Units { get; }

    public RackRow? Of(long tool) => rows.GetValueOrDefault(tool);
}

/// <summary>A row of the rack's table.</summary>
internal sealed record RackRow(
    ImmutableArray<Column> Columns,
    ImmutableArray<Cell> Cells,
    Verdict? Verdict,
    bool IsFollowed,
    bool IsWide
)
{
    /// <summary>A cell by its pinned name, or by its heading where it has none.</summary>
    public Cell this[string column]
    {
        get
        {
            for (int i = 0; i < Columns.Length; i++)
            {
                if ((Columns[i].Name ?? Columns[i].Heading) == column)
                {
                    return Cells[i];
                }
            }

            throw new ArgumentException($"the rack has no column {column}", nameof(column));
        }
    }
}
