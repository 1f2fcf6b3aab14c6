using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;
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
        at.What.Put(body, y, PlaceOrForm(tool.Tool));
        if (known.Of(tool.Id) is not { } row)
        {
            at.Verdict.Put(body, y, Words.WorkingOut, Ink.Quiet);
            return;
        }

        body.Put(0, y, row["next"].Shown == "yes" ? ">" : "");
        at.Worn.Put(body, y, row["Worn"].Shown);
        at.Of.Put(body, y, row["Of"].Shown);
        at.Left.Put(body, y, row["heats_left"].Shown, Ink.Strong);
        at.Range.Put(body, y, Range(row));
        at.EyeNow.Put(body, y, EyeSize(row));
        Ink ink = row.Verdict is { } verdict && verdict < Verdict.LookItOver ? Ink.Warn : Ink.Plain;
        at.Verdict.Put(body, y, row["verdict"].Shown, ink);
        at.Why.Put(body, y, row["why"].Shown, Ink.Quiet);
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

    /// <summary>A tool in one word: its place in the series, else its form.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The word.</returns>
    public static string PlaceOrForm(Tool tool) =>
        tool.Place == Place.None ? tool.Form.Name : Places.Words.Word(tool.Place);

    // where there is no room for both, what to do comes first
    private static string Chosen(ToolInShop tool, RackRows known, int width)
    {
        RackRow? row = known.Of(tool.Id);
        string why = $"{tool.Mark}: {row?["why"].Shown ?? ""}";
        string both = $"{why}; {Words.MeasureOnceMore}";
        return row is not { IsWide: true } ? why
            : Picture.ColumnsOf(both) <= width ? both
            : $"{tool.Mark}: {Words.MeasureOnceMore}; {row["why"].Shown}";
    }

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
