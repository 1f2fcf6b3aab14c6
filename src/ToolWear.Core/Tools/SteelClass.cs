namespace ToolWear.Core.Tools;

/// <summary>How a steel takes heat and water.</summary>
public enum SteelClass
{
    /// <summary>Does not harden.</summary>
    Mild,

    /// <summary>Hardens in oil or water.</summary>
    OilOrWater,

    /// <summary>Hardens in air.</summary>
    AirHardening,

    /// <summary>Nobody knows, or not among those named here: treated as the strictest.</summary>
    Unknown,
}

/// <summary>The class of a steel by its usual name. Common practice, no source.</summary>
public static class SteelClasses
{
    private static readonly string[] Mild =
        "MILD,1008,1010,1015,1018,1020,1022,1025,A36,S235,S275,S355,WROUGHT IRON".Split(',');

    private static readonly string[] OilOrWater =
        "1040,1045,1050,1060,1070,1075,1080,1084,1090,1095,4130,4140,4150,4340,5160,6150,52100,9260,C45,C60,42CRMO4,L6,O1,O2,S1,S2,S5,W1,W2".Split(
            ','
        );

    private static readonly string[] AirHardening =
        "H10,H11,H12,H13,H21,S7,A2,A6,D2,1.2343,1.2344,1.2379,AIR-HARDENING".Split(',');

    /// <summary>The class of a steel.</summary>
    /// <param name="steel">Its name; null where nobody knows it.</param>
    /// <returns>Its class; unknown for a name that stands in no list.</returns>
    public static SteelClass Of(string? steel) =>
        steel?.Trim().ToUpperInvariant() is not { } name ? SteelClass.Unknown
        : Mild.Contains(name, StringComparer.Ordinal) ? SteelClass.Mild
        : OilOrWater.Contains(name, StringComparer.Ordinal) ? SteelClass.OilOrWater
        : AirHardening.Contains(name, StringComparer.Ordinal) ? SteelClass.AirHardening
        : SteelClass.Unknown;
}
