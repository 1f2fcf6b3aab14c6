using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>The shapes of a drift, an eye or a bar, cut across.</summary>
public enum SectionKind
{
    /// <summary>A circle.</summary>
    Round,

    /// <summary>A rectangle, its edges sharp or rounded.</summary>
    Rectangle,

    /// <summary>An ellipse.</summary>
    Oval,

    /// <summary>A round back and a smaller round nose with straight cheeks between them.</summary>
    Teardrop,

    /// <summary>Any other shape: it is written down, but has no <see cref="Section"/> and nothing is worked out from it.</summary>
    Other,
}

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
