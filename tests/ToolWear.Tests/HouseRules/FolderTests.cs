using System.Text.RegularExpressions;
using Xunit;
using Assembly = System.Reflection.Assembly;

namespace ToolWear.Tests.HouseRules;

/// <summary>Folders that a reader can hold: few files, no circle, and no type that is large over its files.</summary>
public sealed partial class FolderTests
{
    private const int MostFiles = 25;
    private const int MostLines = 450;

    public static TheoryData<string> Projects => [.. Assemblies.Keys];

    private static Dictionary<string, Assembly> Assemblies { get; } =
        new(StringComparer.Ordinal)
        {
            ["ToolWear.Core"] = House.Core,
            ["ToolWear.Storage"] = House.Storage,
            ["ToolWear"] = House.Program,
        };

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_folders_of_a_project_use_each_other(string project)
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
        Assert.Empty(
            reached.Where(from => from.Value.Contains(from.Key)).Select(from => from.Key).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void No_folders_hold_more_than_25_files() =>
        Assert.Empty(
            House
                .Files("src", "*.cs")
                .CountBy(file => Path.GetDirectoryName(file)!)
                .Where(folder => folder.Value > MostFiles)
                .Select(folder => Path.GetRelativePath(House.Root, folder.Key))
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void No_type_is_longer_than_450_lines_over_all_their_files()
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
        Assert.Empty(
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
