using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Entries;
using ToolWear.Testing;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Storage.Tests.Entries;

/// <summary>The shortcut gives what the reader of JSON gives, or nothing.</summary>
public sealed class CommonEntriesTests
{
    private const string Heats =
        """{"kind":"heats-worked","v":1,"entry":{"session":"s","tool":"R3","work":"cheeks","heats":1.5,"how":"counted"}}""";

    private const string Measured =
        """{"kind":"tool-measured","v":1,"entry":{"tool":"R3","gauge":"width","on":"2026-11-24","session":"s","size":13.05,"resolution":0.05,"by":"A. Smith"}}""";

    private const string LookedOver =
        """{"kind":"tool-looked-over","v":1,"entry":{"tool":"R3","on":"2026-11-24","finding":"sound"}}""";

    [Fact]
    public void An_entry_it_gives_is_the_one_that_the_reader_of_json_gives()
    {
        int given = 0;
        foreach (Type kind in EntryGens.Wide.ByKind.Keys)
        {
            foreach (
                LedgerEntry entry in Fixed
                    .Samples(EntryGens.Wide.ByKind[kind], 200)
                    .Concat(Fixed.Samples(EntryGens.Narrow.ByKind[kind], 200))
            )
            {
                byte[] body = Encoding.UTF8.GetBytes(EntryFormat.Write(entry));
                if (CommonEntries.TryRead(body) is { } read)
                {
                    given++;
                    Assert.Equal(Told.Of(EntryFormat.ReadJson(body)), Told.Of(read));
                }
            }
        }

        Assert.True(given > 200, $"{given}");
    }

    [Theory]
    [InlineData(Heats)]
    [InlineData(Measured)]
    [InlineData(LookedOver)]
    public void It_gives_what_is_written_as_programs_write_it(string body) =>
        Assert.Equal(
            EntryFormat.ReadJson(Encoding.UTF8.GetBytes(body)),
            CommonEntries.TryRead(Encoding.UTF8.GetBytes(body))
        );

    [Theory]
    [InlineData(Heats)]
    [InlineData(Measured)]
    [InlineData(LookedOver)]
    public void With_any_byte_changed_left_out_or_doubled_it_gives_the_same_or_nothing(string body)
    {
        byte[] right = Encoding.UTF8.GetBytes(body);
        byte[] others = Encoding.UTF8.GetBytes("\"\\{}[],:.-+eE0159az \n\u0001\u007F\u00E9");
        for (int i = 0; i < right.Length; i++)
        {
            SameOrNothing([.. right[..i], .. right[(i + 1)..]]);
            foreach (byte other in others)
            {
                SameOrNothing([.. right[..i], other, .. right[(i + 1)..]]);
                SameOrNothing([.. right[..i], other, .. right[i..]]);
            }
        }
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0.5")]
    [InlineData("1.0")]
    [InlineData("01")]
    [InlineData("00.5")]
    [InlineData("1.")]
    [InlineData(".5")]
    [InlineData("1.25")]
    [InlineData("1e1")]
    [InlineData("-1")]
    [InlineData("999999999")]
    [InlineData("9999999999")]
    [InlineData("0.000001")]
    [InlineData("0.0000001")]
    [InlineData("99999999.5")]
    public void Numbers_are_what_the_reader_of_json_takes_them_for(string number)
    {
        SameOrNothing(Encoding.UTF8.GetBytes(Heats.Replace("1.5", number, StringComparison.Ordinal)));
        SameOrNothing(Encoding.UTF8.GetBytes(Measured.Replace("13.05", number, StringComparison.Ordinal)));
    }

    private static void SameOrNothing(byte[] body)
    {
        LedgerEntry? read = null;
        Exception? refused = Record.Exception(() => read = CommonEntries.TryRead(body));
        if (refused is not null || read is not null)
        {
            LedgerEntry? json = null;
            Exception? byJson = Record.Exception(() => json = EntryFormat.ReadJson(body));
            Assert.Equal(refused?.GetType(), byJson?.GetType());
            Assert.Equal(json, read);
        }
    }
}
