using ToolWear.Storage.Disks;

namespace ToolWear.Storage.Stores;

/// <summary>The two locks that are held around an append.</summary>
/// <param name="named">The named lock; null where it is held for longer.</param>
/// <param name="own">The journal's own.</param>
internal sealed class BothLocks(IDiskLock? named, IDisposable own) : IDisposable
{
    /// <inheritdoc />
    public void Dispose()
    {
        own.Dispose();
        named?.Dispose();
    }
}
