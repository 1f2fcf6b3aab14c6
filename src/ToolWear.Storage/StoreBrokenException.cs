namespace ToolWear.Storage;

/// <summary>Writing failed; what was being written was not accepted, and the store takes nothing more until it is opened again.</summary>
public sealed class StoreBrokenException : StoreException
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    public StoreBrokenException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    public StoreBrokenException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    public StoreBrokenException(string message, Exception? innerException)
        : base(message, innerException) { }
}
