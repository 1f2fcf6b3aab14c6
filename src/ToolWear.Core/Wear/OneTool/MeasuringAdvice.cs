using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.OneTool;

// next reading at half the median remaining, and always between 60 and 75 % of the limit, because wear that speeds up
// at the end cannot be seen before
/// <summary>When the caliper should come out next.</summary>
/// <param name="MoreHeats">In so many weighted heats; 0 is now.</param>
/// <param name="BecauseOfRunOut">True where the reading between 60 and 75 % of the limit is what calls for it.</param>
public sealed record MeasuringAdvice(double MoreHeats, bool BecauseOfRunOut)
{
    private const double RunOutFrom = 0.60;
    private const double RunOutTo = 0.75;

    /// <summary>The advice for one gauge mark.</summary>
    /// <param name="history">Its readings.</param>
    /// <param name="forecast">Its forecast with its sisters.</param>
    /// <returns>The heats until the next reading.</returns>
    public static MeasuringAdvice Of(WearHistory history, SisterForecast forecast)
    {
        double half = (forecast.HeatsLeft.Q50 ?? HeatsLeft.Most) / 2;
        if (WasReadInRunOut(history.Last, forecast.LimitMm) || forecast.AtOrPastLimit)
        {
            return new MeasuringAdvice(half, false);
        }

        // in the middle of the stretch, or at once where the wear is there already
        double? middle = forecast.HeatsToWear(forecast.LimitMm * (RunOutFrom + RunOutTo) / 2);
        bool isThere = forecast.WearNowMm >= RunOutFrom * forecast.LimitMm;
        double runOut = isThere ? 0 : middle ?? HeatsLeft.Most;
        return runOut < half ? new MeasuringAdvice(runOut, true) : new MeasuringAdvice(half, false);
    }

    private static bool WasReadInRunOut(WearSegment segment, double limitMm) =>
        segment.Readings.Any(reading => reading.WearMm >= RunOutFrom * limitMm);
}
