using System.Collections.Immutable;
using ToolWear.Core.Ledger;

namespace ToolWear.Core.Shops;

/// <summary>A session at the hammer.</summary>
/// <param name="Opened">What was said at its opening.</param>
/// <param name="Opening">The number of the entry that opened it: its rank among the sessions of its day.</param>
/// <param name="IsOpen">Whether it is still going on.</param>
/// <param name="Heads">Heads finished, null where nobody counted.</param>
public sealed record Session(SessionOpened Opened, long Opening, bool IsOpen, int? Heads)
{
    /// <summary>Heads done by the name of the stage; a stage where nobody counted is not there.</summary>
    public ImmutableSortedDictionary<string, int> HeadsByStage { get; init; } =
        ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>Its name.</summary>
    public string Name => Opened.Session;

    /// <summary>The day it belongs to.</summary>
    public DateOnly On => Opened.On;
}
