using System.Xml.Linq;
using Xunit;

namespace ToolWear.Tests.HouseRules;

/// <summary>The files of the house: their size, their settings, their documentation.</summary>
public sealed class FileTests
{
    private const int MostLines = 450;

    [Fact]
    public void No_file_is_longer_than_450_lines()
    {
        IReadOnlyList<string> files = House.Files("src", "*.cs");
        Assert.InRange(files.Count, 50, int.MaxValue);
        Assert.DoesNotContain(
            files.Select(file => (Name: Path.GetRelativePath(House.Root, file), Lines: File.ReadLines(file).Count())),
            file => file.Lines > MostLines
        );
    }

    [Fact]
    public void The_length_of_methods_is_watched_by_the_build()
    {
        string[] settings = File.ReadAllLines(Path.Combine(House.Root, ".editorconfig"));
        Assert.Contains(settings, line => line == "dotnet_diagnostic.MA0051.severity = warning");
        Assert.Contains(settings, line => line == "MA0051.maximum_lines_per_method = 60");
        Assert.DoesNotContain(settings, line => line.Contains("MA0051.severity = none", StringComparison.Ordinal));
    }

    [Fact]
    public void No_project_silences_a_warning()
    {
        string[] projects = Projects("*.csproj", "*.props", "*.targets");
        Assert.InRange(projects.Length, 8, int.MaxValue);
        Assert.DoesNotContain(
            projects,
            file => File.ReadAllText(file).Contains("NoWarn", StringComparison.OrdinalIgnoreCase)
        );
        Assert.DoesNotContain(projects, file => Says(file, "TreatWarningsAsErrors", "false"));
        Assert.True(Says(Path.Combine(House.Root, "Directory.Build.props"), "TreatWarningsAsErrors", "true"));
    }

    [Fact]
    public void A_warning_that_is_silenced_in_code_has_its_reason_beside_it()
    {
        IReadOnlyList<string> files = House.Files("src", "*.cs");
        Assert.NotEmpty(files);
        Assert.Empty(files.SelectMany(file => Silenced(File.ReadAllLines(file)).Select(line => file + ": " + line)));
    }

    [Fact]
    public void Every_source_project_documents_all_that_is_public()
    {
        Assert.True(Says(Path.Combine(House.Root, "Directory.Build.props"), "GenerateDocumentationFile", "true"));
        IReadOnlyList<string> projects = House.Files("src", "*.csproj");
        Assert.Equal(3, projects.Count);
        Assert.DoesNotContain(
            projects,
            file => File.ReadAllText(file).Contains("GenerateDocumentationFile", StringComparison.Ordinal)
        );
        Assert.Empty(House.Files("src", "*.props"));
        string[] general = [.. File.ReadLines(Path.Combine(House.Root, ".editorconfig")).TakeWhile(IsGeneral)];
        Assert.NotEmpty(general);
        Assert.DoesNotContain(general, line => line.Contains("CS1591", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_public_type_of_core_stands_in_its_documentation()
    {
        HashSet<string> told =
        [
            .. XDocument
                .Load(Path.Combine(AppContext.BaseDirectory, "ToolWear.Core.xml"))
                .Descendants("member")
                .Where(member => member.Elements().Any())
                .Select(member => member.Attribute("name")!.Value),
        ];
        string[] types = [.. House.Core.GetExportedTypes().Select(type => "T:" + type.FullName!.Replace('+', '.'))];
        Assert.NotEmpty(types);
        Assert.Empty(types.Except(told, StringComparer.Ordinal));
    }

    private static bool IsGeneral(string line) => !line.StartsWith("[tests", StringComparison.Ordinal);

    private static string[] Projects(params string[] patterns) =>
        [
            .. new[] { "src", "tests" }.SelectMany(folder => patterns.SelectMany(each => House.Files(folder, each))),
            .. patterns.SelectMany(each => Directory.EnumerateFiles(House.Root, each)),
        ];

    private static bool Says(string file, string property, string value) =>
        XDocument.Load(file).Descendants(property).Any(each => each.Value == value);

    private static IEnumerable<string> Silenced(string[] lines) =>
        lines.Where(
            (line, i) =>
                (
                    line.Contains("#pragma warning disable", StringComparison.Ordinal)
                    && !line.Contains("//", StringComparison.Ordinal)
                    && (i == 0 || !lines[i - 1].TrimStart().StartsWith("//", StringComparison.Ordinal))
                )
                || (
                    line.Contains("SuppressMessage(", StringComparison.Ordinal)
                    && !lines[i..Math.Min(lines.Length, i + 6)]
                        .Any(each => each.Contains("Justification", StringComparison.Ordinal))
                )
        );

    /// <summary>Sync, lock and rights, which file it is, the terminal, signals: one file each; all else is the same everywhere.</summary>
    [Fact]
    public void What_differs_by_system_stands_in_one_place_each()
    {
        string[] asks =
        [
            .. House
                .Files("src", "*.cs")
                .Where(file =>
                    File.ReadAllText(file) is { } text
                    && (
                        text.Contains("OperatingSystem.Is", StringComparison.Ordinal)
                        || text.Contains("OSPlatform", StringComparison.Ordinal)
                        || text.Contains("LibraryImport", StringComparison.Ordinal)
                    )
                )
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(["DiskSync.cs", "FileFacts.cs", "Program.cs", "RealDisk.cs", "Tty.cs"], asks);
    }
}
