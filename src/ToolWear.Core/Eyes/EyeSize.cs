using System.Runtime.InteropServices;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>Length and greatest width of an eye, or of the drift that fills it, as worked out in mm.</summary>
/// <param name="LengthMm">Along the eye.</param>
/// <param name="WidthMm">Across it, at the widest.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct EyeSize(double LengthMm, double WidthMm)
{
    /// <summary>The size of the eye that a section fills.</summary>
    /// <param name="section">The section.</param>
    /// <returns>Its length and width.</returns>
    public static EyeSize Of(Section section) => new(section.EyeLength.Mm, section.EyeWidth.Mm);

    /// <summary>The size both ways smaller.</summary>
    /// <param name="lengthMm">Taken from the length.</param>
    /// <param name="widthMm">Taken from the width.</param>
    /// <returns>The smaller size, which may be none at all.</returns>
    public EyeSize Less(double lengthMm, double widthMm) => new(LengthMm - lengthMm, WidthMm - widthMm);
}
