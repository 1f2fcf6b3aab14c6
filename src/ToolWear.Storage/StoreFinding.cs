namespace ToolWear.Storage;

/// <summary>Something the store found out of order and has dealt with.</summary>
/// <param name="Kind">What it was.</param>
/// <param name="Sentence">A whole sentence for the smith.</param>
public sealed record StoreFinding(FindingKind Kind, string Sentence);

/// <summary>What can be found out of order without stopping the work.</summary>
public enum FindingKind
{
    /// <summary>The journal ended in part of a line, which was never acknowledged; it was dropped.</summary>
    TailDropped,

    /// <summary>The last line was whole but for its line end, and was kept.</summary>
    LineCompleted,

    /// <summary>The documents were missing or wrong, and were built anew from the journal.</summary>
    DocumentsRebuilt,

    /// <summary>The documents cannot be used now; answers come from the journal.</summary>
    DocumentsUnavailable,

    /// <summary>A line of the journal was damaged and could be mended.</summary>
    JournalMended,

    /// <summary>Accepted entries cannot be brought back from anything that is here.</summary>
    EntriesGone,

    /// <summary>A backup could not be made or is not sound.</summary>
    BackupFailed,
}
