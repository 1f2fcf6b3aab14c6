using Xunit;

namespace ToolWear.Tests.Commands;

/// <summary>correct: by the columns of the files.</summary>
public sealed class CorrectVerbTests
{
    [Fact]
    public void Fields_of_a_tool_and_of_its_gauge_mark_are_corrected_and_stay_readable()
    {
        using TestSite site = new();
        site.Demo();
        string said = site.Done("correct", "H5", "least_mm=12.345", "--gauge", "width", "--why", "the wrong row");
        Assert.Contains("width least 12.345, was ", said, StringComparison.Ordinal);
        site.Done("correct", "H5", "steel=4350", "forge_hours=1.5", "peg=A4");
        string folder = Path.Combine(site.Folder, "out");
        site.Done("export", folder);
        List<string> row = CsvCells
            .Of(File.ReadAllText(Path.Combine(folder, "tools.csv")))
            .First(each => each[0] == "H5");
        Assert.Contains("4350", row);
        Assert.Contains("A4", row);
        Assert.Contains("12.345", File.ReadAllText(Path.Combine(folder, "gauge-marks.csv")), StringComparison.Ordinal);
        Assert.Contains("the wrong row", site.Done("ledger", "H5"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_is_refused_and_named()
    {
        using TestSite site = new();
        site.Demo();
        Assert.Contains("steel", site.Refused(2, "correct", "H5", "steal=4140"), StringComparison.Ordinal);
        Assert.Contains("such as steel=4140", site.Refused(2, "correct", "H5", "steel"), StringComparison.Ordinal);
        Assert.Contains(
            "start_mm",
            site.Refused(1, "correct", "H5", "start_mm=wide", "--gauge", "width"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "it was made by then",
            site.Refused(
                1,
                "correct",
                "H5",
                $"made_on={DateOnly.FromDateTime(site.Clock.GetUtcNow().Date):yyyy-MM-dd}"
            ),
            StringComparison.Ordinal
        );
    }
}
