using ToolWear.Core.Sections;
using ToolWear.Storage.Csv;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

public sealed class PlainTablesTests
{
    private const string ReadingsHeader = "kind,group,tool,segment,start_mm,heats,wear_mm\n";
    private const string ToolsHeader = "kind,group,tool,limit_mm,resolution_mm,guess_heats,heats_now\n";

    [Fact]
    public void Readings_keep_their_lines_and_may_be_negative_or_only_begin_a_segment()
    {
        TableRead<WearReadingRow> read = PlainTables.Readings(
            Table(ReadingsHeader + "K1,G1,D2,1,0,3,-0.05\n\nK1,G1,D1,2,0.2,,\n")
        );
        Assert.Empty(read.Faults);
        Assert.Equal(
            [new(2, "K1", "G1", "D2", 1, 0, 3, -0.05), new(4, "K1", "G1", "D1", 2, 0.2, null, null)],
            read.Rows
        );
    }

    [Theory]
    [InlineData("K,G,D,1,0,3,NaN", "wear_mm: \"NaN\" is no number; write it bare with a point, such as 0.25")]
    [InlineData("K,G,D,1,0,3,inf", "wear_mm: \"inf\" is no number; write it bare with a point, such as 0.25")]
    [InlineData("K,G,D,1,0,3,1e308", "wear_mm: \"1e308\" is no number; write it bare with a point, such as 0.25")]
    [InlineData("K,G,D,1,0,3,20000", "wear_mm: 20000 lies outside; a number from -10000 to 10000")]
    [InlineData("K,G,D,1,0,-3,0.1", "heats: -3 lies outside; a number from 0 to 1000000")]
    [InlineData("K,G,D,1,0,\"1,5\",0.1", "heats: \"1,5\" is no number; write it bare with a point, such as 0.25")]
    [InlineData("K,G,D,1.5,0,3,0.1", "segment: \"1.5\" is no count; write a bare whole number from 0, such as 12")]
    [InlineData("K,G,,1,0,3,0.1", "tool: the cell is empty and cannot be left out")]
    [InlineData("K,G,D,1,0,3,", "wear_mm: heats and wear_mm go together; a row that only begins a segment has neither")]
    public void A_bad_reading_is_told_at_its_cell(string row, string fault)
    {
        TableRead<WearReadingRow> read = PlainTables.Readings(Table(ReadingsHeader + row + "\n"));
        Assert.Equal("t.csv:2: " + fault, Assert.Single(read.Faults).ToString());
        Assert.Empty(read.Rows);
    }

    [Fact]
    public void Tools_may_lack_a_resolution_and_a_guess_but_stand_once_in_their_kind_and_group()
    {
        TableRead<WearToolRow> read = PlainTables.Tools(
            Table(ToolsHeader + "K1,G1,D1,0.8,0.396875,60,50\nK2,G1,D1,,,,0\n")
        );
        Assert.Equal(
            [new(2, "K1", "G1", "D1", 0.8, 0.396875, 60, 50), new(3, "K2", "G1", "D1", null, null, null, 0)],
            read.Rows
        );
        Assert.Equal(
            "t.csv:3: tool: D1 of this kind and group stands here already; once is right",
            Assert.Single(PlainTables.Tools(Table(ToolsHeader + "K,G,D1,1,,,0\nK,G,D1,1,,,0\n")).Faults).ToString()
        );
        Assert.Equal(
            "t.csv:2: limit_mm: 0 lies outside; a number above 0 to 10000",
            Assert.Single(PlainTables.Tools(Table(ToolsHeader + "K,G,D1,0,,,0\n")).Faults).ToString()
        );
    }

    [Fact]
    public void Lifetimes_end_or_go_on_and_may_begin_late()
    {
        Assert.Equal(
            [new(2, "X1", 22, true, 0), new(3, "X2", 41, false, 0)],
            PlainTables.Lifetimes(Table("tool,heats,failed\nX1,22,1\nX2,41,0\n")).Rows
        );
        Assert.Equal(
            new(2, "X1", 22, true, 8.5),
            Assert.Single(PlainTables.Lifetimes(Table("tool,heats,failed,from_heats\nX1,22,1,8.5\n")).Rows)
        );
    }

    [Theory]
    [InlineData("X1,22,2,", "failed: 2 is neither 1 (it failed) nor 0 (it still works or was taken out)")]
    [InlineData("X1,22,1,22", "from_heats: 22 is not below heats 22; a tool is watched from before its end")]
    [InlineData("X1,,1,", "heats: the cell is empty and cannot be left out")]
    [InlineData("X1,0,1,", "heats: 0 lies outside; a number above 0 to 1000000")]
    public void A_bad_lifetime_is_told_at_its_cell(string row, string fault) =>
        Assert.Equal(
            "t.csv:2: " + fault,
            Assert.Single(PlainTables.Lifetimes(Table("tool,heats,failed,from_heats\n" + row + "\n")).Faults).ToString()
        );

    [Fact]
    public void Stations_run_from_the_mark_outwards()
    {
        const string Header = "from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\n";
        Assert.Equal(
            [
                new(2, ShopInHand.Mm(0), ShopInHand.Section(SectionKind.Round, 9, 9, 0)),
                new(3, ShopInHand.Mm(70.5m), ShopInHand.Section(SectionKind.Teardrop, 36.8m, 17.6m, 3.2m)),
            ],
            PlainTables.Stations(Table(Header + "0,round,9,,,\n70.5,teardrop,36.8,,3.2,8.8\n")).Rows
        );
        Assert.Equal(
            "t.csv:3: from_mark_mm: 5 mm follows 5 mm; stations run from the shank mark outwards",
            Assert.Single(PlainTables.Stations(Table(Header + "5,round,9,,,\n5,round,9,,,\n")).Faults).ToString()
        );
    }

    [Fact]
    public void A_table_is_written_with_numbers_in_full_and_text_that_is_no_formula()
    {
        string text = CsvTable.ToText(
            ["tool", "wear_mm", "left", "why"],
            [
                [CsvCell.Text("=R1"), CsvCell.Number(-0.1 - 0.2), CsvCell.Number(null), CsvCell.Text("a,\"b\"\nc")],
                [CsvCell.Text("-"), CsvCell.Number(1e-7), CsvCell.Count(-3), CsvCell.Text("\0\u001B[31m")],
            ]
        );
        Assert.Equal(
            "tool,wear_mm,left,why\r\n'=R1,-0.30000000000000004,,\"a,\"\"b\"\"\nc\"\r\n'-,1E-07,-3,\uFFFD\u001B[31m\r\n",
            text
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => CsvCell.Number(double.NaN));
    }

    private static CsvFile Table(string text) => RoundTrip.File("t.csv", text);
}
