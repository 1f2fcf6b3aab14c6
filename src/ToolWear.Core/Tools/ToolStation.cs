using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Tools;

/// <summary>A part of a tool's body.</summary>
public enum ToolPart
{
    /// <summary>The end that goes in first.</summary>
    Nose,

    /// <summary>Where it thickens.</summary>
    Taper,

    /// <summary>The part that gives the size.</summary>
    FullSize,

    /// <summary>What is held.</summary>
    Shank,

    /// <summary>The end that is struck.</summary>
    StruckEnd,

    /// <summary>The whole of a tool without parts.</summary>
    Body,
}

/// <summary>A station of a tool's body: its section at a distance from the shank mark.</summary>
/// <param name="Part">The part of the tool it lies on.</param>
/// <param name="FromMark">The distance from the shank mark, zero or more.</param>
/// <param name="Section">The section there.</param>
public sealed record ToolStation(ToolPart Part, Length FromMark, Section Section)
{
    /// <summary>The words of <see cref="ToolPart"/>.</summary>
    public static Vocabulary<ToolPart> PartWords { get; } =
        new(
            "part",
            (ToolPart.Nose, "nose"),
            (ToolPart.Taper, "taper"),
            (ToolPart.FullSize, "full-size"),
            (ToolPart.Shank, "shank"),
            (ToolPart.StruckEnd, "struck-end"),
            (ToolPart.Body, "body")
        );
}
