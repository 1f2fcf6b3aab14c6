using System.Reflection;
using ArchUnitNET.Domain;
using Xunit;
using Assembly = System.Reflection.Assembly;

namespace ToolWear.Tests.HouseRules;

/// <summary>The three projects: ToolWear uses Storage uses Core, and each library of the outside is known to one.</summary>
public sealed class WallTests
{
    public static TheoryData<string, string> Libraries =>
        new()
        {
            { "LiteDB", "ToolWear.Storage" },
            { "CsvHelper", "ToolWear.Storage" },
            { "System.IO.Hashing", "ToolWear.Storage" },
            { "System.CommandLine", "toolwear" },
            { "Terminal.Gui", "toolwear" },
            { "MathNet.Numerics", "ToolWear.Core" },
        };

    [Fact]
    public void Core_uses_neither_storage_nor_program() =>
        Assert.Empty(
            House.Breaches(
                House.TypesOf(House.Core),
                to => House.IsOf(to, House.Storage) || House.IsOf(to, House.Program)
            )
        );

    [Fact]
    public void Storage_does_not_use_the_program() =>
        Assert.Empty(House.Breaches(House.TypesOf(House.Storage), to => House.IsOf(to, House.Program)));

    [Theory]
    [MemberData(nameof(Libraries))]
    public void Only_one_project_knows_a_library(string library, string owner)
    {
        Assembly[] others = [.. Projects.Where(project => project.GetName().Name != owner)];
        Assert.Equal(2, others.Length);
        foreach (Assembly other in others)
        {
            Assert.Empty(House.Breaches(House.TypesOf(other), to => House.IsIn(to, library)));
            Assert.DoesNotContain(other.GetReferencedAssemblies(), name => name.Name == library);
        }
    }

    [Fact]
    public void Core_touches_no_file_and_no_console() =>
        Assert.Empty(
            House.Breaches(
                House.TypesOf(House.Core),
                to => House.IsIn(to, "System.IO") || to.FullName == "System.Console"
            )
        );

    [Fact]
    public void Nothing_of_ours_knows_the_network()
    {
        foreach (Assembly project in Projects)
        {
            Assert.NotEmpty(project.GetReferencedAssemblies());
            Assert.DoesNotContain(
                project.GetReferencedAssemblies(),
                name => name.Name!.StartsWith("System.Net", StringComparison.Ordinal)
            );
        }
    }

    [Fact]
    public void Storage_touches_no_console() =>
        Assert.Empty(House.Breaches(House.TypesOf(House.Storage), to => to.FullName == "System.Console"));

    [Fact]
    public void The_walls_are_looked_at_with_eyes_open()
    {
        string[] uses = House.Breaches(House.TypesOf(House.Core), to => House.IsIn(to, "System.Collections.Immutable"));
        Assert.Contains(uses, use => use.StartsWith("ToolWear.Core.Shops.Shop uses ", StringComparison.Ordinal));
    }

    private static Assembly[] Projects => [House.Core, House.Storage, House.Program];
}
