using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolRack;

/// <summary>The text of the tool rack. Its figures are those of the table that the rack verb prints.</summary>
internal static class ToolRackText
{
    private const string EveryEye = "all";
    private const string ExportTo = "Write the wear history to the file:";
    private const string RackLegend =
        "> use next  * range may be too narrow  Heats left is an estimate, not a go-ahead";
    private const string RackLegendShort = "Heats left is an estimate, not a go-ahead";

    // from so many columns on the rack is complete; a narrow window keeps tool, heats left and verdict
    private const int Complete = 80;

    // the columns before the one that says why
    private const int BeforeWhy = 80;

    /// <summary>The tools in service in the order of the rack.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The tools.</returns>
    public static ImmutableArray<ToolInShop> InService(Shop shop) =>
        [.. shop.Tools.Values.Where(tool => tool.State == ToolState.InService).Order(RackOrder.Instance)];

    /// <summary>Draws the rack.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="known">The rows of the rack's table.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="export">The file name that is being typed, null for none.</param>
    internal static void Draw(Picture body, Shop shop, RackRows known, ListPlace place, string? export)
    {
        ImmutableArray<ToolInShop> tools = InService(shop);
        string why = tools.IsEmpty ? "" : Chosen(tools[place.Chosen], known, body.Width);
        // a finding is never cut off
        bool isFound = !tools.IsEmpty && !LookedOver.Of(shop, tools[place.Chosen]).Open.IsEmpty;
        string[] chosen = isFound ? [.. Picture.Wrap(why, Math.Max(10, body.Width))] : [why];
        int room = Math.Max(2, body.Height - 2 - chosen.Length);
        int y = body.PutList(0, room, tools.Length, place, width => Columns(tools, known, width));
        DrawBelow(body, y, chosen, export);
    }

    private static IReadOnlyList<ListColumn> Columns(ImmutableArray<ToolInShop> tools, RackRows known, int width)
    {
        RackRow? Row(int row) => known.Of(tools[row].Id);
        string Known(int row, Func<RackRow, string> of) => Row(row) is { } found ? of(found) : "";
        Func<int, string> Of(Column<RackRow> column) => row => Known(row, found => known.Shown(column, found));
        Ink OfVerdict(int row) =>
            Row(row) switch
            {
                null => Ink.Quiet,
                { Verdict.Verdict: < Verdict.LookItOver } => Ink.Warn,
                _ => Ink.Plain,
            };
        ListColumn next = new("", 1, row => Row(row)?.Mark ?? "");
        ListColumn tool = new("Tool", 6, row => tools[row].Mark.Text, _ => Ink.Strong);
        ListColumn left = new("Heats", 5, Of(RackTable.Left), _ => Ink.Strong, IsRight: true);
        ListColumn range = new("9 in 10", 9, Of(RackTable.Range), IsRight: true);
        ListColumn verdict = new(
            "Verdict",
            Math.Min(16, width - (width < Complete - 1 ? 25 : 63)),
            row => Row(row) is { } found ? known.Shown(RackTable.Verdict, found) : Words.WorkingOut,
            OfVerdict
        );
        return width < Complete - 1
            ? [next, tool, left, range, verdict]
            :
            [
                next,
                new("Eye", 3, row => tools[row].Tool.Eye ?? EveryEye, _ => Ink.Quiet),
                tool,
                new("What", 10, row => RackTable.PlaceOrForm(tools[row].Tool)),
                new("Worn", 5, Of(RackTable.Worn), IsRight: true),
                new("of", 5, Of(RackTable.Limit), IsRight: true),
                left,
                range,
                new("Eye now", 10, Of(RackTable.EyeNow)),
                verdict,
                .. width < BeforeWhy + 10
                    ? Array.Empty<ListColumn>()
                    : [new("Why", width - BeforeWhy, row => Known(row, found => found.Verdict.Why), _ => Ink.Quiet)],
            ];
    }

    private static void DrawBelow(Picture body, int y, string[] chosen, string? export)
    {
        if (export is not null)
        {
            int at = body.Put(0, y, ExportTo);
            body.PutTyped(at + 1, y, export);
        }
        else
        {
            for (int i = 0; i < chosen.Length; i++)
            {
                body.Put(0, y + i, chosen[i], Ink.Quiet);
            }
        }

        y += chosen.Length;
        bool isComplete = body.Width >= Complete;
        body.Put(0, y, isComplete ? RackLegend : RackLegendShort, Ink.Quiet);
        // a narrow window shows no eye
        body.Put(0, y + 1, isComplete ? Cautions.EyeCautionShort : "", Ink.Quiet);
    }

    // where there is no room for both, what to do comes first
    private static string Chosen(ToolInShop tool, RackRows known, int width)
    {
        RackRow? row = known.Of(tool.Id);
        string none =
            row is { IsNext: false }
            && NextToTake.None(row.All).FirstOrDefault(each => each.Contains(row.Tool)) is { IsDefault: false }
                ? " (none of its place is to be used next)"
                : "";
        string why = $"{tool.Mark}: {row?.Verdict.Why}{none}";
        string both = $"{why}; {Words.MeasureOnceMore}";
        return row is null or { Verdict.Verdict: <= Verdict.DressFirst } || row.Tool.HeatsLeft is not { IsWide: true }
                ? why
            : Picture.ColumnsOf(both) <= width ? both
            : $"{tool.Mark}: {Words.MeasureOnceMore}; {row.Verdict.Why}";
    }
}
