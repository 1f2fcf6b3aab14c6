namespace ToolWear.Core.Wear.Trials;

/// <summary>The pinned words of a verdict.</summary>
public static class TrialWords
{
    /// <summary>The words that files and programs know: "a lasts longer", "leaning to b", ...</summary>
    /// <param name="verdict">One of the six verdicts.</param>
    /// <returns>Lower-case words without a full stop.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the six.</exception>
    public static string Of(TrialVerdict verdict) =>
        verdict switch
        {
            TrialVerdict.NotEnoughData => "not enough data",
            TrialVerdict.ALastsLonger => "a lasts longer",
            TrialVerdict.BLastsLonger => "b lasts longer",
            TrialVerdict.LeaningToA => "leaning to a",
            TrialVerdict.LeaningToB => "leaning to b",
            TrialVerdict.PracticallyEqual => "practically equal",
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "is no verdict"),
        };
}
