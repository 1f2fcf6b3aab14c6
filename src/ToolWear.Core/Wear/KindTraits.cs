namespace ToolWear.Core.Wear;

/// <summary>What the readings of all tools of a kind say of the kind; each figure is an average of what is possible, of sigma, phi and tau the geometric one.</summary>
/// <param name="Sigma">Spread (sd) of a reading about the true wear, in shares of the limit.</param>
/// <param name="Phi">Variance of a wear increment in parts of its mean, in shares of the limit: uneven steel, scale, severity.</param>
/// <param name="Tau">Spread (sd) from tool to tool of the logarithm of the life.</param>
/// <param name="Power">The power b of the heats with which wear grows.</param>
/// <param name="ChanceRunsIn">P(b&lt;1): wear is fast at first and slows down.</param>
/// <param name="ChanceSpeedsUp">P(b&gt;1): wear speeds up towards the end.</param>
public sealed record KindTraits(
    double Sigma,
    double Phi,
    double Tau,
    double Power,
    double ChanceRunsIn,
    double ChanceSpeedsUp
);
