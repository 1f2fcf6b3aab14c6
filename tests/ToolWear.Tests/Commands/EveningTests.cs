using System.Globalization;
using System.Text.Json;

namespace ToolWear.Tests.Commands;

/// <summary>An evening and the morning after, by commands.</summary>
public sealed class EveningTests
{
    [Fact]
    public void An_evening_is_entered_as_people_type()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("heats", "h5", "2 1/2", "--on", "yesterday");
        site.Done("look-over", "h5", "sound");
        site.Done("set-aside", "h6", "too thin");
        Assert.Contains("H6", site.Done("ledger", "set aside: too thin"), StringComparison.Ordinal);
        string slip = site.Refused(1, "measure", "h5", "width", "0.53");
        Assert.Contains("type 0.53in", slip, StringComparison.Ordinal);
        Assert.Contains(
            "toolwear cross-out",
            site.Run("measure", "h5", "width", "14.6").Error,
            StringComparison.Ordinal
        );
        Assert.Equal(site.Done("forge-list", "--sure", "0.8"), site.Done("forge-list", "--sure", "80%"));
    }

    [Fact]
    public void A_deed_told_as_json_is_one_document_with_its_entry()
    {
        using TestSite site = new();
        site.Demo();
        using JsonDocument read = JsonDocument.Parse(site.Done("measure", "h5", "WIDTH", "13.2", "--as", "json"));
        Assert.True(read.RootElement.GetProperty("entry").GetInt64() > 1000);
        Assert.StartsWith("H5 width: 13.20 mm", read.RootElement.GetProperty("told")[0].GetString());
        using JsonDocument check = JsonDocument.Parse(site.Done("check", "--as", "json"));
        Assert.Contains("all sound", check.RootElement.GetProperty("told")[0].GetString(), StringComparison.Ordinal);
        Assert.False(check.RootElement.TryGetProperty("entry", out _));
        Assert.Contains("text or json", site.Refused(2, "heats", "h5", "1", "--as", "csv"), StringComparison.Ordinal);
        Ran quiet = site.Run("measure", "h5", "width", "13.2", "--quiet");
        Assert.Equal("", quiet.Error);
        Assert.DoesNotContain("Heats left is an estimate", site.Done("rack", "--quiet"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_is_in_the_history_and_moves_the_forecast()
    {
        using TestSite site = new();
        site.Demo();
        Dictionary<string, string> before = Forecast(site, "H5", "width");

        site.Done("open-session", "--pattern", "hatchet");
        site.Done("heats", "H5", "12");
        site.Done("close-session", "--heads", "4");
        site.Clock.Advance(TimeSpan.FromHours(14));
        site.Done("measure", "H5", "width", "12.95", "--by", "Orla");
        site.Done("look-over", "H5", "sound", "--by", "Orla");

        Dictionary<string, string> after = Forecast(site, "H5", "width");
        Assert.Equal(Number(before["heats_now"]) + 12, Number(after["heats_now"]));
        Assert.Equal(Number(before["readings"]) + 1, Number(after["readings"]));
        Assert.True(Number(after["wear_now_mm"]) > Number(before["wear_now_mm"]));
        Assert.True(Number(after["heats_left"]) < Number(before["heats_left"]));
        string file = site.In("history.csv");
        site.Done("export-history", file);
        List<string> row = CsvCells.Of(File.ReadAllText(file)).Last(cells => cells[0] == "H5" && cells[1] == "width");
        Assert.Equal(["2026-11-13", "50", "12.95"], [row[9], row[10], row[11]]);
    }

    [Fact]
    public void Heats_go_to_the_open_session_else_to_one_of_that_day_which_is_opened()
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift", "--place", "rough");
        Assert.Equal("entry 3\n", site.Done("heats", "R3", "2"));
        Assert.Equal("entry 4\n", site.Done("heats", "R3", "2.5"));
        site.Done("close-session");
        Assert.Equal("entry 6\n", site.Done("heats", "R3", "1"));
        site.Done("heats", "R3", "1", "--on", "2026-11-01");
        Assert.Contains("2026-11-01", site.Done("card", "R3"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_entry_can_be_crossed_out_and_one_with_others_resting_on_it_cannot()
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift");
        site.Done("heats", "R3", "2");
        Ran refused = site.Run("cross-out", "1", "never was");
        Assert.Equal(1, refused.Exit);
        Assert.Contains("entry 3", refused.Error, StringComparison.Ordinal);
        site.Done("cross-out", "3", "miscounted");
        site.Done("cross-out", "1", "never was");
        Assert.Equal(1, site.Run("card", "R3").Exit);
    }

    [Fact]
    public void A_backup_comes_back_and_says_first_what_would_go()
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift");
        site.Done("backup", site.In("safe.backup"));
        site.Done("add-tool", "R4", "--form", "drift");
        Ran asked = site.Run("restore", site.In("safe.backup"));
        Assert.Equal(2, asked.Exit);
        Assert.Contains("1 of those now would go", asked.Error, StringComparison.Ordinal);
        site.Done("restore", site.In("safe.backup"), "--yes");
        Assert.Equal(1, site.Run("card", "R4").Exit);
        Assert.Equal("1 entries, all sound\n", site.Done("check"));
    }

    [Fact]
    public void A_tool_of_mm_is_shown_in_inches_where_asked_and_files_stay_mm()
    {
        using TestSite site = new();
        site.Done("add-tool", "F1", "--form", "drift", "--place", "finish", "--gauge", "width,smaller,,11/16,0.66\",");
        site.Done("set", "units", "in");
        Assert.Contains("start 0.688 in", site.Done("card", "F1"), StringComparison.Ordinal);
        Assert.Contains("start 17.46 mm", site.Done("card", "F1", "--units", "mm"), StringComparison.Ordinal);
        site.Done("export", site.In("out"));
        Assert.Contains("17.4625", File.ReadAllText(site.In("out/gauge-marks.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_size_in_a_shop_of_inches_is_inches_and_so_is_what_is_to_go()
    {
        using TestSite site = new();
        site.Done("add-tool", "F1", "--form", "drift", "--place", "finish", "--gauge", "width,smaller,,0.7in,0.66in,");
        site.Done("set", "units", "in");
        // 0.69 less 0.66 of 0.7 less 0.66
        Assert.Contains(
            "F1 width: 0.690 in, 0.030 in to go of 0.040 in",
            site.Done("measure", "F1", "width", "0.69"),
            StringComparison.Ordinal
        );
        Assert.Contains(",17.526,", Exported(site, "readings.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void Heats_of_another_day_go_to_that_day_while_a_session_is_open()
    {
        using TestSite site = new();
        site.Done("add-tool", "R3", "--form", "drift");
        site.Done("open-session", "--on", "2026-11-01");
        site.Done("close-session", "--on", "2026-11-01");
        site.Done("open-session");
        site.Done("heats", "R3", "1", "--on", "2026-11-01");
        site.Done("heats", "R3", "2");
        string heats = Exported(site, "heats.csv");
        Assert.Matches(",2026-11-01,R3,[a-z ]*,1,", heats);
        Assert.Matches(",2026-11-12,R3,[a-z ]*,2,", heats);
    }

    [Fact]
    public void A_reading_without_a_session_stands_beside_what_was_used_that_day()
    {
        using TestSite site = new();
        site.Done("add-tool", "F1", "--form", "drift", "--gauge", "width,smaller,,14,13,");
        site.Done("open-session", "--lubricant", "graphite", "--on", "2026-11-05");
        site.Done("heats", "F1", "4", "--on", "2026-11-05");
        site.Done("close-session", "--on", "2026-11-05");
        site.Done("import", site.Write("readings.csv", "tool,gauge,on,size\nF1,width,2026-11-05,13.8\n"));
        List<List<string>> history = CsvCells.Of(site.Done("export-history", "-"));
        Assert.Equal("graphite", history[1][history[0].IndexOf("lubricant")]);
    }

    private static string Exported(TestSite site, string file)
    {
        site.Done("export", site.In("out"));
        return File.ReadAllText(site.In(Path.Combine("out", file)));
    }

    private static Dictionary<string, string> Forecast(TestSite site, string tool, string gauge)
    {
        List<List<string>> rows = CsvCells.Of(site.Done("forecast", "--as", "csv"));
        List<string> row = rows.Single(cells => cells[2] == tool && cells[3] == gauge);
        return rows[0].Zip(row).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
