using MathNet.Numerics.Integration;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Planning.Decisions;

// R. E. Barlow and F. Proschan (1965), Mathematical Theory of Reliability, 4.2:
//   c(t) = (cp S(t) + cf F(t)) / I(t),  I(t) = integral of S from 0 to t;  run to failure: cf / mean
//   least where  h(t) I(t) - F(t) = cp / (cf - cp),  h = f / S
/// <summary>When to pull a tool early that may fail suddenly.</summary>
/// <param name="AtHeats">t, the age in heats at which to pull it; null where running to failure is cheapest.</param>
/// <param name="CostAHeat">Cost a heat with that rule, in the money of the two costs.</param>
/// <param name="RunToFailureAHeat">Cost a heat when it is always run to failure.</param>
public sealed record AgeReplacement(double? AtHeats, double CostAHeat, double RunToFailureAHeat) : Estimated
{
    private const int Panels = 48;
    private const int Order = 16;

    // hardly any tool stands longer
    private const double AlmostNone = 1e-9;

    /// <summary>Finds the age.</summary>
    /// <param name="life">The life.</param>
    /// <param name="costPlanned">cp, what a planned change costs, above zero.</param>
    /// <param name="costFailure">cf, what a failure costs, above zero.</param>
    /// <param name="failures">How many failures the life rests on; below two nothing is said.</param>
    /// <returns>An <see cref="AgeReplacement"/>, or <see cref="NotEnoughData"/>: then use the tool to its limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A cost is not above zero.</exception>
    public static Estimated Of(Life life, double costPlanned, double costFailure, int failures)
    {
        double cp = Finite.Positive(costPlanned);
        double cf = Finite.Positive(costFailure);
        if (failures < 2)
        {
            return new NotEnoughData(failures, 2, "too few tools failed suddenly to say when");
        }

        double toFailure = cf / life.MeanHeats;
        if (cf <= cp)
        {
            return new AgeReplacement(null, toFailure, toFailure);
        }

        double last = life.MeanHeats;
        while (life.Surviving(last) > AlmostNone)
        {
            last *= 1.5;
        }

        double Gain(double t) =>
            t <= 0 ? 0 : (life.Density(t) / life.Surviving(t) * I(life, t)) - 1 + life.Surviving(t);
        double? at = RisingRoot.Of(Gain, cp / (cf - cp), 0, last, life.MeanHeats / 16);
        double cost = at is { } age ? CostAHeatAt(life, cp, cf, age) : toFailure;
        return cost < toFailure
            ? new AgeReplacement(at, cost, toFailure)
            : new AgeReplacement(null, toFailure, toFailure);
    }

    /// <summary>c(t): the cost a heat when a tool is pulled at an age.</summary>
    /// <param name="life">The life.</param>
    /// <param name="costPlanned">cp.</param>
    /// <param name="costFailure">cf.</param>
    /// <param name="atHeats">t, above zero.</param>
    /// <returns>Cost a heat.</returns>
    public static double CostAHeatAt(Life life, double costPlanned, double costFailure, double atHeats)
    {
        double S = life.Surviving(Finite.Positive(atHeats));
        return ((costPlanned * S) + (costFailure * (1 - S))) / I(life, atHeats);
    }

    private static double I(Life life, double t)
    {
        double sum = 0;
        for (int i = 0; i < Panels; i++)
        {
            sum += GaussLegendreRule.Integrate(life.Surviving, t * i / Panels, t * (i + 1) / Panels, Order);
        }

        return sum;
    }
}
