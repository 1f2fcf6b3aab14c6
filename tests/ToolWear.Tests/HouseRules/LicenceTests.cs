using System.Text.Json;
using System.Xml.Linq;
using ToolWear.Testing.Goldens;
using Xunit;

namespace ToolWear.Tests.HouseRules;

/// <summary>A list beside the licences names every package that is restored, under the licence that the package itself names.</summary>
public sealed class LicenceTests
{
    private const string Heading = "# Licences of the libraries\n";

    [Fact]
    public void Every_package_is_listed_under_its_licence()
    {
        string path = Path.Combine(House.Root, ".build/licences/README.md");
        string right = Heading + Told();
        if (Environment.GetEnvironmentVariable(Golden.Accept) == "1")
        {
            File.WriteAllText(path, right);
            return;
        }

        Assert.Equal(right, File.ReadAllText(path));
    }

    [Fact]
    public void What_travels_with_the_program_asks_for_no_more_than_its_notice()
    {
        string[] free = ["MIT", "BSD-2-Clause", "MS-PL OR Apache-2.0"];
        (string Name, string Licence)[] shipped = [.. Shipped().Select(name => (name, LicenceOf(name)))];
        Assert.True(shipped.Length > 20, $"only {shipped.Length} packages");
        Assert.All(shipped, each => Assert.Contains(each.Licence, free));
    }

    private static string Told()
    {
        string[] shipped = Shipped();
        string[] others = [.. Packages("src", "tests").Except(shipped, StringComparer.Ordinal)];
        return $"\nThey travel with the program:\n\n{List(shipped)}\nOnly building and testing use these:\n\n{List(others)}";
    }

    private static string List(IEnumerable<string> packages) =>
        string.Concat(
            packages
                .GroupBy(LicenceOf)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => $"- {group.Key}: {string.Join(", ", group.Order(StringComparer.OrdinalIgnoreCase))}\n")
        );

    /// <summary>What the program's own lock file holds but for what only the build uses.</summary>
    private static string[] Shipped() =>
        [
            .. Packages("src")
                .Where(name =>
                    !name.Contains("Analyzer", StringComparison.Ordinal)
                    && !name.Contains("ILLink", StringComparison.Ordinal)
                ),
        ];

    private static IEnumerable<string> Packages(params string[] folders) =>
        folders
            .SelectMany(folder => House.Files(folder, "packages.lock.json"))
            .SelectMany(file => Locked(file).Keys)
            .Distinct(StringComparer.Ordinal);

    private static Dictionary<string, string> Locked(string file)
    {
        using JsonDocument locked = JsonDocument.Parse(File.ReadAllText(file));
        return locked
            .RootElement.GetProperty("dependencies")
            .EnumerateObject()
            .SelectMany(framework => framework.Value.EnumerateObject())
            .Where(package => package.Value.GetProperty("type").GetString() != "Project")
            .ToDictionary(package => package.Name, package => package.Value.GetProperty("resolved").GetString()!);
    }

    private static string LicenceOf(string package)
    {
        string version = new[] { "src", "tests" }
            .SelectMany(folder => House.Files(folder, "packages.lock.json"))
            .Select(file => Locked(file).GetValueOrDefault(package))
            .OfType<string>()
            .First();
        string name = package.ToLowerInvariant();
        string nuspec = Folders()
            .Select(folder => Path.Combine(folder, name, version, name + ".nuspec"))
            .First(File.Exists);
        XElement? licence = XDocument
            .Load(nuspec)
            .Descendants()
            .FirstOrDefault(each => each.Name.LocalName == "license");
        return licence?.Attribute("type")?.Value == "expression" ? licence.Value : "its own licence file";
    }

    /// <summary>Where packages were restored to.</summary>
    private static string[] Folders()
    {
        string assets = Path.Combine(House.Root, "tests/ToolWear.Tests/obj/project.assets.json");
        using JsonDocument restored = JsonDocument.Parse(File.ReadAllText(assets));
        return [.. restored.RootElement.GetProperty("packageFolders").EnumerateObject().Select(folder => folder.Name)];
    }
}
