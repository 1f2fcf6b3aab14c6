namespace ToolWear.Storage.Disks;

/// <summary>A lock that one process at a time holds; disposing gives it back, and so does the system when the process dies.</summary>
public interface IDiskLock : IDisposable
{
    /// <summary>Whether the file system keeps others out; there are some that have no locks.</summary>
    bool IsKept { get; }

    /// <summary>Whether the file that is locked still stands under its name: else another can hold the lock of that name.</summary>
    bool IsInPlace { get; }
}
