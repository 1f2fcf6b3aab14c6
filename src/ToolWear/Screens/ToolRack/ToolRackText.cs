using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ToolRack;

/// <summary>The text of the tool rack. Its figures are those of the table that the rack verb prints.</summary>
public static class ToolRackText
{
    private const int Around = 4;

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
        RackColumns at = RackColumns.For(body.Width);
        DrawHeadings(body, at);
        string? eye = null;
        for (int i = place.First; i < Math.Min(tools.Length, place.First + rows); i++)
        {
            int y = 1 + i - place.First;
            string now = tools[i].Tool.Eye ?? Words.EveryEye;
            at.Eye.Put(body, y, now == eye ? "" : now, Ink.Quiet);
            eye = now;
            DrawTool(body, at, y, tools[i], known);
            if (i == place.Chosen)
            {
                body.Tint(y, Ink.Chosen);
            }
        }

        DrawBelow(body, tools, place, known, export);
    }

    private static void DrawHeadings(Picture body, RackColumns at)
    {
        (RackColumn Column, string Heading)[] headings =
        [
            (at.Eye, "Eye"),
            (at.Tool, "Tool"),
            (at.What, "What"),
            (at.Worn, "Worn"),
            (at.Of, "of"),
            (at.Left, "Heats"),
            (at.Range, "9 in 10"),
            (at.EyeNow, "Eye now"),
            (at.Verdict, "Verdict"),
            (at.Why, "Why"),
        ];
        foreach ((RackColumn column, string heading) in headings)
        {
            column.Put(body, 0, heading, Ink.Strong);
        }
    }

    private static void DrawTool(Picture body, RackColumns at, int y, ToolInShop tool, RackRows known)
    {
        at.Tool.Put(body, y, tool.Mark.Text, Ink.Strong);
        at.What.Put(body, y, RackTable.PlaceOrForm(tool.Tool));
        if (known.Of(tool.Id) is not { } row)
        {
            at.Verdict.Put(body, y, Words.WorkingOut, Ink.Quiet);
            return;
        }

        body.Put(0, y, row.IsNext ? ">" : "");
        at.Worn.Put(body, y, known.Shown(RackTable.Worn, row));
        at.Of.Put(body, y, known.Shown(RackTable.Limit, row));
        at.Left.Put(body, y, known.Shown(RackTable.Left, row), Ink.Strong);
        at.Range.Put(body, y, RackTable.Range.Of(row, known.Units).Shown);
        at.EyeNow.Put(body, y, EyeSize(row, known.Units));
        Ink ink = row.Verdict.Verdict < Verdict.LookItOver ? Ink.Warn : Ink.Plain;
        at.Verdict.Put(body, y, known.Shown(RackTable.Verdict, row), ink);
        at.Why.Put(body, y, row.Verdict.Why, Ink.Quiet);
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
            body.PutTyped(at + 1, y, export);
        }
        else if (!tools.IsEmpty)
        {
            body.Put(0, y, Chosen(tools[place.Chosen], known, body.Width), Ink.Quiet);
        }

        bool isComplete = body.Width >= RackColumns.Complete;
        body.Put(0, y + 1, isComplete ? Words.RackLegend : Words.RackLegendShort, Ink.Quiet);
        // a narrow window shows no eye
        body.Put(0, y + 2, isComplete ? Words.EyeCautionShort : "", Ink.Quiet);
    }

    // where there is no room for both, what to do comes first
    private static string Chosen(ToolInShop tool, RackRows known, int width)
    {
        RackRow? row = known.Of(tool.Id);
        string why = $"{tool.Mark}: {row?.Verdict.Why}";
        string both = $"{why}; {Words.MeasureOnceMore}";
        return row?.Tool.HeatsLeft is not { IsWide: true } ? why
            : Picture.ColumnsOf(both) <= width ? both
            : $"{tool.Mark}: {Words.MeasureOnceMore}; {row.Verdict.Why}";
    }

    private static string EyeSize(RackRow row, Core.Measure.LengthUnit units) =>
        row.Eye is null ? "-" : $"{RackTable.EyeLength.Of(row, units).Shown}x{RackTable.EyeWidth.Of(row, units).Shown}";
}
