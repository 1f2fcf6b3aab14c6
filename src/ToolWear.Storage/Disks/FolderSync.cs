using System.Runtime.InteropServices;

namespace ToolWear.Storage.Disks;

/// <summary>fsync of a folder (POSIX.1-2017), for which .NET has no call. On Windows the file system's own log does it.</summary>
internal static partial class FolderSync
{
    private const int ReadOnly = 0;

    // EINVAL: "fd is bound to a special file which does not support synchronization" (fsync(2)); some network file
    // systems answer so for every folder, and then there is nothing more to be had
    private const int NotForFolders = 22;

    /// <summary>Returns when the names in a folder are durable.</summary>
    /// <param name="path">A folder.</param>
    internal static void Sync(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }
        int descriptor = Open(path, ReadOnly);
        if (descriptor < 0)
        {
            throw new IOException($"The folder {path} cannot be opened (error {Marshal.GetLastPInvokeError()}).");
        }
        int failed = Fsync(descriptor);
        int error = Marshal.GetLastPInvokeError();
        _ = Close(descriptor);
        if (failed != 0 && error != NotForFolders)
        {
            throw new IOException($"The folder {path} cannot be made durable (error {error}).");
        }
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Fsync(int descriptor);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Close(int descriptor);
}
