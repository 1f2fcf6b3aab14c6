using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Trials;
using ToolWear.Tables;

namespace ToolWear.Results;

/// <summary>Comparisons of two groups, with the pinned names.</summary>
public static class Compared
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
            [new("kind", "Kind"), .. Names.Select(name => new Column(name.File, name.Heading))],
            [.. kinds.Select(each => (ImmutableArray<Cell>)[Cell.Of(each.Kind), .. Row(a, b, each.Comparison)])]
        );

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
