using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>A tool was made, or one in use was entered.</summary>
/// <param name="Tool">The tool.</param>
public sealed record ToolAdded(Tool Tool) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Tool.Eye, Tool.Steel, Tool.Lot, Tool.Peg];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Tool.Note];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool.Mark];
}

/// <summary>What is on record of a tool was wrong; what happened to it stays.</summary>
/// <param name="Tool">The tool as it is; its mark names the one that is corrected.</param>
/// <param name="Was">The tool as it was on record before; null in entries of earlier programs and of tables.</param>
/// <param name="Why">What was wrong; null where nobody says.</param>
public sealed record ToolCorrected(Tool Tool, Tool? Was = null, string? Why = null) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Tool.Eye, Tool.Steel, Tool.Lot, Tool.Peg];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Tool.Note, Why];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool.Mark];
}

/// <summary>A tool was stamped anew.</summary>
/// <param name="From">The mark it had.</param>
/// <param name="To">The mark it has now.</param>
public sealed record ToolRemarked(ToolMark From, ToolMark To) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [From, To];
}

/// <summary>The tool's history starts here: its next reading is where the wear is counted from.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="Why">Why: "the scale is off".</param>
public sealed record ToolStartedHere(ToolMark Tool, string? Why) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Why];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>A tool was laid aside for the time being.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Why">Why, null where nobody said.</param>
public sealed record ToolSetAside(ToolMark Tool, DateOnly On, string? Why) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Why];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>A tool that was set aside came back into service.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Why">Why, null where nobody said.</param>
public sealed record ToolBroughtBack(ToolMark Tool, DateOnly On, string? Why) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Why];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>What ended a tool.</summary>
public enum ScrapCause
{
    /// <summary>Worn to its limit.</summary>
    Worn,

    /// <summary>A crack in the working part.</summary>
    Cracked,

    /// <summary>It broke.</summary>
    Broken,

    /// <summary>Bent beyond straightening.</summary>
    Bent,

    /// <summary>Gone soft.</summary>
    Soft,

    /// <summary>Gone glass-hard.</summary>
    GlassHard,

    /// <summary>Lost.</summary>
    Lost,

    /// <summary>Re-worked into another tool.</summary>
    MadeInto,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>What led to the loss of a tool.</summary>
public enum LedTo
{
    /// <summary>Left in the hot work too long.</summary>
    LeftIn,

    /// <summary>Water on hot steel.</summary>
    Water,

    /// <summary>A blow beside the tool.</summary>
    MissedBlow,

    /// <summary>Struck while it was cold.</summary>
    StruckCold,

    /// <summary>Poor heat treatment.</summary>
    HeatTreatment,

    /// <summary>Nobody knows.</summary>
    NotKnown,
}

/// <summary>A tool is done, or was made into another.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Cause">What ended it.</param>
/// <param name="Into">The mark of the tool it was made into; only with <see cref="ScrapCause.MadeInto"/>.</param>
/// <param name="Note">A note, null where none.</param>
/// <param name="Part">Where it failed; null where nobody said.</param>
/// <param name="LedTo">What led to it; null where nobody was asked.</param>
public sealed record ToolScrapped(
    ToolMark Tool,
    DateOnly On,
    ScrapCause Cause,
    ToolMark? Into,
    string? Note,
    ToolPart? Part = null,
    LedTo? LedTo = null
) : LedgerEntry
{
    /// <summary>The words of <see cref="Ledger.LedTo"/>.</summary>
    public static Vocabulary<LedTo> LedToWords { get; } =
        new(
            "led_to",
            (Ledger.LedTo.LeftIn, "left-in"),
            (Ledger.LedTo.Water, "water"),
            (Ledger.LedTo.MissedBlow, "missed-blow"),
            (Ledger.LedTo.StruckCold, "struck-cold"),
            (Ledger.LedTo.HeatTreatment, "heat-treatment"),
            (Ledger.LedTo.NotKnown, "not-known")
        );

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <summary>The words of <see cref="ScrapCause"/>.</summary>
    public static Vocabulary<ScrapCause> CauseWords { get; } =
        new(
            "cause",
            (ScrapCause.Worn, "worn"),
            (ScrapCause.Cracked, "cracked"),
            (ScrapCause.Broken, "broken"),
            (ScrapCause.Bent, "bent"),
            (ScrapCause.Soft, "soft"),
            (ScrapCause.GlassHard, "glass-hard"),
            (ScrapCause.Lost, "lost"),
            (ScrapCause.MadeInto, "made-into"),
            (ScrapCause.Other, "other")
        );

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => Into is { } into ? [Tool, into] : [Tool];

    /// <summary>Whether it failed at its work: not lost, not made into another, not given up for another reason.</summary>
    public bool HasFailed => Cause is not (ScrapCause.Lost or ScrapCause.MadeInto or ScrapCause.Other);
}
