using System.Globalization;
using System.Text.Json;

namespace ToolWear.Core.Tests.Wear;

/// <summary>The published and computed sets in tests/reference-data, each with its source beside it.</summary>
internal static class Published
{
    private static readonly string Folder = Path.Combine(Root(), "tests", "reference-data");

    internal static List<Row> Rows(string file)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, file));
        string[] names = lines[0].Split(',');
        return
        [
            .. lines
                .Skip(1)
                .Where(line => line.Length > 0)
                .Select(line => new Row(
                    names
                        .Zip(line.Split(','))
                        .ToDictionary(cell => cell.First, cell => cell.Second, StringComparer.Ordinal)
                )),
        ];
    }

    internal static JsonElement Json(string file)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, file)));
        return document.RootElement.Clone();
    }

    /// <summary>One line of expected.csv.</summary>
    internal static double Expected(string set, string quantity)
    {
        Row row = Rows("expected.csv").Single(row => row["case"] == set && row["quantity"] == quantity);
        return row.Number("value");
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ToolWear.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("no folder above the tests holds ToolWear.sln");
    }
}

internal sealed class Row(Dictionary<string, string> cells)
{
    internal string this[string name] => cells[name];

    internal bool Has(string name) => cells.TryGetValue(name, out string? cell) && cell.Length > 0 && cell != "NA";

    internal double Number(string name) => double.Parse(cells[name], CultureInfo.InvariantCulture);
}
