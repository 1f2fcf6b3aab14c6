using System.Text;

namespace ToolWear.Tests.Commands;

/// <summary>Reads CSV in the plainest way, apart from the program's own reader (RFC 4180).</summary>
internal static class CsvCells
{
    public static List<List<string>> Of(string text)
    {
        List<List<string>> rows =
        [
            [],
        ];
        StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && c is ',' or '\n')
            {
                rows[^1].Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                if (c == '\n')
                {
                    rows.Add([]);
                }
            }
            else
            {
                cell.Append(c);
            }
        }

        return [.. rows.Where(row => row.Count > 0)];
    }
}
