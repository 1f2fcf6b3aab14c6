using ArchUnitNET.Domain;
using Xunit;

namespace ToolWear.Tests.HouseRules;

/// <summary>Inside Core each room may use those above it in the list, never one below.</summary>
public sealed class RoomTests
{
    private static readonly string[] InOrder =
    [
        "Measure",
        "Sections",
        "Tools",
        "Eyes",
        "Ledger",
        "Fields",
        "Shops",
        "Findings",
        "Wear",
        "Planning",
        "Deeds",
    ];

    /// <summary>The rooms that have code by now: those whose folder has some.</summary>
    public static TheoryData<string> Rooms => [.. InOrder.Where(room => FilesOf(room).Count > 0)];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_uses_only_those_above_it(string room)
    {
        string[] below = InOrder[(Array.IndexOf(InOrder, room) + 1)..];
        IReadOnlyList<IType> types = House.TypesOfRoom(room);
        Assert.Empty(House.Breaches(types, to => below.Any(each => House.IsIn(to, "ToolWear.Core." + each))));
    }

    [Fact]
    public void The_first_rooms_are_there() =>
        Assert.Superset(
            new HashSet<string>(["Measure", "Sections", "Tools", "Ledger", "Shops"], StringComparer.Ordinal),
            InOrder.Where(room => FilesOf(room).Count > 0).ToHashSet(StringComparer.Ordinal)
        );

    [Fact]
    public void Core_has_no_other_room()
    {
        string[] found =
        [
            .. House
                .Files("src/ToolWear.Core", "*.cs")
                .Select(file => Path.GetRelativePath(Path.Combine(House.Root, "src/ToolWear.Core"), file))
                .Select(file => file.Split(Path.DirectorySeparatorChar)[0])
                .Distinct(StringComparer.Ordinal),
        ];
        Assert.NotEmpty(found);
        Assert.Empty(found.Except(InOrder, StringComparer.Ordinal));
    }

    private static IReadOnlyList<string> FilesOf(string room) =>
        Directory.Exists(Path.Combine(House.Root, "src/ToolWear.Core", room))
            ? House.Files("src/ToolWear.Core/" + room, "*.cs")
            : [];
}
