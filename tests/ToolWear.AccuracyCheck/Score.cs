using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.AccuracyCheck;

// K = true heats left, T = true life; IS = (hi-lo) + (2/a) max(0, lo-K) + (2/a) max(0, K-hi), a = .1
// (Gneiting and Raftery 2007, J. Am. Stat. Assoc. 102:359)
/// <summary>One forecast against the truth.</summary>
/// <param name="Cell">The scenario and the number of readings it counts in.</param>
/// <param name="Error">The error of the median over the true life.</param>
/// <param name="In90">Whether the 90 % interval holds the truth.</param>
/// <param name="In80">Whether the 80 % interval does.</param>
/// <param name="Below80">Whether the truth lies below the 80 % interval.</param>
/// <param name="IntervalScore">IS of the 90 % interval over the true life.</param>
internal sealed record Score(
    (Scenario Scenario, int Readings) Cell,
    double Error,
    bool In90,
    bool In80,
    bool Below80,
    double IntervalScore
)
{
    /// <summary>Forecasts the first tool of a history and scores it.</summary>
    /// <returns>The score; null where the forecast gives no bound or bounds out of order.</returns>
    public static Score? Of(SimulatedHistory history)
    {
        if (SisterForecasts.Of(history.Kind).Tools[0] is not SisterForecast forecast)
        {
            return null;
        }

        HeatsLeft left = forecast.HeatsLeftIfNotPast;
        if (left is not { Q05: { } lo90, Q10: { } lo80, Q50: { } middle, Q90: { } hi80, Q95: { } hi90 })
        {
            return null;
        }

        bool isInOrder = lo90 >= 0 && lo90 <= lo80 && lo80 <= middle && middle <= hi80 && hi80 <= hi90;
        double K = history.Left;
        double T = history.Life;
        double missed = Math.Max(0, lo90 - K) + Math.Max(0, K - hi90);
        return isInOrder
            ? new(
                (history.Scenario, history.Readings),
                Math.Abs(middle - K) / T,
                lo90 <= K && K <= hi90,
                lo80 <= K && K <= hi80,
                K < lo80,
                (hi90 - lo90 + (2 / 0.1 * missed)) / T
            )
            : null;
    }
}
