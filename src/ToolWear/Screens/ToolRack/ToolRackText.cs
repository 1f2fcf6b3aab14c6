using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results;
using ToolWear.Screens.Drawing;
using ToolWear.Tables;

namespace ToolWear.Screens.ToolRack;

/// <summary>The text of the tool rack. Its figures are those of the table that the rack verb prints.</summary>
public static class ToolRackText
{
    // columns: mark of the next to take, eye, tool, what, worn, of, left, between, eye now, verdict, why
    private const int Eye = 2;
    private const int Mark = 6;
    private const int What = 13;
    private const int WornEnd = 29;
    private const int OfEnd = 35;
    private const int LeftEnd = 41;
    private const int RangeEnd = 51;
    private const int EyeNow = 52;
    private const int Verdict = 64;
    private const int Why = 81;
    private const int Around = 3;

    /// <summary>The tools in service in the order of the rack.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The tools.</returns>
    public static ImmutableArray<ToolInShop> InService(Shop shop) =>
        [.. shop.Tools.Values.Where(tool => tool.State == ToolState.InService).Order(RackOrder.Instance)];

    /// <summary>How many tools fit.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Tools, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - Around);

    /// <summary>Draws the rack.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="known">The rows of the rack's table.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="export">The file name that is being typed, null for none.</param>
    internal static void Draw(Picture body, Shop shop, RackRows known, ListPlace place, string? export)
    {
        ImmutableArray<ToolInShop> tools = InService(shop);
        int rows = RowsFor(body.Height);
        DrawHeadings(body);
        string? eye = null;
        for (int i = place.First; i < Math.Min(tools.Length, place.First + rows); i++)
        {
            int y = 1 + i - place.First;
            string now = tools[i].Tool.Eye ?? Words.EveryEye;
            body.Put(Eye, y, now == eye ? "" : now, Ink.Quiet, Mark - Eye - 1);
            eye = now;
            DrawTool(body, y, tools[i], known);
            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        DrawBelow(body, tools, place, known, export);
    }

    private static void DrawHeadings(Picture body)
    {
        body.Put(Eye, 0, "Eye", Ink.Strong);
        body.Put(Mark, 0, "Tool", Ink.Strong);
        body.Put(What, 0, "What", Ink.Strong);
        body.PutRight(WornEnd, 0, "Worn", Ink.Strong);
        body.PutRight(OfEnd, 0, "of", Ink.Strong);
        body.PutRight(LeftEnd, 0, "Heats", Ink.Strong);
        body.PutRight(RangeEnd, 0, "9 in 10", Ink.Strong);
        body.Put(EyeNow, 0, "Eye now", Ink.Strong);
        body.Put(Verdict, 0, "Verdict", Ink.Strong);
        body.Put(Why, 0, "Why", Ink.Strong);
    }

    private static void DrawTool(Picture body, int y, ToolInShop tool, RackRows known)
    {
        body.Put(Mark, y, tool.Mark.Text, Ink.Strong, What - Mark - 1);
        body.Put(What, y, PlaceOrForm(tool.Tool), Ink.Plain, WornEnd - What - 6);
        if (known.Of(tool.Id) is not { } row)
        {
            body.Put(Verdict, y, Words.WorkingOut, Ink.Quiet);
            return;
        }

        body.Put(0, y, row["next"].Shown == "yes" ? ">" : "");
        body.PutRight(WornEnd, y, row["Worn"].Shown, Ink.Plain, 6);
        body.PutRight(OfEnd, y, row["Of"].Shown, Ink.Plain, 5);
        body.PutRight(LeftEnd, y, row["heats_left"].Shown, Ink.Strong, 5);
        body.PutRight(RangeEnd, y, Range(row), Ink.Plain, 10);
        body.Put(EyeNow, y, EyeSize(row), Ink.Plain, Verdict - EyeNow - 1);
        Ink ink = row.Verdict is { } verdict && verdict < Core.Wear.Verdicts.Verdict.LookItOver ? Ink.Warn : Ink.Plain;
        body.Put(Verdict, y, row["verdict"].Shown, ink, Why - Verdict - 1);
        body.Put(Why, y, row["why"].Shown, Ink.Quiet);
    }

    private static void DrawBelow(
        Picture body,
        ImmutableArray<ToolInShop> tools,
        ListPlace place,
        RackRows known,
        string? export
    )
    {
        int y = Math.Min(tools.Length, RowsFor(body.Height)) + 1;
        if (export is not null)
        {
            int at = body.Put(0, y, Words.ExportTo);
            body.Put(at + 1, y, export + "_", Ink.Typed);
        }
        else if (!tools.IsEmpty)
        {
            string why = known.Of(tools[place.Chosen].Id)?["why"].Shown ?? "";
            body.Put(0, y, $"{tools[place.Chosen].Mark}: {why}", Ink.Quiet);
        }

        body.Put(0, y + 1, Words.RackLegend, Ink.Quiet);
    }

    /// <summary>A tool in one word: its place in the series, else its form.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The word.</returns>
    public static string PlaceOrForm(Tool tool) =>
        tool.Place == Place.None ? tool.Form.Name : Places.Words.Word(tool.Place);

    private static string Range(RackRow row)
    {
        string mark = row.IsFollowed ? "" : Words.NotFollowedMark;
        return !row["left_lo90"].IsNumber ? "-"
            : row["left_hi90"].IsNumber ? $"{row["left_lo90"].Shown}-{row["left_hi90"].Shown}{mark}"
            : $"over {row["left_lo90"].Shown}{mark}";
    }

    private static string EyeSize(RackRow row) =>
        row["eye_length_mm"].IsNumber ? $"{row["eye_length_mm"].Shown}x{row["eye_width_mm"].Shown}" : "-";
}

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
                    tool.HeatsLeft is null || tool.FollowedToItsLimit
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
    bool IsFollowed
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
