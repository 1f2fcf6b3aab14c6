using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Storage.Csv;

namespace ToolWear.Pens;

/// <summary>A table that someone brings, as it is shown before it comes in.</summary>
internal static class BroughtText
{
    /// <summary>How it was read, on one line.</summary>
    public static string Understood(BroughtFile file) =>
        file.What is { Columns.IsEmpty: true } ? $"{file.Name}: no known table. Read as: {file.Understood}"
        : file.What is { } what
            ? $"{file.Name}: a table of {file.Kind}, {Of(what.Rows.Length, "row")} can come in. Read as: {file.Understood}"
        : $"{file.Name} cannot be read";

    /// <summary>The whole of it: how it was read, faults, doubts, rows.</summary>
    public static string Of(BroughtFile file, LengthUnit units, int width = int.MaxValue) =>
        Wrapped.Of(Understood(file), "", "  ", width)
        + Faults(file.Faults, file.Faults.Length, width)
        + Listed("To look at:", file.Doubts, file.Doubts.Length, width)
        + (file.What is { Rows.IsEmpty: false } ? Rows(BroughtTable.Rows(file, units), width) : "");

    /// <summary>A folder, before it comes in: how much it holds, faults.</summary>
    public static string Of(string folder, CsvImported set, int width) =>
        Wrapped.Of($"{folder}: {set.Entries.Length} entries can come in", "", "  ", width)
        + Faults(set.Faults, set.Faults.Length + set.MoreFaults, width);

    /// <summary>Says that there is nothing new in a table.</summary>
    public static string NothingNew(BroughtFile file) => $"{file.Name}: the shop knows all of it already";

    /// <summary>Says what came in.</summary>
    public static string Imported(int entries, Shop shop) =>
        $"{(entries == 1 ? "1 entry" : $"{entries} entries")} imported; the shop has {Of(shop.Tools.Count, "tool")} and {Of(shop.Sessions.Count, "session")} now";

    /// <summary>So many of a thing.</summary>
    public static string Of(int count, string thing) => $"{count} {thing}{(count == 1 ? "" : "s")}";

    /// <summary>The rows without columns that none fills; those that find no room follow below, behind the first again.</summary>
    private static string Rows(Table table, int width)
    {
        ColumnPlace[] places =
        [
            .. table.Places(int.MaxValue).Where(place => table.Rows.Any(row => row[place.Index].Shown.Length > 0)),
        ];
        StringBuilder text = new();
        int next = 1;
        do
        {
            HashSet<int> block = [places[0].Index];
            int used = places[0].Width;
            while (next < places.Length && (block.Count == 1 || used + 2 + places[next].Width <= width))
            {
                used += 2 + places[next].Width;
                block.Add(places[next++].Index);
            }

            Table part = table with
            {
                Columns =
                [
                    .. table.Columns.Select((column, i) => block.Contains(i) ? column : column with { Heading = null }),
                ],
            };
            text.Append('\n').Append(part.ToText(width));
        } while (next < places.Length);

        return text.ToString();
    }

    private static string Faults(IEnumerable<object> faults, int count, int width) =>
        Listed("Faults; nothing comes in until they are mended:", faults, count, width);

    private static string Listed(string heading, IEnumerable<object> remarks, int count, int width) =>
        count == 0
            ? ""
            : $"\n{heading}\n"
                + string.Concat(
                    remarks
                        .Take(BroughtFile.MostFaults)
                        .Select(remark => Wrapped.Of(remark.ToString()!, "  ", "    ", width))
                )
                + (count > BroughtFile.MostFaults ? $"  and {count - BroughtFile.MostFaults} more\n" : "");
}
