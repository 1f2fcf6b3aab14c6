using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.Trials;

// Life ratio = exp(mu_A - mu_B), times guess_A/guess_B where the groups' usual lives were guessed differently (lambda
// counts from each tool's own guess; the geometric mean stands for a group). The wear-rate ratio is its inverse.
//   a lasts longer: P > .95;  leaning: P > .90;  practically equal: the 90 % interval lies in .80 to 1.25
/// <summary>Two groups of one kind (two steels, lubricants, ways of cooling) compared by how long their tools last.</summary>
/// <param name="LifeRatio">Life of A in parts of that of B: an <see cref="Estimate"/>, or why there is none.</param>
/// <param name="ChanceALastsLonger">0 to 1; null where there is no ratio.</param>
/// <param name="Verdict">What may be said.</param>
public sealed record GroupComparison(Estimated LifeRatio, double? ChanceALastsLonger, TrialVerdict Verdict)
{
    private const int LeastTools = 2;
    private const double Sure = 0.95;
    private const double Leaning = 0.90;
    private const double EqualFrom = 0.80;
    private const double EqualTo = 1.25;

    /// <summary>The wear rate of A in parts of that of B, the inverse of the life ratio.</summary>
    public Estimated RateRatio =>
        LifeRatio is Estimate life ? new Estimate(1 / life.Value, 1 / life.High90!.Value, 1 / life.Low90) : LifeRatio;

    /// <summary>Compares two groups; the kind's other groups help to know the kind.</summary>
    /// <param name="kind">Histories of one kind.</param>
    /// <param name="a">The first group.</param>
    /// <param name="b">The second group, another one.</param>
    /// <returns>The comparison; without a ratio where either group has fewer than two tools that were read.</returns>
    /// <exception cref="ArgumentException">The histories are of more than one kind, or the groups are the same.</exception>
    public static GroupComparison Of(IReadOnlyList<WearHistory> kind, string a, string b)
    {
        if (a == b || kind.Any(history => history.Kind != kind[0].Kind))
        {
            throw new ArgumentException("two different groups of one kind can be compared", nameof(kind));
        }

        int fewest = Math.Min(Read(kind, a), Read(kind, b));
        if (fewest < LeastTools)
        {
            return new GroupComparison(
                new NotEnoughData(fewest, LeastTools, "each group needs two tools that were read"),
                null,
                TrialVerdict.NotEnoughData
            );
        }

        using KindPool pool = KindPool.Of(kind).Pool;
        double[] difference = MuDifference.Of(pool, KindPool.GroupNumber(kind, a), KindPool.GroupNumber(kind, b));
        return Of(difference, LogGuess(kind, a) - LogGuess(kind, b));
    }

    private static GroupComparison Of(double[] difference, double logGuessRatio)
    {
        double Ratio(double p) =>
            Math.Exp(logGuessRatio + GridQuantiles.Of(difference, MuDifference.First, Grid.MuStep, p));
        Estimate ratio = new(Ratio(0.5), Ratio(0.05), Ratio(0.95));
        double chance = GridQuantiles.Above(difference, MuDifference.First, Grid.MuStep, -logGuessRatio);
        return new GroupComparison(ratio, chance, VerdictOf(chance, ratio.Low90, ratio.High90!.Value));
    }

    internal static TrialVerdict VerdictOf(double chance, double low90, double high90) =>
        chance switch
        {
            > Sure => TrialVerdict.ALastsLonger,
            < 1 - Sure => TrialVerdict.BLastsLonger,
            > Leaning => TrialVerdict.LeaningToA,
            < 1 - Leaning => TrialVerdict.LeaningToB,
            _ when low90 >= EqualFrom && high90 <= EqualTo => TrialVerdict.PracticallyEqual,
            _ => TrialVerdict.NotEnoughData,
        };

    private static IEnumerable<WearHistory> Counted(IEnumerable<WearHistory> kind, string group) =>
        kind.Where(history => history.Group == group && history.LimitMm is not null && history.ReadingsInAll > 0);

    private static int Read(IEnumerable<WearHistory> kind, string group) => Counted(kind, group).Count();

    private static double LogGuess(IEnumerable<WearHistory> kind, string group) =>
        Counted(kind, group).Average(history => Math.Log(history.GuessHeats));
}
