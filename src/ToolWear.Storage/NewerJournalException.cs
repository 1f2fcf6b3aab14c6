namespace ToolWear.Storage;

/// <summary>The journal is sound but holds what only a newer ToolWear knows. Every file was left as it is.</summary>
public sealed class NewerJournalException : StoreException
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    public NewerJournalException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    public NewerJournalException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    public NewerJournalException(string message, Exception? innerException)
        : base(message, innerException) { }

    /// <summary>With the line at fault.</summary>
    /// <param name="line">The line, 1 being the first.</param>
    /// <param name="message">A whole sentence for the smith.</param>
    public NewerJournalException(int line, string message)
        : base(message) => Line = line;

    /// <summary>The line of the journal, 1 being the first; 0 where the whole file is meant.</summary>
    public int Line { get; }
}
