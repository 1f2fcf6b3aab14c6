namespace ToolWear.Core.Wear.Figures;

/// <summary>What the readings of all tools of a kind say of the kind; each figure is an average of what is possible, of sigma, phi and tau the geometric one.</summary>
/// <param name="Sigma">Spread (sd) of a reading about the true wear, in shares of the limit.</param>
/// <param name="Phi">Variance of a wear increment in parts of its mean, in shares of the limit: uneven steel, scale, severity.</param>
/// <param name="Tau">Spread (sd) from tool to tool of the logarithm of the life.</param>
/// <param name="Power">The power b1 of the heats with which the steady wear grows.</param>
/// <param name="ChanceOfFirstCut">P(a&gt;0): a share of the limit goes in the first few heats.</param>
/// <param name="ChanceOfFaster">P(d&gt;0): the last part of the wear runs faster.</param>
/// <param name="ChanceOfSlower">P(d&lt;0): the last part of the wear runs slower.</param>
public sealed record KindTraits(
    double Sigma,
    double Phi,
    double Tau,
    double Power,
    double ChanceOfFirstCut,
    double ChanceOfFaster,
    double ChanceOfSlower
);
