using System.Text;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>Small harm done to valid input, and noise.</summary>
internal static class Mutation
{
    private static readonly byte[][] Pieces =
    [
        .. new[]
        {
            "\0",
            "\u001B[2J",
            "\u202E",
            "\u200B",
            "\uFEFF",
            "\u2028",
            "=1+1",
            "'",
            "\"",
            "\"\"",
            ",",
            ";",
            "\n",
            "\r\n",
            "\r",
            "\t",
            "<script>",
            "]]>",
            "1e308",
            "-1e308",
            "1e-400",
            "NaN",
            "Infinity",
            "-0",
            "0",
            "-1",
            "99999999999999999999",
            "79228162514264337593543950335",
            "0.0000000000000000000000000001",
            "1/0",
            "1 7/16\"",
            "36,5",
            "2026-02-30",
            "9999-12-31",
            "0001-01-01",
            "é",
            "e\u0301",
            "🔨",
            "[[[[[[[[",
            "{\"a\":{\"a\":{\"a\":",
            "\\ud800",
            "\\u0000",
            "null",
            "true",
            "width",
            "drift",
            "sound",
            "--",
            "@file",
            "../../etc/passwd",
        }.Select(Encoding.UTF8.GetBytes),
        [0xFF],
        [0xC0, 0x80],
        // half a letter as UTF-8 would have it, which it forbids
        [0xED, 0xA0, 0x80],
        [0xF0, 0x9F, 0x94],
    ];

    /// <summary>Bytes with one to three changes: seven in ten of them gentle, a letter or a digit for another.</summary>
    /// <param name="valid">Valid input.</param>
    /// <param name="chance">Which changes.</param>
    /// <returns>Other bytes, the same at times.</returns>
    public static byte[] Of(byte[] valid, Random chance)
    {
        List<byte> bytes = [.. valid];
        int many = chance.Next(10) switch
        {
            < 6 => 1,
            < 9 => 2,
            _ => 3,
        };
        for (int i = 0; i < many; i++)
        {
            if (chance.Next(10) < 7)
            {
                Exchange(bytes, chance);
            }
            else
            {
                Change(bytes, chance);
            }
        }

        return [.. bytes];
    }

    /// <summary>Text with one to three changes; half a letter may come of it.</summary>
    /// <param name="valid">Valid input.</param>
    /// <param name="chance">Which changes.</param>
    /// <returns>Other text, the same at times.</returns>
    public static string Of(string valid, Random chance)
    {
        string text = Encoding.UTF8.GetString(Of(Encoding.UTF8.GetBytes(valid), chance));
        return chance.Next(40) == 0 ? text.Insert(chance.Next(text.Length + 1), "\uD83D") : text;
    }

    /// <summary>Bytes that mean nothing.</summary>
    /// <param name="chance">Which.</param>
    /// <returns>At most 200 bytes, of letters or of anything.</returns>
    public static byte[] Noise(Random chance)
    {
        byte[] bytes = new byte[chance.Next(200)];
        chance.NextBytes(bytes);
        return chance.Next(2) == 0 ? bytes : [.. bytes.Select(each => (byte)((each % 95) + 32))];
    }

    private static void Exchange(List<byte> bytes, Random chance)
    {
        int at = chance.Next(bytes.Count + 1);
        while (at < bytes.Count && !char.IsAsciiLetterOrDigit((char)bytes[at]))
        {
            at++;
        }

        if (at < bytes.Count)
        {
            bytes[at] = char.IsAsciiDigit((char)bytes[at])
                ? (byte)('0' + chance.Next(10))
                : (byte)((bytes[at] & 0x20) | 'A' + chance.Next(26));
        }
    }

    private static void Change(List<byte> bytes, Random chance)
    {
        int at = chance.Next(bytes.Count + 1);
        int many = Math.Min(bytes.Count - at, chance.Next(1, 12));
        switch (chance.Next(6))
        {
            case 0 when at < bytes.Count:
                bytes[at] ^= (byte)(1 << chance.Next(8));
                break;
            case 1:
            case 2:
                bytes.InsertRange(at, Pieces[chance.Next(Pieces.Length)]);
                break;
            case 3:
                bytes.RemoveRange(at, many);
                break;
            case 4:
                bytes.InsertRange(chance.Next(bytes.Count + 1), bytes.GetRange(at, many));
                break;
            default:
                // a whole line twice, or gone
                Line(bytes, at, chance.Next(2) == 0);
                break;
        }
    }

    private static void Line(List<byte> bytes, int at, bool isTwice)
    {
        int start = at == 0 ? 0 : bytes.LastIndexOf((byte)'\n', Math.Min(at, bytes.Count) - 1) + 1;
        int end = bytes.IndexOf((byte)'\n', Math.Min(at, bytes.Count));
        end = end < 0 ? bytes.Count : end + 1;
        List<byte> line = bytes.GetRange(start, end - start);
        if (isTwice)
        {
            bytes.InsertRange(start, line);
        }
        else
        {
            bytes.RemoveRange(start, line.Count);
        }
    }
}
