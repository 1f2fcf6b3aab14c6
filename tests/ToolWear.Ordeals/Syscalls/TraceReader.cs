using System.Globalization;
using System.Text;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>Reads what "strace -f -xx" wrote: calls in the order in which they ended.</summary>
internal static class TraceReader
{
    private const string Unfinished = " <unfinished ...>";
    private const string Resumed = " resumed>";

    /// <summary>Reads the lines of a record.</summary>
    /// <param name="lines">The lines.</param>
    /// <returns>The calls that returned.</returns>
    public static IReadOnlyList<Call> Read(IEnumerable<string> lines)
    {
        List<Call> calls = [];
        Dictionary<string, (string Text, int Begun)> open = [];
        Dictionary<(string Thread, string Name), int> ordinals = [];
        foreach (string line in lines)
        {
            int space = line.IndexOf(' ', StringComparison.Ordinal);
            (string thread, string text) = (line[..space], line[space..].TrimStart());
            if (text.EndsWith(Unfinished, StringComparison.Ordinal))
            {
                open[thread] = (text[..^Unfinished.Length], calls.Count);
                continue;
            }

            int begun = calls.Count;
            if (text.StartsWith("<...", StringComparison.Ordinal))
            {
                int end = text.IndexOf(Resumed, StringComparison.Ordinal) + Resumed.Length;
                (string first, begun) = open[thread];
                text = first + text[end..];
            }

            int bracket = text.IndexOf('(', StringComparison.Ordinal);
            int equals = text.LastIndexOf(" = ", StringComparison.Ordinal);
            if (bracket < 0 || equals < 0)
            {
                continue;
            }

            string name = text[..bracket];
            int ordinal = ordinals[(thread, name)] = ordinals.GetValueOrDefault((thread, name)) + 1;
            string result = text[(equals + 3)..];
            if (result[0] != '?')
            {
                int close = text.LastIndexOf(')', equals);
                calls.Add(CallOf(name, text[(bracket + 1)..close], result, begun, ordinal));
            }
        }

        return calls;
    }

    private static Call CallOf(string name, string arguments, string result, int begun, int ordinal)
    {
        using MemoryStream data = new();
        List<string> all = [];
        // "-xx" writes every letter of a string as \xNN, so that no string holds a comma or a quote
        foreach (string argument in arguments.Split(", "))
        {
            int from = argument.IndexOf('"', StringComparison.Ordinal);
            if (from < 0)
            {
                all.Add(argument);
                continue;
            }

            string hex = argument[(from + 1)..argument.LastIndexOf('"')].Replace("\\x", "", StringComparison.Ordinal);
            byte[] bytes = Convert.FromHexString(hex);
            data.Write(bytes);
            all.Add(name.Contains("write", StringComparison.Ordinal) ? "" : Encoding.UTF8.GetString(bytes));
        }

        string number = result.Split(' ')[0];
        long value = number.StartsWith("0x", StringComparison.Ordinal)
            ? long.Parse(number[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture)
            : long.Parse(number, CultureInfo.InvariantCulture);
        bool isInjected = result.Contains("(INJECTED)", StringComparison.Ordinal);
        return new Call(name, all, data.ToArray(), value, begun, ordinal, isInjected);
    }
}
