namespace ToolWear.Storage;

/// <summary>The path cannot be a store, or is not one: a folder, a device, another program's file. It was left as it is.</summary>
public sealed class StoreRefusedException : StoreException
{
    /// <summary>With the sentence of the base library; for tools that ask for it.</summary>
    public StoreRefusedException() { }

    /// <summary>With a sentence.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    public StoreRefusedException(string message)
        : base(message) { }

    /// <summary>With a sentence and what lies behind it.</summary>
    /// <param name="message">A whole sentence for the smith.</param>
    /// <param name="innerException">What the system said.</param>
    public StoreRefusedException(string message, Exception? innerException)
        : base(message, innerException) { }
}
