using ToolWear.Ordeals.Fuzz;

namespace ToolWear.Ordeals;

public sealed class FuzzTests
{
    private const int Number = 20_000;

    public static TheoryData<int> Targets => [.. Enumerable.Range(0, Fuzzing.Targets.Count)];

    /// <summary>Two hundred thousand are tried by hand: see RESULTS.md.</summary>
    [Theory]
    [MemberData(nameof(Targets))]
    public void Whatever_comes_from_outside_is_taken_or_refused_civilly(int which)
    {
        (Func<Target> make, int share) = Fuzzing.Targets[which];

        Fuzzed fuzzed = Fuzzing.Run(make(), Number * share / 100, seed: 11);

        Assert.Empty(fuzzed.Wrong);
        Assert.True(fuzzed.Taken * 10 >= fuzzed.Tried, $"{fuzzed.Name}: only {fuzzed.Taken} of {fuzzed.Tried} taken");
    }

    [Fact]
    public void The_shares_make_the_whole() => Assert.Equal(100, Fuzzing.Targets.Sum(target => target.Share));
}
