using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Trials;
using Row = ToolWear.Results.Column<ToolWear.Core.Wear.Trials.ShopTrial>;

namespace ToolWear.Results.Looks;

/// <summary>Comparisons of two groups, with the pinned names.</summary>
internal static class Compared
{
    private static readonly Quantity Times = Quantity.Of("", "0.00");

    private static readonly Row Kind = Row.Text("kind", "Kind", trial => trial.Kind);

    // a tool that lasts twice as long wears half as fast: the limits of both are the same
    private static readonly Row Rate = Row.Number(
            "rate_ratio",
            "Rate of A to B",
            trial => 1 / Ratio(trial)?.Value,
            Times
        )
        .Means("how many times as fast the first group wears as the second")
        .Ranked(3);

    /// <summary>One comparison.</summary>
    public static Columns<ShopTrial> One { get; } =
    [
        Row.Text("a", "A", trial => trial.A).Means("the first of two groups that are compared"),
        Row.Text("b", "B", trial => trial.B).Means("the second of two groups that are compared"),
        Row.Number("life_ratio", "Life of A to B", trial => Ratio(trial)?.Value, Times)
            .Means("how many times as long the first group lasts as the second"),
        Row.Number("lo90", "from", trial => Ratio(trial)?.Low90, Times)
            .Means("nine times in ten at least so much")
            .Ranked(1),
        Row.Number("hi90", "to", trial => Ratio(trial)?.High90, Times)
            .Means("nine times in ten at most so much")
            .Ranked(1),
        Row.Number(
                "chance_a_lasts_longer",
                "A lasts longer",
                trial => trial.Comparison.ChanceALastsLonger,
                Quantity.Share
            )
            .Means("the chance that tools of the first group last longer")
            .Ranked(2),
        Row.Text("verdict", "Verdict", trial => TrialWords.Of(trial.Comparison.Verdict)),
    ];

    /// <summary>Comparisons of the same two, one for each kind of tool.</summary>
    public static Columns<ShopTrial> Kinds { get; } = [Kind, .. One, Rate];

    /// <summary>Comparisons of a shop.</summary>
    public static Columns<ShopTrial> All { get; } =
    [Row.Text("by", "By", trial => ShopTrials.ByWords.Word(trial.By)), Kind, .. One, Rate];

    private static Estimate? Ratio(ShopTrial trial) => trial.Comparison.LifeRatio as Estimate;
}
