using System.Collections.Immutable;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Findings;

/// <summary>What is to be done with a tool, worst first. Wear says nothing of cracks: no verdict calls a tool fit.</summary>
public enum Verdict
{
    /// <summary>Cracked in its working part, broken, or soft or glass-hard and not hardened or tempered again.</summary>
    Out,

    /// <summary>Something has to be done before it is used: dress, cut back, straighten, temper, re-harden, re-handle.</summary>
    DressFirst,

    /// <summary>More likely past its limit than not, or read past its scrap size.</summary>
    PastItsLimit,

    /// <summary>The next usual session may well take it past.</summary>
    NearItsLimit,

    /// <summary>Not found sound since its last heats.</summary>
    LookItOver,

    /// <summary>A reading is overdue.</summary>
    MeasureIt,

    /// <summary>Nobody knows at which size it is done, or what size it has.</summary>
    NoLimitKnown,

    /// <summary>None of these.</summary>
    InsideItsLimit,
}

/// <summary>One thing that is to be said of a tool.</summary>
/// <param name="Verdict">The verdict that it gives.</param>
/// <param name="Why">One sentence without a full stop.</param>
/// <param name="Deed">What has to be done first, in a word; null for other verdicts.</param>
public sealed record Reason(Verdict Verdict, string Why, string? Deed = null);

/// <summary>The verdict on a tool, with every reason there is.</summary>
/// <param name="Reasons">At least one, the worst first.</param>
/// <param name="MayBeNext">Whether it may be offered: inside its limit, looked over since its last heats, and no finding
/// that forbids it. Whoever looks it over decides.</param>
public sealed record Judged(ImmutableArray<Reason> Reasons, bool MayBeNext)
{
    /// <summary>The words of <see cref="Findings.Verdict"/>.</summary>
    public static Vocabulary<Verdict> Words { get; } =
        new(
            "verdict",
            (Verdict.Out, "out"),
            (Verdict.DressFirst, "dress first"),
            (Verdict.PastItsLimit, "past its limit"),
            (Verdict.NearItsLimit, "near its limit"),
            (Verdict.LookItOver, "look it over"),
            (Verdict.MeasureIt, "measure it"),
            (Verdict.NoLimitKnown, "no limit known"),
            (Verdict.InsideItsLimit, "inside its limit")
        );

    /// <summary>The verdict, that of the worst reason.</summary>
    public Verdict Verdict => Reasons[0].Verdict;

    /// <summary>Every reason, the worst first, without a full stop.</summary>
    public string Why => string.Join("; ", Reasons.Select(each => each.Why));

    /// <summary>The verdict's word in files.</summary>
    public string Word => Words.Word(Verdict);

    /// <summary>The verdict for people: where something has to be done first, what.</summary>
    public string Shown => Verdict == Verdict.DressFirst && Reasons[0].Deed is { } deed ? $"{deed} first" : Word;
}
