using System.Text;
using System.Text.Unicode;

namespace ToolWear.Storage.Csv;

/// <summary>What the bytes of a file must be before it is read as a table.</summary>
internal static class CsvText
{
    /// <summary>The bytes behind the byte order mark, where there is one.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <returns>The text.</returns>
    public static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> bytes) =>
        bytes.Span.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;

    /// <summary>Why the bytes are no text.</summary>
    /// <param name="bytes">The file without its byte order mark.</param>
    /// <param name="line">The line of the fault, from 1.</param>
    /// <returns>A sentence, or null where they are.</returns>
    public static string? Fault(ReadOnlySpan<byte> bytes, out long line)
    {
        line = 1;
        int nul = bytes.IndexOf((byte)0);
        if (nul >= 0)
        {
            line = LineOf(bytes, nul);
            return "holds a NUL byte, so this is no text file; save the table as CSV in UTF-8";
        }

        if (!Utf8.IsValid(bytes))
        {
            int at = FirstInvalid(bytes);
            line = LineOf(bytes, at);
            return $"byte 0x{bytes[at]:X2} is not UTF-8; save the table as CSV in UTF-8";
        }

        return bytes.Trim(" \t\r\n"u8).IsEmpty ? "the file is empty; begin it with a header row" : null;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }

    private static long LineOf(ReadOnlySpan<byte> bytes, int at) => 1 + bytes[..at].Count((byte)'\n');
}
