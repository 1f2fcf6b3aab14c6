using System.Runtime.InteropServices;

namespace ToolWear.Testing.Terminals;

/// <summary>What a pseudo-terminal wants of the system, with the numbers of Linux.</summary>
internal static partial class Libc
{
    public const int ReadWrite = 2;
    public const int NoControlling = 0x100;

    /// <summary>A terminal that another program kept open would never hang up.</summary>
    public const int NotInherited = 0x80000;

    public const int WriteNew = 0x241;
    public const int NoHang = 1;
    public const short HasInput = 1;
    public const nuint SetWindowSize = 0x5414;

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_openpt(int flags);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int grantpt(int fd);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int unlockpt(int fd);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int ptsname_r(int fd, [Out] byte[] name, nuint length);

    [LibraryImport("libc", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int close(int fd);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial nint read(int fd, [Out] byte[] buffer, nuint count);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial nint write(int fd, byte[] buffer, nuint count);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int poll(ref Polled polled, nuint count, int timeoutMs);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int ioctl(int fd, nuint request, ushort[] argument);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int tcgetattr(int fd, [Out] byte[] settings);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int kill(int pid, int signal);

    [LibraryImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int waitpid(int pid, out int status, int options);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn_file_actions_init(nint actions);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn_file_actions_addopen(nint actions, int fd, string path, int flags, uint mode);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn_file_actions_adddup2(nint actions, int fd, int toFd);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn_file_actions_addchdir_np(nint actions, string path);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn_file_actions_destroy(nint actions);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawnattr_init(nint attributes);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawnattr_setflags(nint attributes, short flags);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawnattr_setsigdefault(nint attributes, nint signals);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawnattr_setsigmask(nint attributes, nint signals);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawnattr_destroy(nint attributes);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int sigfillset(nint signals);

    [LibraryImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int sigemptyset(nint signals);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    public static partial int posix_spawn(
        out int pid,
        string path,
        nint actions,
        nint attributes,
        nint[] arguments,
        nint[] environment
    );

    /// <summary>A file that is waited for.</summary>
    [StructLayout(LayoutKind.Sequential)]
    public struct Polled(int fd, short wanted)
    {
        public int Fd = fd;
        public short Wanted = wanted;
        public short Got;
    }
}
