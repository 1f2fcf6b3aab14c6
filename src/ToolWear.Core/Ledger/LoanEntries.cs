using System.Collections.Immutable;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>A tool was lent out: until it is taken back it is on no rack.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="To">Who has it; never blank.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record ToolLent(ToolMark Tool, DateOnly On, string To, string? Note) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [To];

    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>A tool that was lent out came back; what it worked meanwhile nobody here counted.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record ToolTakenBack(ToolMark Tool, DateOnly On, string? Note) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Notes => [Note];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}

/// <summary>A tool was looked for at a stock-take, and was there or was not.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="Seen">Whether it was there.</param>
/// <param name="By">Who looked, null where nobody said.</param>
public sealed record ToolLookedFor(ToolMark Tool, DateOnly On, bool Seen, string? By) : LedgerEntry
{
    /// <inheritdoc />
    public override ImmutableArray<string?> Texts => [By];

    /// <inheritdoc />
    public override ImmutableArray<ToolMark> Tools => [Tool];
}
