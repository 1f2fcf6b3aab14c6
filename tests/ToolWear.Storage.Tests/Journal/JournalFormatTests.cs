using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Journal;

public sealed class JournalFormatTests
{
    private const string Path = "/shop/v1.journal";

    /// <summary>Written by hand with the CRC-32 of zlib, not by this program: it must read for ever.</summary>
    private static byte[] Sample([CallerFilePath] string here = "") =>
        File.ReadAllBytes(
            System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here) ?? "", "..", "samples", "v1.journal")
        );

    [Fact]
    public void The_sample_of_version_1_reads_for_ever()
    {
        (List<JournalLine> lines, JournalReader reader) = Read(Sample());
        Assert.Equal(JournalEnd.Whole, reader.End);
        Assert.Equal("00112233445566778899aabbccddeeff", reader.Shop);
        Assert.Equal(4, reader.LastSeq);
        Assert.Equal(
            [
                Line(1, "2026-11-24T22:42:46.123Z", 24, 0x1aa3abd1, """{"kind":"heats","v":1,"tool":"R3","heats":4}"""),
                Line(
                    2,
                    "2026-11-24T22:43:00.000Z",
                    24,
                    0x39d30c68,
                    """{"kind":"heats","v":1,"tool":"R3","heats":0.5}""",
                    """{"kind":"note","v":1,"text":"Größe \"36,5\"\nzweite Zeile 🔨"}"""
                ),
                Line(
                    4,
                    "2026-11-25T06:01:02.999Z",
                    25,
                    0xa7cc41f5,
                    """{"v":2,"by":{"kind":"inner","v":9},"kind":"heats","list":[1,[2,{"v":7}]],"tool":"R4","heats":3}"""
                ),
            ],
            lines
        );
    }

    [Fact]
    public void The_same_entries_are_written_as_the_same_bytes()
    {
        (List<JournalLine> lines, JournalReader reader) = Read(Sample());
        (byte[] bytes, uint crc) = JournalFormat.FirstLine(reader.Shop);
        var written = new List<byte>(bytes);
        foreach (JournalLine line in lines)
        {
            (bytes, crc) = JournalFormat.Line(crc, line.Seq, line.At, line.Day, line.Bodies);
            Assert.Equal(line.Crc, crc);
            written.AddRange(bytes);
        }
        Assert.Equal(Sample(), written);
    }

    [Fact]
    public void Every_flipped_bit_is_found_or_harmless()
    {
        byte[] sample = Sample();
        (List<JournalLine> whole, _) = Read(sample);
        int found = 0;
        int kept = 0;
        for (int bit = 0; bit < sample.Length * 8; bit++)
        {
            byte[] rotten = [.. sample];
            rotten[bit / 8] ^= (byte)(1 << (bit % 8));
            try
            {
                (List<JournalLine> lines, JournalReader reader) = Read(rotten);
                if (reader.End == JournalEnd.Unended)
                {
                    lines.Add(reader.TakeUnended());
                }
                Assert.Equal(whole, lines);
                kept++;
            }
            catch (DamagedJournalException e)
            {
                Assert.InRange(e.Line, 1, 5);
                Assert.Contains($"Line {e.Line} of", e.Message, StringComparison.Ordinal);
                found++;
            }
        }
        // only the line end of the last line can change without a loss
        Assert.Equal(8, kept);
        Assert.Equal((sample.Length * 8) - 8, found);
    }

    [Fact]
    public void A_line_lost_doubled_or_moved_is_found()
    {
        string[] lines = Encoding.UTF8.GetString(Sample()).TrimEnd('\n').Split('\n');
        Assert.Throws<DamagedJournalException>(() => Read(Joined(lines[0], lines[2], lines[3])));
        Assert.Throws<DamagedJournalException>(() => Read(Joined(lines[0], lines[1], lines[1], lines[2])));
        Assert.Throws<DamagedJournalException>(() => Read(Joined(lines[0], lines[2], lines[1], lines[3])));
        DamagedJournalException empty = Assert.Throws<DamagedJournalException>(() => Read([]));
        Assert.Equal(1, empty.Line);
    }

    [Fact]
    public void Cut_anywhere_behind_the_first_line_it_reads_up_to_a_whole_line()
    {
        byte[] sample = Sample();
        (List<JournalLine> whole, _) = Read(sample);
        int first = Array.IndexOf(sample, (byte)'\n') + 1;
        for (int length = first; length < sample.Length; length++)
        {
            (List<JournalLine> lines, JournalReader reader) = Read(sample[..length]);
            Assert.Equal(whole.Take(lines.Count), lines);
            Assert.Equal(reader.WholeLength == length, reader.End == JournalEnd.Whole);
        }
    }

    [Theory]
    [InlineData("""{"toolwear":"journal","format":2,"shop":"00112233445566778899aabbccddeeff"}""", 1)]
    [InlineData("""{"toolwear":"journal","format":17,"how":"otherwise"}""", 1)]
    public void A_newer_format_is_said_to_be_newer(string first, int line)
    {
        uint crc = JournalFormat.Chain(0, Encoding.UTF8.GetBytes(first));
        NewerJournalException e = Assert.Throws<NewerJournalException>(() => Read(Joined($"{first}\t{crc:x8}")));
        Assert.Equal(line, e.Line);
        Assert.Contains("newer ToolWear", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"kind":"heats","v":3}""")]
    [InlineData("""{"kind":"hologram","v":1}""")]
    public void A_newer_entry_is_said_to_be_newer_and_not_damaged(string body)
    {
        (byte[] first, uint crc) = JournalFormat.FirstLine(TestShop.Id);
        byte[] line = JournalFormat.Line(crc, 1, default, TestShop.Day, [body]).Bytes;
        NewerJournalException e = Assert.Throws<NewerJournalException>(() => Read([.. first, .. line]));
        Assert.Equal(2, e.Line);
    }

    [Theory]
    // zeros from sector to sector are what the power left unwritten; anything else is rot
    [InlineData(600, 0, 424, true)]
    [InlineData(512, 0, 512, true)]
    [InlineData(0, 512, 512, true)]
    [InlineData(0, 512, 1024, true)]
    [InlineData(0, 100, 412, false)]
    [InlineData(0, 512, 511, false)]
    [InlineData(0, 700, 900, false)]
    public void A_hole_runs_from_sector_to_sector(int lineStart, int from, int zeros, bool isHole)
    {
        byte[] line = Encoding.ASCII.GetBytes(new string('x', 1600));
        line.AsSpan(from, zeros).Clear();
        Assert.Equal(isHole, JournalReader.HasHole(line, lineStart));
        // a zero that is no hole hides none behind it
        line[1590] = 0;
        Assert.Equal(isHole, JournalReader.HasHole(line, lineStart));
        line.AsSpan(1595).Clear();
        Assert.Equal(isHole, JournalReader.HasHole(line, lineStart));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("{}")]
    [InlineData("[7]")]
    [InlineData("[{}]")]
    [InlineData("[{\"kind\":7,\"v\":1}]")]
    [InlineData("[{\"kind\":\"\",\"v\":1}]")]
    [InlineData("[{\"kind\":\"heats\",\"v\":\"1\"}]")]
    [InlineData("[{\"kind\":\"heats\",\"v\":0.5}]")]
    [InlineData("[{\"kind\":\"heats\",\"v\":0}]")]
    [InlineData("[{\"kind\":\"heats\",\"v\":99999999999}]")]
    [InlineData("[{\"kind\":[1,{}],\"v\":{\"v\":1}}]")]
    [InlineData("[{\"kind\":\"heats\",\"v\":1}")]
    [InlineData("[{\"kind\":\"heats\"")]
    [InlineData("")]
    public void A_line_whose_entries_are_none_is_damage_though_its_checksum_is_right(string entries)
    {
        (byte[] first, uint crc) = JournalFormat.FirstLine(TestShop.Id);
        string content =
            "{\"seq\":1,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"entries\":" + entries + "}";
        Assert.Equal(2, Assert.Throws<DamagedJournalException>(() => Read([.. first, .. Tailed(crc, content)])).Line);
    }

    [Theory]
    [InlineData("{\"seq\":1,")]
    [InlineData("{\"seq\":x,\"at\"")]
    [InlineData(
        "{\"seq\":2,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"entries\":[{\"kind\":\"heats\",\"v\":1}]}"
    )]
    [InlineData(
        "{\"seq\":1,\"at\":\"2026-11-24T22:42:46Z\",\"day\":\"2026-11-24\",\"entries\":[{\"kind\":\"heats\",\"v\":1}]}"
    )]
    [InlineData(
        "{\"seq\":1,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-02-30\",\"entries\":[{\"kind\":\"heats\",\"v\":1}]}"
    )]
    [InlineData(
        "{\"seq\":1,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"bodies\":[{\"kind\":\"heats\",\"v\":1}]}"
    )]
    [InlineData("{\"seq\":1,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"entries\":")]
    public void A_line_that_is_written_otherwise_is_damage_though_its_checksum_is_right(string content)
    {
        (byte[] first, uint crc) = JournalFormat.FirstLine(TestShop.Id);
        Assert.Equal(2, Assert.Throws<DamagedJournalException>(() => Read([.. first, .. Tailed(crc, content)])).Line);
    }

    private static byte[] Tailed(uint before, string content) =>
        Encoding.UTF8.GetBytes($"{content}\t{JournalFormat.Chain(before, Encoding.UTF8.GetBytes(content)):x8}\n");

    [Fact]
    public void Lines_longer_than_the_buffer_are_read()
    {
        (byte[] first, uint crc) = JournalFormat.FirstLine(TestShop.Id);
        ImmutableArray<string> bodies = [.. Enumerable.Range(0, 40).Select(_ => TestShop.Note(60_000))];
        byte[] line = JournalFormat.Line(crc, 1, default, TestShop.Day, bodies).Bytes;
        (List<JournalLine> lines, _) = Read([.. first, .. line]);
        Assert.Equal(bodies, lines[0].Bodies, StringComparer.Ordinal);
    }

    private static (List<JournalLine> Lines, JournalReader Reader) Read(byte[] bytes)
    {
        var disk = new CrashingDisk();
        disk.Put(Path, bytes);
        using IDiskFile file = disk.OpenToRead(Path);
        var reader = new JournalReader(file, Path, TestShop.Kinds);
        var lines = new List<JournalLine>();
        while (reader.Next() is { } line)
        {
            lines.Add(line);
        }
        return (lines, reader);
    }

    private static byte[] Joined(params string[] lines) => Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n");

    private static JournalLine Line(long seq, string at, int day, uint crc, params ImmutableArray<string> bodies) =>
        new(seq, DateTimeOffset.Parse(at), new DateOnly(2026, 11, day), [.. bodies], crc);
}
