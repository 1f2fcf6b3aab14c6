using ToolWear.Core.Measure;
using Xunit;

namespace ToolWear.Core.Tests.Measure;

/// <summary>What was probably meant.</summary>
public sealed class NearNamesTests
{
    private static readonly string[] Words = ["rack", "rework", "restore", "forecast", "forge-list", "H5", "H55", "h6"];

    [Theory]
    [InlineData("rak", "Did you mean rack?")]
    [InlineData("rakc", "Did you mean rack?")]
    [InlineData("Rack", "Did you mean rack?")]
    [InlineData("h5", "Did you mean H5?")]
    [InlineData("fore", "Did you mean forecast?")]
    [InlineData("for", "Did you mean forecast or forge-list?")]
    [InlineData("H7", "")]
    [InlineData("", "")]
    [InlineData("hammer", "")]
    public void The_nearest_is_asked_for(string typed, string meant) =>
        Assert.Equal(meant, NearNames.Meant(typed, Words));

    [Fact]
    public void A_long_list_is_cut_and_says_by_how_much()
    {
        string[] many = [.. Enumerable.Range(10, 40).Select(i => $"T{i}")];
        Assert.Equal(
            "No tool \"Q9\". There are T10, T11, T12, T13, T14, T15, T16, T17, T18, T19, T20, T21, T22, T23, T24 and 25 more.",
            NearNames.Refusal("tool", "Q9", many)
        );
        Assert.Equal("The only one is R1.", NearNames.Hint("Q9", ["R1"]));
        Assert.Equal("None is entered yet.", NearNames.Hint("Q9", []));
    }

    [Fact]
    public void A_text_of_a_megabyte_is_no_burden() =>
        Assert.Equal("", NearNames.Meant(new string('x', 1_000_000), Words));
}
