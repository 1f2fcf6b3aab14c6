using System.Reflection;
using ToolWear.Core.Ledger;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Tests.HouseRules;

/// <summary>Names that say what a thing is, and a generator for each kind of entry.</summary>
public sealed class NameTests
{
    private static readonly string[] Empty =
    [
        "Manager",
        "Helper",
        "Helpers",
        "Util",
        "Utils",
        "Data",
        "Info",
        "Processor",
    ];

    /// <summary>It says what there is not enough of; the house itself gives it this name.</summary>
    private static readonly string[] OfTheHouse = [nameof(Core.Measure.NotEnoughData)];

    [Fact]
    public void No_type_has_a_name_that_says_nothing()
    {
        foreach (Assembly project in new[] { House.Core, House.Storage, House.Program })
        {
            string[] names = [.. project.GetTypes().Where(IsWritten).Select(type => type.Name.Split('`')[0])];
            Assert.NotEmpty(names);
            Assert.DoesNotContain(
                names.Except(OfTheHouse, StringComparer.Ordinal),
                name => Empty.Any(word => name.EndsWith(word, StringComparison.Ordinal))
            );
        }
    }

    [Fact]
    public void Every_kind_of_entry_has_its_generator()
    {
        Type[] kinds =
        [
            .. House.Core.GetTypes().Where(type => type.IsSubclassOf(typeof(LedgerEntry)) && !type.IsAbstract),
        ];
        Assert.NotEmpty(kinds);
        Assert.Empty(kinds.Except(EntryGens.Wide.ByKind.Keys));
        Assert.Empty(kinds.Except(EntryGens.Narrow.ByKind.Keys));
        foreach (Type kind in kinds)
        {
            Assert.All(Fixed.Samples(EntryGens.Wide.ByKind[kind], 20), entry => Assert.IsType(kind, entry));
        }
    }

    [Fact]
    public void Entries_are_a_closed_family_of_sealed_records()
    {
        Type[] kinds = [.. House.Core.GetTypes().Where(type => type.IsSubclassOf(typeof(LedgerEntry)))];
        Assert.NotEmpty(kinds);
        Assert.All(kinds, kind => Assert.True(kind.IsSealed, kind.Name));
        Assert.All(kinds, kind => Assert.Equal("ToolWear.Core.Ledger", kind.Namespace));
    }

    private static bool IsWritten(Type type) =>
        !type.Name.Contains('<', StringComparison.Ordinal)
        && type.Namespace?.StartsWith("ToolWear", StringComparison.Ordinal) != false;
}
