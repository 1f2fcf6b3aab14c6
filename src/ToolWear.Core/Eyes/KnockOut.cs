namespace ToolWear.Core.Eyes;

/// <summary>How hot drift and eye are when the drift is knocked out and the eye's size is frozen.</summary>
/// <remarks>A shop sets it for each place in a series.</remarks>
/// <param name="Drift">The drift, which shrinks again too.</param>
/// <param name="Eye">The head round the eye.</param>
public sealed record KnockOut(SteelTemperature Drift, SteelTemperature Eye)
{
    /// <summary>A rough drift's usual temperatures: drift 250, eye 925 C (common practice, no source).</summary>
    public static KnockOut Rough { get; } = new(SteelTemperature.Of(250), SteelTemperature.Of(925));

    /// <summary>A finish drift's usual temperatures: drift 250, eye 750 C (common practice, no source).</summary>
    public static KnockOut Finish { get; } = new(SteelTemperature.Of(250), SteelTemperature.Of(750));

    // (1 + e(T_drift)) / (1 + e(T_eye)), EN 1993-1-2, 3.4.1.1
    private double Ratio => (1 + Drift.Elongation) / (1 + Eye.Elongation);

    /// <summary>The cold eye that a drift makes: E = D (1 + e(T_drift)) / (1 + e(T_eye)).</summary>
    /// <param name="driftMm">The cold drift D in mm.</param>
    /// <returns>The cold eye E in mm.</returns>
    public double EyeMm(double driftMm) => driftMm * Ratio;

    /// <summary>The cold drift that makes an eye: D = E (1 + e(T_eye)) / (1 + e(T_drift)).</summary>
    /// <param name="eyeMm">The cold eye E in mm.</param>
    /// <returns>The cold drift D in mm.</returns>
    public double DriftMm(double eyeMm) => eyeMm / Ratio;

    /// <summary>The cold eye both ways.</summary>
    /// <param name="drift">The cold drift.</param>
    /// <returns>The cold eye.</returns>
    public EyeSize Eyes(EyeSize drift) => new(EyeMm(drift.LengthMm), EyeMm(drift.WidthMm));
}
