namespace ToolWear.Core.Wear.Trials;

/// <summary>What a comparison of two groups allows to be said.</summary>
public enum TrialVerdict
{
    /// <summary>Neither lasts surely longer, nor are they surely alike, or fewer than two tools of a group were read.</summary>
    NotEnoughData,

    /// <summary>A lasts longer with a chance over 95 %: it wears slower.</summary>
    ALastsLonger,

    /// <summary>B lasts longer with a chance over 95 %.</summary>
    BLastsLonger,

    /// <summary>A lasts longer with a chance over 90 %.</summary>
    LeaningToA,

    /// <summary>B lasts longer with a chance over 90 %.</summary>
    LeaningToB,

    /// <summary>The ratio of their lives lies between 0.80 and 1.25, nine times in ten.</summary>
    PracticallyEqual,
}
