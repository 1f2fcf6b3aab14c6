using System.Globalization;
using System.Text;
using ToolWear.Wording;

namespace ToolWear.Tests.Commands;

public sealed class ImportExportTests
{
    [Fact]
    public void Seed_data_imported_exported_imported_and_exported_again_is_the_same_byte_for_byte()
    {
        using TestSite first = new();
        using TestSite second = new();
        first.Done("import", SeedData());
        first.Done("export", first.In("out"));
        second.Done("import", first.In("out"));
        second.Done("export", second.In("out"));

        string[] files = [.. Directory.GetFiles(first.In("out")).Select(path => Path.GetFileName(path)).Order()];
        Assert.Equal(files, Directory.GetFiles(second.In("out")).Select(path => Path.GetFileName(path)).Order());
        // 18 tables, and the list of them
        Assert.Equal(19, files.Length);
        Assert.All(
            files,
            file =>
                Assert.Equal(File.ReadAllBytes(first.In("out/" + file)), File.ReadAllBytes(second.In("out/" + file)))
        );
        Assert.Equal(first.Done("forecast", "--as", "csv"), second.Done("forecast", "--as", "csv"));
    }

    [Fact]
    public void Twenty_five_tools_in_use_come_in_by_one_table_in_one_call_and_say_what_is_not_known()
    {
        using TestSite site = new();
        StringBuilder table = new("tool,form,eye,place,steel,size_mm,scrap_mm,heats_before,heats_before_how\n");
        for (int i = 1; i <= 25; i++)
        {
            string before = i % 3 == 0 ? "30,estimated" : ",unknown";
            table.Append(
                CultureInfo.InvariantCulture,
                $"R{i},drift,H,rough,{(i % 2 == 0 ? "4140" : "")},{14 - (i / 100.0)},12.8,{before}\n"
            );
        }

        Assert.Contains(
            "25 tools",
            site.Done("import", site.Write("mine.csv", table.ToString())),
            StringComparison.Ordinal
        );

        string text = site.Done("forecast", "--wide");
        List<List<string>> rows = CsvCells.Of(site.Done("forecast", "--as", "csv"));
        Assert.Equal(25, rows.Count(row => row[3] == "width"));
        // nobody said how long such a tool lasts, and no limit on the whole length was set
        Assert.Equal(25, Occurrences(text, "60 heats (assumed)"));
        Assert.Equal(25, Occurrences(text, "no size is set at which it is worn out"));
        string card = site.Done("card", "R1");
        Assert.Contains("nobody knows for how many heats", card, StringComparison.Ordinal);
        Assert.Contains("30 heats before these records (estimated)", site.Done("card", "R3"), StringComparison.Ordinal);
        Assert.Contains(Words.NotFollowed[..40], card, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_goes_into_an_empty_store_only()
    {
        using TestSite site = new();
        site.Done("add-tool", "R1", "--form", "drift");
        Dictionary<string, string> before = site.Bytes();
        Ran ran = site.Run("import", SeedData());
        Assert.Equal(1, ran.Exit);
        Assert.Contains("empty store", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, site.Bytes());
    }

    [Fact]
    public void The_demo_moves_its_days_so_that_the_last_session_lies_one_to_seven_days_back()
    {
        for (int day = 1; day <= 9; day++)
        {
            using TestSite site = new($"2027-03-0{day}");
            site.Demo();
            site.Done("export", site.In("out"));
            DateOnly last = CsvCells
                .Of(File.ReadAllText(site.In("out/sessions.csv")))
                .Skip(1)
                .Max(row => DateOnly.Parse(row[2], CultureInfo.InvariantCulture));
            Assert.InRange(new DateOnly(2027, 3, day).DayNumber - last.DayNumber, 1, 7);
            Assert.Equal(DayOfWeek.Friday, last.DayOfWeek);
        }
    }

    private static int Occurrences(string text, string part) => text.Split(part).Length - 1;

    private static string SeedData() => Path.Combine(Repository.Folder, "seed-data");
}
