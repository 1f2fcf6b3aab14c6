using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens;

/// <summary>The columns of a result as columns of a list.</summary>
internal static class ListColumns
{
    /// <summary>As many as a window has room for, two columns between any two, the mark of the chosen row before them.</summary>
    public static ListColumn[] Columns(this Table table, ListPlace place, int width, Func<int, Ink>? ink = null) =>
        [
            ListColumn.Mark(place),
            .. table
                .Places(width - 3, 2)
                .Select(at => new ListColumn(
                    at.Set(table.Columns[at.Index].Heading!),
                    at.Width + 1,
                    row => at.Set(table.Rows[row][at.Index].Shown),
                    ink
                )),
        ];
}
