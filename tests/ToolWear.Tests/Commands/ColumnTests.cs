using System.Text.RegularExpressions;

namespace ToolWear.Tests.Commands;

/// <summary>The data dictionary knows every column of every file and every key of every result, and no other.</summary>
public sealed partial class ColumnTests(DemoFixture demo)
{
    [Fact]
    public void Every_column_and_key_is_in_the_dictionary_and_nothing_else()
    {
        HashSet<string> used = [.. FromFiles(), .. FromResults()];
        HashSet<string> known =
        [
            .. CsvCells.Of(demo.Site.Done("columns", "--as", "csv")).Skip(1).Select(row => row[0]),
        ];
        Assert.True(used.Count > 150, $"only {used.Count} names were found");
        Assert.Empty(used.Except(known).Order(StringComparer.Ordinal));
        Assert.Empty(known.Except(used).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void One_column_is_told_alone_and_an_unknown_one_is_refused()
    {
        Assert.Equal(
            2,
            demo.Site.Done("columns", "heats_left", "--as", "csv")
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Length
        );
        Assert.Contains("no_such", demo.Site.Refused(1, "columns", "no_such"), StringComparison.Ordinal);
    }

    /// <summary>Header rows of the CSV set, of the wear history, and of the files that are only read.</summary>
    private IEnumerable<string> FromFiles()
    {
        using TestSite site = new();
        demo.Site.Done("export", site.In("out"));
        demo.Site.Done("export-history", site.In("out/wear.csv"));
        string[] headers =
        [
            .. Directory.GetFiles(site.In("out"), "*.csv").Select(file => File.ReadLines(file).First()),
        ];
        Assert.Equal(19, headers.Length);
        string help = string.Concat(
            new[] { "fit", "lifetimes" }
                .Select(verb => demo.Site.Done(verb, "--help"))
                .Append(demo.Site.Done("template", "tools"))
        );
        return headers
            .SelectMany(header => header.Split(','))
            .Concat(Key().Matches(demo.Site.Done("export", "-", "--as", "json")).Select(match => match.Groups[1].Value))
            .Concat(OnlyRead.Where(name => help.Contains(name, StringComparison.Ordinal)));
    }

    // columns of files that are read and never written; each stands in the help of its verb
    private static readonly string[] OnlyRead =
    [
        "size_mm",
        "scrap_mm",
        "made_mm",
        "heats_before_how",
        "kind",
        "group",
        "segment",
        "start_mm",
        "wear_mm",
        "limit_mm",
        "heats_now",
        "failed",
        "from_heats",
    ];

    /// <summary>Header rows and keys in the results that the example tests have accepted.</summary>
    private static IEnumerable<string> FromResults()
    {
        string folder = Path.Combine(Repository.Folder, "tests/ToolWear.Tests/goldens/examples");
        string all = string.Concat(
            Directory.GetFiles(folder, "*.txt", SearchOption.AllDirectories).Select(File.ReadAllText)
        );
        IEnumerable<string> keys = Key().Matches(all).Select(match => match.Groups[1].Value);
        IEnumerable<string> headers = Header().Matches(all).SelectMany(match => match.Groups[1].Value.Split(','));
        return keys.Concat(headers);
    }

    [GeneratedRegex("\"([a-z][a-z_0-9]*)\":")]
    private static partial Regex Key();

    [GeneratedRegex("\\$ toolwear [^\\n]*--as csv\\n([a-z_0-9,]+)\\\n")]
    private static partial Regex Header();
}
