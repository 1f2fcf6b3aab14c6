using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>What cools the tools between heats.</summary>
public enum Cooling
{
    /// <summary>Still air.</summary>
    Air,

    /// <summary>A dip once it is black.</summary>
    DipWhenBlack,

    /// <summary>Compressed air.</summary>
    CompressedAir,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>How a session's tools are cared for; null where the shop's usual holds.</summary>
/// <param name="Lubricant">The lubricant.</param>
/// <param name="Cooling">The cooling.</param>
/// <param name="Blows">Blows before the tool comes out, 1 to 1000.</param>
public sealed record Care(string? Lubricant, Cooling? Cooling, int? Blows)
{
    /// <summary>The shop's usual in everything.</summary>
    public static Care Usual { get; } = new(null, null, null);

    /// <summary>The words of <see cref="Ledger.Cooling"/>.</summary>
    public static Vocabulary<Cooling> CoolingWords { get; } =
        new(
            "cooling",
            (Ledger.Cooling.Air, "air"),
            (Ledger.Cooling.DipWhenBlack, "dip when black"),
            (Ledger.Cooling.CompressedAir, "compressed air"),
            (Ledger.Cooling.Other, "other")
        );
}

/// <summary>A tool chosen for a session.</summary>
/// <param name="Tool">Its mark.</param>
/// <param name="Work">The work its heats are tallied as.</param>
/// <param name="Together">Whether it works in one heat with the others of which that is said.</param>
public sealed record ToolAtHammer(ToolMark Tool, Work Work, bool Together);

/// <summary>A session at the hammer began.</summary>
/// <param name="Session">Its name, unique: "2026-05-01", "2026-05-01-2".</param>
/// <param name="On">Its day; one over midnight belongs to this day.</param>
/// <param name="Pattern">The pattern forged, null where nobody said.</param>
/// <param name="Care">Lubricant, cooling, blows.</param>
/// <param name="Hand">Who worked, null where nobody said.</param>
/// <param name="Note">A note, null where none.</param>
/// <param name="AtHammer">The tools chosen for it, in the order of their keys; null where nobody chose.</param>
public sealed record SessionOpened(
    string Session,
    DateOnly On,
    string? Pattern,
    Care Care,
    string? Hand,
    string? Note,
    ImmutableArray<ToolAtHammer>? AtHammer = null
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Pattern, Care.Lubricant, Hand];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];
}

/// <summary>A session ended.</summary>
/// <param name="Session">Its name.</param>
/// <param name="Heads">Heads finished, zero or more, null where nobody counted.</param>
public sealed record SessionClosed(string Session, int? Heads) : LedgerEntry;

/// <summary>Heads were done at a stage of the session's pattern.</summary>
/// <param name="Session">The session's name.</param>
/// <param name="Stage">The stage's name, one of the session's pattern.</param>
/// <param name="Heads">How many, 1 to 10000; they add to those counted there before.</param>
public sealed record HeadsDone(string Session, string Stage, int Heads) : LedgerEntry;

/// <summary>How heats came into the ledger.</summary>
public enum HeatsHow
{
    /// <summary>Counted at the hammer.</summary>
    Counted,

    /// <summary>Estimated afterwards.</summary>
    Estimated,
}

/// <summary>A tool worked some heats.</summary>
/// <param name="Session">The session's name.</param>
/// <param name="Tool">The tool's mark.</param>
/// <param name="Work">What they were spent on.</param>
/// <param name="Heats">How many, as worked.</param>
/// <param name="How">Counted or estimated.</param>
public sealed record HeatsWorked(string Session, ToolMark Tool, Work Work, Heats Heats, HeatsHow How) : LedgerEntry
{
    /// <summary>The words of <see cref="HeatsHow"/>.</summary>
    public static Vocabulary<HeatsHow> HowWords { get; } =
        new("how", (HeatsHow.Counted, "counted"), (HeatsHow.Estimated, "estimated"));

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}
