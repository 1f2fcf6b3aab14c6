namespace ToolWear.Storage;

/// <summary>The journal is not as it was written. Every file was left as it is.</summary>
public sealed class DamagedJournalException : StoreException
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    public DamagedJournalException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    public DamagedJournalException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    public DamagedJournalException(string message, Exception? innerException)
        : base(message, innerException) { }

    /// <summary>With the line at fault.</summary>
    /// <param name="line">The line, 1 being the first.</param>
    /// <param name="message">A whole sentence for the smith.</param>
    public DamagedJournalException(int line, string message)
        : base(message) => Line = line;

    /// <summary>The line of the journal, 1 being the first; 0 where the whole file is meant.</summary>
    public int Line { get; }
}
