using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The words of <see cref="SectionKind"/>.</summary>
public static class SectionKinds
{
    /// <summary>The words, as files and commands write them.</summary>
    public static Vocabulary<SectionKind> Words { get; } =
        new(
            "section",
            (SectionKind.Round, "round"),
            (SectionKind.Rectangle, "rectangle"),
            (SectionKind.Oval, "oval"),
            (SectionKind.Teardrop, "teardrop"),
            (SectionKind.Other, "other")
        );
}
