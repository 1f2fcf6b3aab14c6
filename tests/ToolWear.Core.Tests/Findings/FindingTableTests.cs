using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Findings;

/// <summary>The one table says something for every finding, and not knowing is never milder than knowing.</summary>
public sealed class FindingTableTests
{
    public static TheoryData<Finding> All => [.. Enum.GetValues<Finding>().Where(each => each != Finding.Sound)];

    [Theory]
    [MemberData(nameof(All))]
    public void Where_the_place_or_the_steel_is_not_known_the_strictest_counts(Finding finding)
    {
        foreach (SteelClass steel in Enum.GetValues<SteelClass>())
        {
            FindingRule unknownPlace = FindingTable.Of(finding, null, steel);
            foreach (ToolPart part in FindingTable.PartsOf(finding))
            {
                FindingRule rule = FindingTable.Of(finding, part, steel);
                Assert.True(unknownPlace.Verdict <= rule.Verdict, $"{finding} {part} {steel}");
                Assert.True(FindingTable.Of(finding, part, SteelClass.Unknown).Verdict <= rule.Verdict);
                Assert.True(unknownPlace.Wear >= rule.Wear);
            }
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Each_row_says_what_to_do(Finding finding)
    {
        foreach (SteelClass steel in Enum.GetValues<SteelClass>())
        {
            FindingRule rule = FindingTable.Of(finding, null, steel);
            Assert.Equal(rule.Steps.IsEmpty, rule.Else.Length > 0);
            Assert.All(rule.Steps, step => Assert.False(step.By.IsEmpty || step.How.Length == 0));
            // a verdict that asks for a deed has one, and one that a sound look ends has none
            Assert.Equal(rule.Verdict == Verdict.DressFirst, !rule.Steps.IsEmpty && rule.Verdict != Verdict.Out);
            Assert.True(rule.Verdict is Verdict.Out or Verdict.DressFirst or Verdict.LookItOver);
        }
    }

    [Theory]
    [InlineData("mild", SteelClass.Mild)]
    [InlineData(" 1018 ", SteelClass.Mild)]
    [InlineData("4140", SteelClass.OilOrWater)]
    [InlineData("o1", SteelClass.OilOrWater)]
    [InlineData("h13", SteelClass.AirHardening)]
    [InlineData("S7", SteelClass.AirHardening)]
    [InlineData("from the yard", SteelClass.Unknown)]
    [InlineData(null, SteelClass.Unknown)]
    public void A_steel_is_of_the_class_its_name_says(string? steel, SteelClass expected) =>
        Assert.Equal(expected, SteelClasses.Of(steel));
}
