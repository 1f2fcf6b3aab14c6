namespace ToolWear.Tests.Commands;

/// <summary>A closed session counts an open order down only where the command says so.</summary>
public sealed class CountOffTests
{
    [Fact]
    public void Closing_names_the_open_order_and_counts_it_down_only_when_told()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("open-session", "--pattern", "hatchet");
        string hint = site.Done("close-session", "--heads", "6");
        Assert.Contains("order hatchets still has 18 hatchet to go", hint, StringComparison.Ordinal);
        Assert.Contains("--count-off", hint, StringComparison.Ordinal);
        Assert.Equal("18", HeadsToGo(site));

        site.Done("open-session", "--pattern", "hatchet");
        string counted = site.Done("close-session", "--heads", "5", "--count-off");
        Assert.Contains("order hatchets: 5 heads off, 13 to go", counted, StringComparison.Ordinal);
        Assert.Equal("13", HeadsToGo(site));

        site.Done("open-session", "--pattern", "hatchet");
        counted = site.Done("close-session", "--heads", "20", "--count-off");
        Assert.Contains("order hatchets is done", counted, StringComparison.Ordinal);
        Assert.Null(HeadsToGo(site));
    }

    [Fact]
    public void An_added_order_adds_a_drift_and_dropping_it_takes_it_away()
    {
        using TestSite site = new();
        site.Demo();
        int before = Drifts(site);
        site.Done("order", "fair", "--pattern", "cross-peen", "--heads", "40", "--due", "2027-02-01");
        Assert.True(Drifts(site) > before, $"{Drifts(site)} {before}");
        site.Done("order", "fair", "--state", "dropped");
        Assert.Equal(before, Drifts(site));
    }

    private static int Drifts(TestSite site)
    {
        List<List<string>> rows = CsvCells.Of(site.Done("forge-list", "--as", "csv"));
        return rows.Skip(1)
            .Where(row => row[rows[0].IndexOf("eye")] == "X" && row[rows[0].IndexOf("place")] == "rough")
            .Sum(row => int.Parse(row[rows[0].IndexOf("number")], null));
    }

    private static string? HeadsToGo(TestSite site) =>
        CsvCells.Of(site.Done("order", "--as", "csv")).SingleOrDefault(row => row[0] == "hatchets")?[2];
}
