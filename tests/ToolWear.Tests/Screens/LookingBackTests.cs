using System.Text;
using ToolWear.Results;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The year by keys.</summary>
public sealed class LookingBackTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_year(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        StringBuilder record = new();
        using (BareScreens screens = new(site, width, height))
        {
            screens.Press("v");
            screens.Wait();
            record.Append($"== this year\n{screens.Text}\n");
            screens.Press("PageDown");
            record.Append($"== a page further\n{screens.Text}\n");
        }

        // a session of the year before, remembered late: now there are two years
        site.Done("open-session", "--store", site.Store, "--on", "2025-12-30");
        site.Done("close-session", "--heads", "2", "--store", site.Store);
        using BareScreens later = new(site, width, height);
        later.Press("v");
        later.Wait();
        later.Press("Left");
        record.Append($"== the year before\n{later.Text}\n");
        Assert.Contains("Year 2025", later.Text, StringComparison.Ordinal);
        later.Press("Left", "Right");
        Assert.Contains("Year 2026", later.Text, StringComparison.Ordinal);
        Golden.Same($"screens/year.{width}x{height}.txt", record.ToString());
    }

    [Fact]
    public void Every_figure_of_the_screen_is_in_the_verb()
    {
        using TestSite site = new();
        site.Demo();
        List<List<string>> rows = CsvCells.Of(site.Done("year", "--as", "csv"));
        using BareScreens screens = new(site, 120, 60);
        screens.Press("v");
        screens.Wait();
        string[] lines = [.. screens.Text.Split('\n').Select(Words)];
        Assert.True(rows.Count > 10);
        string Cell(List<string> row, string name) => row[rows[0].IndexOf(name)];
        foreach (List<string> row in rows.Skip(1))
        {
            string median = Cell(row, "median_heats");
            string[] wanted = [.. (string[])["place", "form", "steel", "in_use", "added", "scrapped", "worn_out"]];
            // a place that is none stands nowhere on the screen
            string line =
                $"{string.Join(' ', wanted.Select(name => Cell(row, name)))} {(median.Length > 0 ? median : "not enough data")}";
            Assert.Contains(lines, shown => shown.StartsWith(Words(line), StringComparison.Ordinal));
        }
    }

    private static string Words(string line) =>
        string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
