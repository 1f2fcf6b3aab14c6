namespace ToolWear.Storage.Journal;

/// <summary>How a journal ends.</summary>
public enum JournalEnd
{
    /// <summary>It has not been read to its end.</summary>
    NotReached,

    /// <summary>With a whole line.</summary>
    Whole,

    /// <summary>With a line whose checksum is right but whose line end is missing: it was written and not yet acknowledged.</summary>
    Unended,

    /// <summary>With bytes that were never written as lines, their line feeds among them. Who knows the last entry may drop them.</summary>
    Junk,

    /// <summary>With part of a line, cut off or with holes: it was being written and was never acknowledged.</summary>
    Torn,
}
