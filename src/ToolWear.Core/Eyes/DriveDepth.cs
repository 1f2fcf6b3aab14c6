using ToolWear.Core.Measure;

namespace ToolWear.Core.Eyes;

/// <summary>How deep to drive a drift: a new mark, or why no depth serves.</summary>
/// <remarks>A closed family: <see cref="DriveTo"/> and <see cref="NoDepth"/>.</remarks>
public abstract record DriveDepth
{
    private protected DriveDepth() { }
}

/// <summary>Drive it to a new mark.</summary>
/// <param name="DeeperMm">How much deeper than the present mark, s; below zero less deep.</param>
/// <param name="Mark">The new mark, from the shank mark towards the nose.</param>
/// <param name="MarkIn64ths">The new mark to the nearest 1/64 in, for showing.</param>
/// <param name="Eye">The cold eye at that depth, both ways.</param>
public sealed record DriveTo(double DeeperMm, Length Mark, Length MarkIn64ths, EyeSize Eye) : DriveDepth;

/// <summary>The drift is at its end: no depth makes an eye inside the tolerance.</summary>
/// <param name="End">What stands in the way.</param>
/// <param name="Why">The same as a sentence.</param>
public sealed record NoDepth(DriveEnd End, string Why) : DriveDepth;

/// <summary>What ends a drift that can be driven no deeper.</summary>
public enum DriveEnd
{
    /// <summary>A way without taper is out of tolerance, and no depth changes it.</summary>
    NoTaper,

    /// <summary>Where the length is inside its tolerance the width is not.</summary>
    LengthAgainstWidth,

    /// <summary>The mark would run off the taper on to the full-size part, past the shank mark or off the nose.</summary>
    MarkRunsOff,

    /// <summary>The nose would meet the bolster.</summary>
    NoseMeetsBolster,
}
