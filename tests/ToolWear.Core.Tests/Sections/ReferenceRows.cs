using Xunit;

namespace ToolWear.Core.Tests.Sections;

/// <summary>Rows of a published set, found by walking up to the solution.</summary>
internal static class ReferenceRows
{
    /// <summary>The rows below the header, cut at commas that stand outside quotes.</summary>
    public static IReadOnlyList<string[]> Of(string file)
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ToolWear.sln")))
        {
            folder = folder.Parent;
        }

        Assert.NotNull(folder);
        string[] lines = File.ReadAllLines(Path.Combine(folder.FullName, "tests", "reference-data", file));
        string[][] rows = [.. lines.Skip(1).Where(line => line.Length > 0).Select(Cells)];
        Assert.NotEmpty(rows);
        return rows;
    }

    private static string[] Cells(string line)
    {
        List<string> cells = [""];
        bool quoted = false;
        foreach (char letter in line)
        {
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == ',' && !quoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += letter;
            }
        }

        return [.. cells];
    }
}
