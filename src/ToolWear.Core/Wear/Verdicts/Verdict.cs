using ToolWear.Core.Measure;

namespace ToolWear.Core.Wear.Verdicts;

/// <summary>What is to be done with a tool, worst first. Wear says nothing of cracks: no verdict calls a tool fit.</summary>
public enum Verdict
{
    /// <summary>Cracked, broken, or soft or glass-hard and not hardened again.</summary>
    Out,

    /// <summary>Mushroomed, chipped, loose in its handle or picked-up.</summary>
    DressFirst,

    /// <summary>More likely past its limit than not.</summary>
    PastItsLimit,

    /// <summary>The next usual session may well take it past.</summary>
    NearItsLimit,

    /// <summary>Not found sound since its last heats.</summary>
    LookItOver,

    /// <summary>A reading is overdue.</summary>
    MeasureIt,

    /// <summary>None of these.</summary>
    InsideItsLimit,
}

/// <summary>A verdict with the sentence that says why.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Why">One sentence without a full stop.</param>
public sealed record Judged(Verdict Verdict, string Why)
{
    /// <summary>The words of <see cref="Verdicts.Verdict"/>.</summary>
    public static Vocabulary<Verdict> Words { get; } =
        new(
            "verdict",
            (Verdict.Out, "out"),
            (Verdict.DressFirst, "dress first"),
            (Verdict.PastItsLimit, "past its limit"),
            (Verdict.NearItsLimit, "near its limit"),
            (Verdict.LookItOver, "look it over"),
            (Verdict.MeasureIt, "measure it"),
            (Verdict.InsideItsLimit, "inside its limit")
        );

    /// <summary>The verdict's word.</summary>
    public string Word => Words.Word(Verdict);
}
