namespace ToolWear.Core.Measure;

/// <summary>The unit a shop speaks in.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Mm,

    /// <summary>Inches, eyes and bars in fractions.</summary>
    Inch,
}
