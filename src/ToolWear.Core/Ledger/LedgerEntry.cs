using System.Collections.Immutable;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Ledger;

/// <summary>One thing that happened in the shop. Entries are never edited; one can be crossed out.</summary>
/// <remarks>A closed family: one record for each thing that can happen, in this folder.</remarks>
public abstract record LedgerEntry
{
    private protected LedgerEntry() { }

    /// <summary>The marks of the tools it speaks of, as they were when it was entered; empty for none.</summary>
    public virtual ImmutableArray<ToolMark> Tools => [];

    /// <summary>The names it holds that nothing else reads, each on one line; null for one that was left out.</summary>
    public virtual ImmutableArray<string?> Texts => [];

    /// <summary>The notes it holds, of any lines and characters; null for one that was left out.</summary>
    public virtual ImmutableArray<string?> Notes => [];
}

/// <summary>An entry with its number in the ledger.</summary>
/// <param name="Number">Its number, from 1 without gaps.</param>
/// <param name="At">When it was entered, UTC.</param>
/// <param name="Day">The shop's day when it was entered.</param>
/// <param name="What">What happened.</param>
public sealed record Entered(long Number, DateTimeOffset At, DateOnly Day, LedgerEntry What);
