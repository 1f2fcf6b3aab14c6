using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning;

/// <summary>The eye that a handle as bought asks for.</summary>
public static class HandleEye
{
    /// <summary>What a handle has to spare in a wedged eye, either way. Common practice, no source.</summary>
    public static Length Spare { get; } = Length.FromMm(0.3m);

    /// <summary>Gives a handle its eye: one that tapers slips on and seats on its taper, others are wedged with a little to
    /// spare.</summary>
    /// <param name="handle">The handle.</param>
    /// <param name="name">The eye's name.</param>
    /// <param name="section">The shape of the eye.</param>
    /// <returns>The eye; its nose radius and its depth are not known.</returns>
    public static EyeDescribed Of(HandleDescribed handle, string name, SectionKind section)
    {
        bool slipsOn = handle.Taper is > 0;
        Length spare = slipsOn ? Length.Zero : Spare;
        return new EyeDescribed(
            name,
            section,
            handle.Length + spare,
            handle.Width + spare,
            null,
            null,
            handle.Taper,
            handle.Taper,
            slipsOn ? Fit.SlipOn : Fit.Wedged,
            slipsOn ? Driving.OneFace : Driving.BothFaces,
            null,
            null,
            null,
            null,
            handle.Name
        );
    }
}
