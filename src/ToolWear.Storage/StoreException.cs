namespace ToolWear.Storage;

/// <summary>The store cannot do what was asked.</summary>
/// <param name="message">A whole sentence for the smith, which names the way out.</param>
/// <param name="inner">What the system said.</param>
public abstract class StoreException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>Another process has the store open for writing; nothing was touched.</summary>
/// <inheritdoc />
public sealed class StoreBusyException(string message, Exception? inner = null) : StoreException(message, inner);

/// <summary>Writing failed; what was being written was not accepted, and the store takes nothing more until it is opened again.</summary>
/// <inheritdoc />
public sealed class StoreBrokenException(string message, Exception? inner = null) : StoreException(message, inner);

/// <summary>The path cannot be a store, or is not one: a folder, a device, another program's file. It was left as it is.</summary>
/// <inheritdoc />
public sealed class StoreRefusedException(string message, Exception? inner = null) : StoreException(message, inner);

/// <summary>The journal is not as it was written. Every file was left as it is.</summary>
/// <param name="line">The line at fault, 1 being the first; 0 where the whole file is meant.</param>
/// <param name="message">A whole sentence for the smith, which names the way out.</param>
/// <param name="inner">What the system said.</param>
public sealed class DamagedJournalException(int line, string message, Exception? inner = null)
    : StoreException(message, inner)
{
    /// <summary>The line at fault, 1 being the first; 0 where the whole file is meant.</summary>
    public int Line => line;
}

/// <summary>The journal is sound but holds what only a newer ToolWear knows. Every file was left as it is.</summary>
/// <param name="line">The line at fault, 1 being the first.</param>
/// <param name="message">A whole sentence for the smith, which names the way out.</param>
public sealed class NewerJournalException(int line, string message) : StoreException(message)
{
    /// <summary>The line at fault, 1 being the first.</summary>
    public int Line => line;
}
