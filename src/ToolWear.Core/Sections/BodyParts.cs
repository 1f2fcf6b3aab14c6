using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The words of <see cref="BodyPart"/>.</summary>
public static class BodyParts
{
    /// <summary>The words, as files write them.</summary>
    public static Vocabulary<BodyPart> Words { get; } =
        new(
            "part",
            (BodyPart.Nose, "nose"),
            (BodyPart.Taper, "taper"),
            (BodyPart.FullSize, "full-size"),
            (BodyPart.Shank, "shank"),
            (BodyPart.StruckEnd, "struck-end"),
            (BodyPart.Body, "body")
        );
}
