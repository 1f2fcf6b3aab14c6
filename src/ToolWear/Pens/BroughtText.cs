using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Measure;
using ToolWear.Results.Looks;

namespace ToolWear.Pens;

/// <summary>A table that someone brings, as it is shown before it comes in.</summary>
internal static class BroughtText
{
    /// <summary>How it was read, on one line.</summary>
    public static string Understood(BroughtFile file) =>
        file.What is { } what
            ? $"{file.Name}: a table of {file.Kind}, {Of(what.Rows.Length, "row")} can come in. Read as: {file.Understood}"
            : $"{file.Name} cannot be read";

    /// <summary>The whole of it: how it was read, faults, doubts, rows.</summary>
    public static string Of(BroughtFile file, LengthUnit units) =>
        Understood(file)
        + "\n"
        + Listed("Faults; nothing comes in until they are mended:", file.Faults)
        + Listed("To look at:", file.Doubts)
        + (file.What is { Rows.IsEmpty: false } ? "\n" + BroughtTable.Rows(file, units).ToText() : "");

    /// <summary>So many of a thing.</summary>
    public static string Of(int count, string thing) => $"{count} {thing}{(count == 1 ? "" : "s")}";

    private static string Listed(string heading, IReadOnlyCollection<RowRemark> remarks) =>
        remarks.Count == 0
            ? ""
            : $"\n{heading}\n"
                + string.Concat(remarks.Take(BroughtFile.MostFaults).Select(remark => $"  {remark}\n"))
                + (
                    remarks.Count > BroughtFile.MostFaults
                        ? $"  and {remarks.Count - BroughtFile.MostFaults} more\n"
                        : ""
                );
}
