using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>A tool was measured at a gauge mark, cold.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="Gauge">The gauge mark's name.</param>
/// <param name="On">The day.</param>
/// <param name="Session">The session whose heats it follows; null for all heats through that day.</param>
/// <param name="Size">The size read.</param>
/// <param name="Resolution">What it was read to; null for the gauge mark's or the shop's usual.</param>
/// <param name="By">Who read it, null where nobody said.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record ToolMeasured(
    ToolMark Tool,
    string Gauge,
    DateOnly On,
    string? Session,
    Length Size,
    Length? Resolution,
    string? By,
    string? Note
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [By];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>What was done to a tool.</summary>
public enum Rework
{
    /// <summary>Reground at its working edge or face, or ground back at its struck end.</summary>
    Dressed,

    /// <summary>Brought back on size in the fire.</summary>
    Reforged,

    /// <summary>Straightened.</summary>
    Straightened,

    /// <summary>Welded up.</summary>
    Welded,

    /// <summary>Hardened and tempered again.</summary>
    Rehardened,

    /// <summary>Tempered, not hardened before it.</summary>
    Tempered,

    /// <summary>Its handle was wedged or made anew.</summary>
    Rehandled,
}

/// <summary>A tool was reworked.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="What">What was done.</param>
/// <param name="Gauge">The gauge mark whose size it changed; null where it changed none.</param>
/// <param name="Before">The size there before, null where not read.</param>
/// <param name="After">The size there after, null where not read.</param>
/// <param name="Hours">Hours it took, zero or more, null where not noted.</param>
/// <param name="Cost">What it cost besides, zero or more, null where not noted.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record ToolReworked(
    ToolMark Tool,
    DateOnly On,
    Rework What,
    string? Gauge,
    Length? Before,
    Length? After,
    decimal? Hours,
    decimal? Cost,
    string? Note
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <summary>The words of <see cref="Rework"/>.</summary>
    public static Vocabulary<Rework> WhatWords { get; } =
        new(
            "what",
            (Rework.Dressed, "dressed"),
            (Rework.Reforged, "re-forged"),
            (Rework.Straightened, "straightened"),
            (Rework.Welded, "welded"),
            (Rework.Rehardened, "re-hardened"),
            (Rework.Tempered, "tempered"),
            (Rework.Rehandled, "re-handled")
        );

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>What was found when a tool was looked over.</summary>
public enum Finding
{
    /// <summary>Nothing wrong was seen.</summary>
    Sound,

    /// <summary>The struck end has spread and curled over.</summary>
    Mushroomed,

    /// <summary>A chip is out.</summary>
    Chipped,

    /// <summary>A crack.</summary>
    Cracked,

    /// <summary>Broken.</summary>
    Broken,

    /// <summary>Bent or twisted.</summary>
    Bent,

    /// <summary>A file bites.</summary>
    Soft,

    /// <summary>A file skates.</summary>
    GlassHard,

    /// <summary>Metal picked up that scores the eye.</summary>
    PickedUp,

    /// <summary>A net of fine heat cracks in the surface.</summary>
    HeatChecked,

    /// <summary>Blunt.</summary>
    Blunt,

    /// <summary>The handle is loose.</summary>
    LooseHandle,

    /// <summary>Stuck in a head.</summary>
    Stuck,

    /// <summary>The gauge mark cannot be found any more.</summary>
    MarkGone,
}

/// <summary>Where on a tool something was found.</summary>
public enum ToolPart
{
    /// <summary>The end that is struck.</summary>
    StruckEnd,

    /// <summary>What lies between the ends.</summary>
    Body,

    /// <summary>The edge, the face or the length that works.</summary>
    WorkingEnd,

    /// <summary>The handle, or where tongs hold it.</summary>
    Handle,
}

/// <summary>A tool was looked over.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Finding">What was found.</param>
/// <param name="By">Who looked, null where nobody said.</param>
/// <param name="Note">A note, null where none.</param>
/// <param name="Part">Where it was found; null where nobody said, which counts as its strictest place.</param>
public sealed record ToolLookedOver(
    ToolMark Tool,
    DateOnly On,
    Finding Finding,
    string? By,
    string? Note,
    ToolPart? Part = null
) : LedgerEntry
{
    /// <summary>The words of <see cref="ToolPart"/>.</summary>
    public static Vocabulary<ToolPart> PartWords { get; } =
        new(
            "part",
            (ToolPart.StruckEnd, "struck end"),
            (ToolPart.Body, "body"),
            (ToolPart.WorkingEnd, "working end"),
            (ToolPart.Handle, "handle")
        );

    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [By];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <summary>The words of <see cref="Ledger.Finding"/>.</summary>
    public static Vocabulary<Finding> FindingWords { get; } =
        new(
            "finding",
            (Finding.Sound, "sound"),
            (Finding.Mushroomed, "mushroomed"),
            (Finding.Chipped, "chipped"),
            (Finding.Cracked, "cracked"),
            (Finding.Broken, "broken"),
            (Finding.Bent, "bent"),
            (Finding.Soft, "soft"),
            (Finding.GlassHard, "glass-hard"),
            (Finding.PickedUp, "picked-up"),
            (Finding.HeatChecked, "heat-checked"),
            (Finding.Blunt, "blunt"),
            (Finding.LooseHandle, "loose-handle"),
            (Finding.Stuck, "stuck"),
            (Finding.MarkGone, "mark-gone")
        );

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>Where in a cold eye it was measured.</summary>
public enum EyeWhere
{
    /// <summary>The face the handle enters last, or the upper one.</summary>
    Top,

    /// <summary>The narrowest place of a wedged eye.</summary>
    Waist,

    /// <summary>The lower face.</summary>
    Bottom,
}

/// <summary>Whether a handle went into an eye as it should.</summary>
public enum HandleFits
{
    /// <summary>It fits.</summary>
    Yes,

    /// <summary>Too tight: it would split.</summary>
    Tight,

    /// <summary>Too loose: the head would fly.</summary>
    Loose,
}

/// <summary>A finished, cold eye was measured.</summary>
/// <param name="Eye">The eye's name.</param>
/// <param name="On">The day.</param>
/// <param name="Session">The session it was made in, null where nobody said.</param>
/// <param name="Tool">The drift that made it, null where nobody said.</param>
/// <param name="Where">Where in the eye, null where nobody said.</param>
/// <param name="Length">Its length there, null where not read.</param>
/// <param name="Width">Its width there, null where not read.</param>
/// <param name="HandleFits">Whether the handle fits, null where not tried.</param>
public sealed record EyeMeasured(
    string Eye,
    DateOnly On,
    string? Session,
    ToolMark? Tool,
    EyeWhere? Where,
    Length? Length,
    Length? Width,
    HandleFits? HandleFits
) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [Eye];

    /// <summary>The words of <see cref="EyeWhere"/>.</summary>
    public static Vocabulary<EyeWhere> WhereWords { get; } =
        new("where", (EyeWhere.Top, "top"), (EyeWhere.Waist, "waist"), (EyeWhere.Bottom, "bottom"));

    /// <summary>The words of <see cref="Ledger.HandleFits"/>.</summary>
    public static Vocabulary<HandleFits> FitsWords { get; } =
        new(
            "handle_fits",
            (Ledger.HandleFits.Yes, "yes"),
            (Ledger.HandleFits.Tight, "tight"),
            (Ledger.HandleFits.Loose, "loose")
        );

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => Tool is { } tool ? [tool] : [];
}
