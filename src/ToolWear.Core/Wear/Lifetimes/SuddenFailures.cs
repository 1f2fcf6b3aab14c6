using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Lifetimes;

/// <summary>What the recorded lifetimes say about cracks and breaks, and that combined with wear.</summary>
public sealed class SuddenFailures
{
    private SuddenFailures(int failures, Estimated fit, WeibullWithPrior withPrior) =>
        (Failures, Fit, WithPrior) = (failures, fit, withPrior);

    /// <summary>How many tools failed suddenly.</summary>
    public int Failures { get; }

    /// <summary>The <see cref="WeibullFit"/>, or why there is none.</summary>
    public Estimated Fit { get; }

    /// <summary>The curve with a prior.</summary>
    public WeibullWithPrior WithPrior { get; }

    /// <summary>Reads the lifetimes.</summary>
    /// <param name="lifetimes">The tools of one sort, in any order.</param>
    /// <param name="guessHeats">How many heats such a tool usually lasts, above zero.</param>
    /// <returns>Both curves.</returns>
    public static SuddenFailures Of(IReadOnlyCollection<WatchedLife> lifetimes, double guessHeats) =>
        new(lifetimes.Count(life => life.Failed), WeibullFit.Of(lifetimes), WeibullWithPrior.Of(lifetimes, guessHeats));

    /// <summary>S_crack(t): by the fit from eight failures on, else by the curve with a prior.</summary>
    /// <param name="heats">Heats from new, zero or more.</param>
    /// <returns>The share that has not failed, 0 to 1.</returns>
    public double Surviving(double heats) =>
        Fit is WeibullFit fit && fit.Failures >= WeibullFit.EnoughFailures
            ? fit.Surviving(heats)
            : WithPrior.Surviving(heats);

    // S(k) = (1 - F_wear(k)) S_crack(n+k)/S_crack(n)
    /// <summary>The chance that a tool that stands at n heats neither cracks nor passes its limit within k more.</summary>
    /// <param name="wear">Its wear.</param>
    /// <param name="heatsFromNew">n, all its heats since it was made; sudden failures know no rework.</param>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>Between 0 and 1.</returns>
    public double ChanceInService(Forecast wear, double heatsFromNew, double moreHeats) =>
        (1 - wear.ChancePastLimit(moreHeats)) * ChanceStanding(heatsFromNew, moreHeats);

    /// <summary>S_crack(n+k)/S_crack(n), the chance that a tool that stands at n heats does not crack within k more.</summary>
    /// <param name="heatsFromNew">n, zero or more.</param>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>Between 0 and 1.</returns>
    public double ChanceStanding(double heatsFromNew, double moreHeats)
    {
        double standing = Surviving(heatsFromNew);
        return standing > 0 ? Surviving(heatsFromNew + moreHeats) / standing : 0;
    }

    /// <summary>Heats left until it cracks or passes its limit, given that it has done neither.</summary>
    /// <param name="wear">Its wear.</param>
    /// <param name="heatsFromNew">All its heats since it was made.</param>
    /// <returns>The quantiles.</returns>
    public HeatsLeft HeatsLeft(Forecast wear, double heatsFromNew)
    {
        double F(double k) => 1 - ChanceInService(wear, heatsFromNew, k);
        return wear.AtOrPastLimit
            ? Figures.HeatsLeft.None
            : Figures.HeatsLeft.Of(F, F(0), Math.Max(1, heatsFromNew) / 16);
    }
}
