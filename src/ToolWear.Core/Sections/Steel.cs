namespace ToolWear.Core.Sections;

/// <summary>The weight of steel.</summary>
public static class Steel
{
    /// <summary>Density of steel in kg/m3: 7850 (EN 1993-1-2, 3.1; EN 1991-1-1 gives 77.0-78.5 kN/m3).</summary>
    /// <remarks>Tool steels differ little: H13 7800.</remarks>
    public const double DensityKgPerM3 = 7850;

    /// <summary>The mass of a volume of steel.</summary>
    /// <param name="volumeMm3">The volume in mm3.</param>
    /// <returns>The mass in kg.</returns>
    public static double MassKg(double volumeMm3) => volumeMm3 * 1e-9 * DensityKgPerM3;
}
