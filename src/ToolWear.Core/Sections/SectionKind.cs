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
