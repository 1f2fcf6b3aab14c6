namespace ToolWear.Core.Measure;

/// <summary>A figure that was worked out from records: either numbers with their uncertainty, or the reason why there is none.</summary>
/// <remarks>A closed family: <see cref="Estimate"/>, <see cref="NotEnoughData"/>, and the forecasts of wear, which hold
/// several figures. Never NaN, never a default.</remarks>
public abstract record Estimated
{
    private protected Estimated() { }
}

/// <summary>A number with an interval that holds it nine times in ten.</summary>
/// <param name="Value">The middle figure, in the unit that its owner names.</param>
/// <param name="Low90">The lower end: one time in twenty the truth lies below.</param>
/// <param name="High90">The upper end, or null where the records do not bound it.</param>
public sealed record Estimate(double Value, double Low90, double? High90) : Estimated;

/// <summary>There is no figure yet.</summary>
/// <param name="Has">How many readings there are, zero or more.</param>
/// <param name="Needs">How many it takes, at least one.</param>
/// <param name="Why">What is missing, in the smith's words, without a full stop: "no reading since it was dressed".</param>
public sealed record NotEnoughData(int Has, int Needs, string Why) : Estimated;
