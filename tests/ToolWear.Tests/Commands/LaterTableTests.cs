namespace ToolWear.Tests.Commands;

/// <summary>Tables that come into a shop which has tools already.</summary>
public sealed class LaterTableTests : IDisposable
{
    private readonly TestSite site = new();

    public LaterTableTests() =>
        site.Done("import", site.Write("first.csv", "tool,form,steel,size,scrap\nR1,drift,mild,13.6,12.8\n"));

    public void Dispose() => site.Dispose();

    [Fact]
    public void A_mark_that_is_there_is_refused_unless_it_is_to_be_corrected()
    {
        string table = site.Write(
            "second.csv",
            "tool;form;steel;scrap;size\nR1;drift;4140;12,5;\nR2;drift;;12,8;13,2\n"
        );
        Dictionary<string, string> before = site.Bytes();
        Assert.Contains("R1 is in the shop already", site.Refused(1, "import", table), StringComparison.Ordinal);
        Assert.Equal(before, site.Bytes());
        site.Done("import", table, "--update");
        string ledger = site.Done("ledger");
        Assert.Contains(
            "R1 corrected, steel 4140, was mild; width least 12.5, was 12.8",
            ledger,
            StringComparison.Ordinal
        );
        Assert.Contains("R2 added, drift", ledger, StringComparison.Ordinal);
        string card = site.Done("card", "R1");
        Assert.Contains("4140", card, StringComparison.Ordinal);
        Assert.Contains("scrap under 12.50 mm", card, StringComparison.Ordinal);
        // nothing is entered twice
        Assert.Contains("knows", site.Refused(1, "import", table, "--update"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_brought_a_second_time_enters_nothing_twice()
    {
        string table = site.Write("read.csv", "tool,on,size\nR1,2026-11-01,13.5\n");
        site.Done("import", table);
        Dictionary<string, string> before = site.Bytes();
        Assert.Contains("knows", site.Refused(1, "import", table), StringComparison.Ordinal);
        Assert.Equal(before, site.Bytes());
    }

    [Fact]
    public void Heats_and_readings_of_past_years_come_in_by_their_days()
    {
        site.Done("import", site.Write("heats.csv", "tool,date,heats\nR1,1.3.2025,18\nR1,1.3.2025,6\nR1,8.3.2025,4\n"));
        site.Done("import", site.Write("read.csv", "tool,date,size\nR1,9.3.2025,\"13,7\"\nR1,28.2.2025,\"13,9\"\n"));
        List<List<string>> history = CsvCells.Of(site.Done("export-history", "-"));
        Assert.Equal(
            ["2025-02-28 0 13.9", "2025-03-09 28 13.7", "2026-11-12 28 13.6"],
            history.Skip(1).Where(row => row[1] == "width").Select(row => $"{row[9]} {row[10]} {row[11]}")
        );
        Assert.Equal(2, CsvCells.Of(Exported("sessions.csv")).Count - 1);
    }

    [Fact]
    public void An_empty_table_filled_in_is_taken_in_either_unit_and_with_either_separator()
    {
        foreach ((string units, string size) in new[] { ("mm", "13,6"), ("in", "0,535") })
        {
            using TestSite other = new();
            string table = other.Done("template", "tools", "--units", units, "--semicolon");
            int columns = table.Split('\n')[^2].Split(';').Length;
            string row = string.Join(
                ';',
                ["R1", "drift", "H", "rough", "", "4140", "", "", size, .. new string[columns - 9]]
            );
            other.Done("import", other.Write("mine.csv", table + row + "\r\n"));
            Assert.Contains("R1", other.Done("rack", "--as", "csv"), StringComparison.Ordinal);
            Assert.Contains(units == "mm" ? "13.60" : "13.59", other.Done("card", "R1"), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("tools")]
    [InlineData("readings")]
    [InlineData("heats")]
    [InlineData("bars")]
    [InlineData("orders")]
    public void The_examples_of_an_empty_table_are_no_rows_and_its_headings_are_known(string kind)
    {
        string table = site.Write("t.csv", site.Done("template", kind));
        string said = site.Run("import", table, "--try").Output;
        Assert.Contains($"a table of {kind}, 0 rows", said, StringComparison.Ordinal);
        Assert.Contains("no row below the headings", said, StringComparison.Ordinal);
        Assert.DoesNotContain("no such column", said, StringComparison.Ordinal);
    }

    private string Exported(string file)
    {
        site.Done("export", site.In("out"));
        return File.ReadAllText(site.In("out/" + file));
    }
}
