using MathNet.Numerics;
using ToolWear.Core.Wear.Lifetimes;

namespace ToolWear.Core.Planning.Lives;

// S(t) = average over (b, eta) of exp(-(t/eta)^b),  f = average of (b/eta) (t/eta)^(b-1) S,  mean = average of
// eta Gamma(1 + 1/b)
/// <summary>A life that sudden failures end, as the records of a sort of tool say it, their uncertainty averaged over.</summary>
public sealed record SuddenLife : Life
{
    private readonly (double Weight, double Shape, double Scale)[] points;

    private SuddenLife((double Weight, double Shape, double Scale)[] points)
    {
        this.points = points;
        MeanHeats = points.Sum(each => each.Weight * each.Scale * SpecialFunctions.Gamma(1 + (1 / each.Shape)));
    }

    /// <inheritdoc />
    public override double MeanHeats { get; }

    /// <summary>The life that the records give.</summary>
    /// <param name="failures">The failures on record.</param>
    /// <returns>The life: by the fit from eight failures on, else by the curve with a prior.</returns>
    public static SuddenLife Of(SuddenFailures failures) =>
        failures.Fit is WeibullFit { Failures: >= WeibullFit.EnoughFailures } fit
            ? new SuddenLife([(1, fit.Shape, fit.Scale)])
            : new SuddenLife([.. failures.WithPrior.Thinned()]);

    /// <inheritdoc />
    public override double Surviving(double heats) =>
        points.Sum(each => each.Weight * Math.Exp(-Math.Pow(heats / each.Scale, each.Shape)));

    /// <inheritdoc />
    public override double Density(double heats) =>
        points.Sum(each =>
            each.Weight
            * each.Shape
            / each.Scale
            * Math.Pow(heats / each.Scale, each.Shape - 1)
            * Math.Exp(-Math.Pow(heats / each.Scale, each.Shape))
        );
}
