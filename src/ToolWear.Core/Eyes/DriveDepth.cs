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
public sealed record DriveTo(double DeeperMm, Length Mark, Length MarkIn64ths, EyeSize Eye) : DriveDepth
{
    /// <summary>The new mark as a smith scribes it: to 1/64 in where the shop speaks in inches.</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>The mark, from the shank mark.</returns>
    public Length MarkFor(LengthUnit unit) => unit == LengthUnit.Inch ? MarkIn64ths : Mark;
}

/// <summary>The drift is at its end: no depth makes an eye inside the tolerance.</summary>
/// <param name="End">What stands in the way.</param>
/// <param name="IsOfLength">Whether it is the length that wants the depth, or has no taper; else the width.</param>
/// <param name="WantsMm">How much deeper that way wants at least; below zero less deep. 0 where no depth helps.</param>
/// <param name="AtMostMm">How much deeper it can go at most, by the other way or by the room there is.</param>
public sealed record NoDepth(DriveEnd End, bool IsOfLength, double WantsMm, double AtMostMm) : DriveDepth
{
    /// <summary>The reason as a sentence.</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>A sentence.</returns>
    public string Why(LengthUnit unit = LengthUnit.Mm)
    {
        string way = IsOfLength ? "length" : "width";
        string other = IsOfLength ? "width" : "length";
        string mark = SizeShown.Mark(unit);
        string Depth(double mm) => (mm < 0 ? "-" : "") + SizeShown.Eye(Length.FromMm(Math.Abs(mm)), unit);
        string deeper = $"It would have to go {Depth(WantsMm)} {mark} deeper";
        return End switch
        {
            DriveEnd.NoTaper => $"The {way} is out of tolerance and has no taper to make it up.",
            DriveEnd.DrivenThrough => "It is driven right through: no depth makes up for its wear.",
            DriveEnd.LengthAgainstWidth =>
                $"The {way} needs {Depth(WantsMm)} {mark} more depth at least, the {other} allows {Depth(AtMostMm)} at most.",
            DriveEnd.MarkRunsOff when WantsMm < 0 =>
                $"It would have to go {Depth(-WantsMm)} {mark} less deep, off its nose.",
            DriveEnd.MarkRunsOff => $"{deeper}, and the mark runs off the taper after {Depth(AtMostMm)}.",
            _ => $"{deeper}, and the nose meets the bolster after {Depth(AtMostMm)}.",
        };
    }
}

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

    /// <summary>It is driven right through, and no depth makes up for wear.</summary>
    DrivenThrough,
}
