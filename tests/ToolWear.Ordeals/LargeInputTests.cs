using System.Collections.Immutable;
using System.Text;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Ordeals.Fuzz;
using ToolWear.Storage.Csv;
using ToolWear.Storage.HandMade;

namespace ToolWear.Ordeals;

/// <summary>Input that is far too large, too deep or no number: refused in a sentence, soon and whole.</summary>
public sealed class LargeInputTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    public static TheoryData<string, string> Tables =>
        new()
        {
            { "a cell of 10 MB", "tool,form,size_mm,note\nR1,drift,14," + new string('n', 10_000_000) + "\n" },
            {
                "a quoted cell of 10 MB",
                "tool,form,size_mm,note\nR1,drift,14,\"n" + new string('\n', 10_000_000) + "n\"\n"
            },
            { "a cell that is never closed", "tool,form,size_mm,note\nR1,drift,14,\"" + new string('n', 10_000_000) },
            { "a million columns", string.Join(',', Enumerable.Repeat("tool", 1_000_000)) + "\n" },
            { "a million unknown columns", string.Join(',', Enumerable.Range(0, 1_000_000)) + "\n" },
            { "a million cells", "tool,form,size_mm\n" + new string(',', 1_000_000) + "\n" },
            { "a million rows", "tool,form,size_mm\n" + string.Concat(Enumerable.Repeat("R1,drift,14\n", 1_000_000)) },
            {
                "a mark of 10 000 combining marks",
                "tool,form,size_mm\nR" + new string('\u0301', 10_000) + ",drift,14\n"
            },
        };

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_that_is_far_too_large_is_refused_in_short_sentences(string what, string table)
    {
        ImmutableArray<RowRemark> faults = Faults(Table(table));
        Assert.NotEmpty(what);
        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.InRange(fault.ToString().Length, 10, 500));
    }

    [Theory]
    [InlineData("1e308")]
    [InlineData("-1e308")]
    [InlineData("1e999")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-Infinity")]
    [InlineData("0x10")]
    [InlineData("1,5")]
    [InlineData("79228162514264337593543950335")]
    public void What_is_no_number_of_a_forge_is_refused_in_every_column_of_numbers(string number)
    {
        string cell = number.Contains(',', StringComparison.Ordinal) ? $"\"{number}\"" : number;
        Refused(
            PlainTables.Readings(
                Table($"kind,group,tool,segment,start_mm,heats,wear_mm\nk,g,t,{cell},{cell},{cell},{cell}\n")
            ),
            4
        );
        Refused(
            PlainTables.Tools(
                Table(
                    $"kind,group,tool,limit_mm,resolution_mm,guess_heats,heats_now\nk,g,t,{cell},{cell},{cell},{cell}\n"
                )
            ),
            4
        );
        Refused(PlainTables.Lifetimes(Table($"tool,heats,failed,from_heats\nA,{cell},{cell},{cell}\n")), 3);
        Refused(
            PlainTables.Stations(
                Table(
                    $"from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\n{cell},rectangle,{cell},{cell},{cell},\n"
                )
            ),
            4
        );
        string mine =
            $"tool,form,size_mm,scrap_mm,made_mm,heats_before,guess_heats\nR1,drift,{cell},{cell},{cell},{cell},{cell}\n";
        // a person's table may have a decimal comma
        Assert.True(number == "1,5" || Faults(Table(mine)).Length >= 5);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(2000)]
    [InlineData(200_000)]
    public void Deep_JSON_in_a_journal_is_refused_civilly(int depth)
    {
        string deep = string.Concat(Enumerable.Repeat("{\"a\":", depth)) + "1" + new string('}', depth);
        byte[] journal = JournalTarget.Chained(
            Encoding.UTF8.GetBytes(
                "{\"toolwear\":\"journal\",\"format\":1,\"shop\":\"00112233445566778899aabbccddeeff\"}\n"
                    + "{\"seq\":1,\"at\":\"2026-11-24T22:42:46.123Z\",\"day\":\"2026-11-24\",\"entries\":[{\"kind\":\"tool-added\","
                    + $"\"v\":1,\"entry\":{deep}}}]}}\n"
            )
        );
        Assert.InRange(JournalTarget.Refusal(journal)?.Length ?? 0, 20, 600);
    }

    private static ImmutableArray<RowRemark> Faults(CsvFile file)
    {
        HandMadeTable read = HandMadeTable.Read(file);
        return read.Table is { } table && read.Faults.IsEmpty
            ? Core.Deeds.Bringing.Tables.Read(table, Shop.Empty, LengthUnit.Mm, Today, new()).Faults
            : read.Faults;
    }

    private static CsvFile Table(string text) => new("t.csv", Encoding.UTF8.GetBytes(text));

    private static void Refused<T>(TableRead<T> read, int columns)
    {
        Assert.Empty(read.Rows);
        Assert.Equal(columns, read.Faults.Select(fault => fault.Column).Distinct().Count());
    }
}
