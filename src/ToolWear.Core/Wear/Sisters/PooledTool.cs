namespace ToolWear.Core.Wear.Sisters;

/// <summary>A tool among its sisters.</summary>
/// <param name="Record">What was measured, in shares of its limit.</param>
/// <param name="Group">The number of its group within the kind.</param>
/// <param name="Likelihood">Null where it was never read.</param>
internal sealed record PooledTool(ToolRecord Record, int Group, ToolLikelihood? Likelihood);
