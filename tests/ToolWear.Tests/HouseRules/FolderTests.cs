using System.Text.RegularExpressions;
using Xunit;
using Assembly = System.Reflection.Assembly;

namespace ToolWear.Tests.HouseRules;

/// <summary>Folders that a reader can hold: few files, no circle, and no type that is large over its files.</summary>
public sealed partial class FolderTests
{
    private const int MostFiles = 25;
    private const int MostLines = 450;

    // what is still to be mended: nothing may come to these lists, and what is mended leaves them
    private static readonly string[] StillLargeFolders = ["src/ToolWear", "src/ToolWear.Storage/Csv"];
    private static readonly string[] StillLargeTypes = ["ToolWear Words", "ToolWear.Core.Shops Shop"];

    /// <summary>Each project with the folders of it that are still in a circle.</summary>
    public static TheoryData<string, string> Projects =>
        new()
        {
            { "ToolWear.Core", "" },
            { "ToolWear.Storage", " .Backups .Documents .Journal" },
            {
                "ToolWear",
                " .Pens .Results .Results.Eyes .Results.Looks .Results.Plans .Results.Tools "
                    + ".Screens .Screens.CaliperRound .Screens.Choosing .Screens.Closing .Screens.Costs "
                    + ".Screens.Drawing .Screens.Eyes .Screens.FirstStart .Screens.ForgeList .Screens.Guided "
                    + ".Screens.Hammer .Screens.HandOver .Screens.Help .Screens.LedgerPages .Screens.Loans "
                    + ".Screens.NewTool .Screens.Orders .Screens.Patterns .Screens.SeriesPages .Screens.ShopPage "
                    + ".Screens.StockRack .Screens.StockTake .Screens.ToolRack .Screens.ToolTable "
                    + ".Screens.TrialPages .Screens.WearCard .Screens.Year .Sheets"
            },
        };

    private static Dictionary<string, Assembly> Assemblies { get; } =
        new(StringComparer.Ordinal)
        {
            ["ToolWear.Core"] = House.Core,
            ["ToolWear.Storage"] = House.Storage,
            ["ToolWear"] = House.Program,
        };

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_more_folders_of_a_project_use_each_other(string project, string still)
    {
        ILookup<string, string> uses = House
            .TypesOf(Assemblies[project])
            .SelectMany(type => type.Dependencies.Select(use => (From: type, To: use.Target)))
            .Where(use => House.IsOf(use.To, Assemblies[project]))
            .Select(use => (From: use.From.Namespace.FullName, To: use.To.Namespace.FullName))
            .Where(use => use.From != use.To)
            .Distinct()
            .ToLookup(use => use.From, use => use.To, StringComparer.Ordinal);
        Assert.NotEmpty(uses);
        Dictionary<string, HashSet<string>> reached = uses.ToDictionary(
            from => from.Key,
            from => ReachedFrom(uses, from.Key),
            StringComparer.Ordinal
        );
        // a folder that comes back to itself is in a circle
        string found = string.Join(
            ' ',
            reached
                .Where(from => from.Value.Contains(from.Key))
                .Select(from => from.Key[project.Length..])
                .Order(StringComparer.Ordinal)
        );
        Assert.True(found == still, found);
    }

    [Fact]
    public void No_more_folders_hold_more_than_25_files() =>
        Assert.Equal(
            StillLargeFolders,
            House
                .Files("src", "*.cs")
                .CountBy(file => Path.GetDirectoryName(file)!)
                .Where(folder => folder.Value > MostFiles)
                .Select(folder => Path.GetRelativePath(House.Root, folder.Key))
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void No_more_types_are_longer_than_450_lines_over_all_their_files()
    {
        (string Type, int Lines)[] types =
        [
            .. House
                .Files("src", "*.cs")
                .Select(file => (Name: TypeOf(File.ReadAllText(file)), Lines: File.ReadLines(file).Count()))
                .GroupBy(file => file.Name, file => file.Lines, StringComparer.Ordinal)
                .Select(type => (type.Key, type.Sum())),
        ];
        Assert.InRange(types.Length, 100, int.MaxValue);
        Assert.Equal(
            StillLargeTypes,
            types.Where(type => type.Lines > MostLines).Select(type => type.Type).Order(StringComparer.Ordinal)
        );
    }

    private static HashSet<string> ReachedFrom(ILookup<string, string> uses, string from)
    {
        HashSet<string> reached = new(StringComparer.Ordinal);
        Stack<string> next = new(uses[from]);
        while (next.TryPop(out string? to))
        {
            if (reached.Add(to))
            {
                foreach (string further in uses[to])
                {
                    next.Push(further);
                }
            }
        }

        return reached;
    }

    // partial files of one type count together
    private static string TypeOf(string file) => $"{Space().Match(file)} {Type().Match(file)}";

    [GeneratedRegex(@"(?<=^namespace )[\w.]+", RegexOptions.Multiline)]
    private static partial Regex Space();

    [GeneratedRegex(@"(?<=^[a-z ]+ (class|record|struct|interface|enum) )(?!struct)\w+", RegexOptions.Multiline)]
    private static partial Regex Type();
}
