namespace ToolWear.Storage;

/// <summary>The store cannot do what was asked; the message is a whole sentence for the smith and names the way out.</summary>
public abstract class StoreException : Exception
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    protected StoreException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    protected StoreException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    protected StoreException(string message, Exception? innerException)
        : base(message, innerException) { }
}
