using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Trials;

namespace ToolWear.Results;

/// <summary>Comparisons of two groups, with the pinned names.</summary>
internal static class Compared
{
    /// <summary>One comparison.</summary>
    /// <param name="a">The first group.</param>
    /// <param name="b">The other.</param>
    /// <param name="comparison">What came of it.</param>
    /// <returns>The figures.</returns>
    public static Calculated Calculated(string a, string b, GroupComparison comparison) =>
        new([.. Names.Zip(Row(a, b, comparison), (name, cell) => new Figure(name.File, name.Heading, cell))]);

    /// <summary>Several comparisons of the same two, one for each kind of tool.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The other.</param>
    /// <param name="kinds">What came of it for each kind.</param>
    /// <returns>A row for each.</returns>
    public static Table Table(string a, string b, IEnumerable<(string Kind, GroupComparison Comparison)> kinds) =>
        new(
            [new("kind", "Kind"), .. Names.Select(name => new Column(name.File, name.Heading)), Rate],
            [.. kinds.Select(each => Row(each.Kind, a, b, each.Comparison))]
        );

    /// <summary>Comparisons of a shop.</summary>
    /// <param name="trials">The comparisons.</param>
    /// <returns>A row for each.</returns>
    public static Table Table(IEnumerable<ShopTrial> trials) =>
        new(
            [new("by", "By"), new("kind", "Kind"), .. Names.Select(name => new Column(name.File, name.Heading)), Rate],
            [
                .. trials.Select(trial =>
                    Row(trial.Kind, trial.A, trial.B, trial.Comparison)
                        .Insert(0, Cell.Of(ShopTrials.ByWords.Word(trial.By)))
                ),
            ]
        );

    // a tool that lasts twice as long wears half as fast: the limits of both are the same
    private static Column Rate { get; } = new("rate_ratio", "Rate of A to B");

    private static ImmutableArray<Cell> Row(string kind, string a, string b, GroupComparison comparison) =>
        [
            Cell.Of(kind),
            .. Row(a, b, comparison),
            Cell.Of(
                1 / (comparison.LifeRatio as Estimate)?.Value,
                ratio => ratio.ToString("0.00", CultureInfo.InvariantCulture)
            ),
        ];

    private static readonly ImmutableArray<(string File, string Heading)> Names =
    [
        ("a", "A"),
        ("b", "B"),
        ("life_ratio", "Life of A to B"),
        ("lo90", "from"),
        ("hi90", "to"),
        ("chance_a_lasts_longer", "A lasts longer"),
        ("verdict", "Verdict"),
    ];

    private static ImmutableArray<Cell> Row(string a, string b, GroupComparison comparison)
    {
        Estimate? ratio = comparison.LifeRatio as Estimate;
        string Ratio(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
        return
        [
            Cell.Of(a),
            Cell.Of(b),
            Cell.Of(ratio?.Value, Ratio),
            Cell.Of(ratio?.Low90, Ratio),
            Cell.Of(ratio?.High90, Ratio),
            Cell.Of(comparison.ChanceALastsLonger, chance => (chance * 100).ToString("0") + " %"),
            Cell.Of(TrialWords.Of(comparison.Verdict)),
        ];
    }
}
