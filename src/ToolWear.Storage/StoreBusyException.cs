namespace ToolWear.Storage;

/// <summary>Another process has the store open for writing; nothing was touched.</summary>
public sealed class StoreBusyException : StoreException
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    public StoreBusyException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    public StoreBusyException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    public StoreBusyException(string message, Exception? innerException)
        : base(message, innerException) { }
}
