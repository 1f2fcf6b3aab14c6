using System.Diagnostics.CodeAnalysis;
using MathNet.Numerics;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning.Lives;

// S(t) = exp(-(t/eta)^b),  f(t) = (b/eta) (t/eta)^(b-1) S(t),  mean = eta Gamma(1 + 1/b)
// integral of S from 0 to t = eta Gamma(1 + 1/b) P(1/b, (t/eta)^b), P the regularised incomplete gamma function
/// <summary>A Weibull life: what cracks and breaks leave of a tool that does not wear.</summary>
public sealed record WeibullLife : Life
{
    private WeibullLife(double shape, double scale) => (Shape, Scale) = (shape, scale);

    /// <summary>b: above 1 failures come late, below 1 early; 0.1 to 20.</summary>
    public double Shape { get; }

    /// <summary>eta in heats: 63 % have failed by then; 0.5 to 1 000 000.</summary>
    public double Scale { get; }

    /// <inheritdoc />
    public override double MeanHeats => Scale * SpecialFunctions.Gamma(1 + (1 / Shape));

    /// <summary>Takes the two figures.</summary>
    /// <param name="shape">b, 0.1 to 20.</param>
    /// <param name="scale">eta in heats, 0.5 to 1 000 000.</param>
    /// <param name="life">The life, where the figures can be.</param>
    /// <param name="refusal">Otherwise the reason, with the allowed range.</param>
    /// <returns>True where the figures can be.</returns>
    public static bool TryMake(
        double shape,
        double scale,
        [NotNullWhen(true)] out WeibullLife? life,
        [NotNullWhen(false)] out string? refusal
    )
    {
        refusal =
            FigureRange.Refuse("The shape of the failures", shape, 0.1, 20, "")
            ?? FigureRange.Refuse("The scale of the failures", scale, 0.5, 1_000_000, " heats");
        life = refusal is null ? new WeibullLife(shape, scale) : null;
        return refusal is null;
    }

    /// <inheritdoc />
    public override double Surviving(double heats) => Math.Exp(-Math.Pow(heats / Scale, Shape));

    /// <inheritdoc />
    public override double Density(double heats) =>
        Shape / Scale * Math.Pow(heats / Scale, Shape - 1) * Surviving(heats);

    /// <summary>The heats that a tool stands on average if it is taken out at an age: the integral of S from 0 to t.</summary>
    /// <param name="heats">t, zero or more.</param>
    /// <returns>Heats, no more than t.</returns>
    public double MeanHeatsWithin(double heats) =>
        heats <= 0 ? 0 : MeanHeats * SpecialFunctions.GammaLowerRegularized(1 / Shape, Math.Pow(heats / Scale, Shape));
}
