namespace ToolWear.Core.Sections;

/// <summary>The parts of a tool along its axis.</summary>
public enum BodyPart
{
    /// <summary>The leading end.</summary>
    Nose,

    /// <summary>Where it grows from the nose to its full size.</summary>
    Taper,

    /// <summary>The parallel part of full size.</summary>
    FullSize,

    /// <summary>What is held, or sticks out of the head.</summary>
    Shank,

    /// <summary>The end that is hit.</summary>
    StruckEnd,

    /// <summary>Any other part.</summary>
    Body,
}
