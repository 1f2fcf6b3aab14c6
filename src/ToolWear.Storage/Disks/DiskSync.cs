using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ToolWear.Storage.Disks;

/// <summary>The one way to make a file or the names in a folder durable: the system's own call, with its error.</summary>
/// <remarks>
/// .NET 10 calls it too, in RandomAccess.FlushToDisk and FileStream.Flush(true), and lets its error pass in silence.
/// fsync: POSIX.1-2017. F_FULLFSYNC: fcntl(2) of macOS, whose fsync leaves the bytes in the drive. FlushFileBuffers: Win32.
/// </remarks>
internal static partial class DiskSync
{
    private const int ReadOnly = 0;
    private const int FullSync = 51;
    private const int Interrupted = 4;

    // EINVAL: "fd is bound to a special file which does not support synchronization" (fsync(2)); some network file
    // systems answer so for every folder, and then there is nothing more to be had
    private const int NotForFolders = 22;

    /// <summary>Returns when every byte of a file is durable.</summary>
    /// <param name="file">The file, open for writing.</param>
    /// <param name="path">Its path, for messages.</param>
    /// <exception cref="IOException">It may not be; asking again on the same handle proves nothing.</exception>
    internal static void File(SafeFileHandle file, string path)
    {
        if (OperatingSystem.IsWindows() ? !FlushFileBuffers(file) : Synced(file) != 0)
        {
            throw Failed(path);
        }
    }

    /// <summary>Returns when the names in a folder are durable. On Windows the file system's own log does it.</summary>
    /// <param name="path">A folder.</param>
    /// <exception cref="IOException">They may not be.</exception>
    internal static void Folder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }
        using SafeFileHandle folder = Open(path, ReadOnly);
        if (folder.IsInvalid || (Synced(folder) != 0 && Marshal.GetLastPInvokeError() != NotForFolders))
        {
            throw Failed(path);
        }
    }

    private static int Synced(SafeFileHandle handle)
    {
        // where a file system of macOS has no full sync, the common one is all there is
        if (OperatingSystem.IsMacOS() && Control(handle, FullSync) == 0)
        {
            return 0;
        }
        int result;
        do
        {
            result = Fsync(handle);
        } while (result != 0 && Marshal.GetLastPInvokeError() == Interrupted);
        return result;
    }

    private static IOException Failed(string path)
    {
        int error = Marshal.GetLastPInvokeError();
        return new IOException($"{path} could not be made durable: {Marshal.GetPInvokeErrorMessage(error)}", error);
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial SafeFileHandle Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Fsync(SafeFileHandle handle);

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Control(SafeFileHandle handle, int command);

    [LibraryImport("kernel32", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool FlushFileBuffers(SafeFileHandle handle);
}
