using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools;

/// <summary>What a heat is spent on.</summary>
public enum Work
{
    /// <summary>Opening the metal with a slitter or punch.</summary>
    Slitting,

    /// <summary>Widening the slit.</summary>
    Opening,

    /// <summary>Forging the cheeks on a drift that stands in the eye.</summary>
    Cheeks,

    /// <summary>Bringing the eye to size.</summary>
    Sizing,

    /// <summary>Drawing metal sideways with a fuller.</summary>
    Fullering,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>The words of <see cref="Work"/>.</summary>
public static class Works
{
    /// <summary>The words.</summary>
    public static Vocabulary<Work> Words { get; } =
        new(
            "work",
            (Work.Slitting, "slitting"),
            (Work.Opening, "opening"),
            (Work.Cheeks, "cheeks"),
            (Work.Sizing, "sizing"),
            (Work.Fullering, "fullering"),
            (Work.Other, "other")
        );
}
