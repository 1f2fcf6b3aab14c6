using System.Buffers.Binary;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ToolWear.Storage.Disks;

/// <summary>What the system knows of a file and .NET does not tell: its kind without opening it, which file it is, how many names it has.</summary>
/// <param name="Kind">What it is; a symbolic link is one wherever it leads.</param>
/// <param name="Device">The file system it lies on.</param>
/// <param name="Number">Its number there: the same two, the same file.</param>
/// <param name="Names">How many names (hard links) it has.</param>
/// <remarks>
/// Linux: statx(2). macOS: stat(2) with 64-bit numbers, its layout from memory and not tried. Windows: an open file can be
/// neither moved nor replaced there, so number and names are not asked for; a second name is not seen.
/// </remarks>
internal readonly partial record struct FileFacts(PathKind Kind, ulong Device, ulong Number, uint Names)
{
    private const int Room = 256;
    private const int ThisFolder = -100;
    private const int NoFollow = 0x100;
    private const int EmptyPath = 0x1000;
    private const uint Basics = 0x7ff;

    // ENOENT, ENOTDIR, EACCES: the same on Linux and on macOS
    private const int NoFile = 2;
    private const int NoFolder = 20;
    private const int Denied = 13;

    /// <summary>What stands under a name; no link is followed.</summary>
    /// <param name="path">Any path.</param>
    /// <returns>Its facts, null where nothing is there.</returns>
    /// <exception cref="IOException">The system does not say.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not know.</exception>
    internal static FileFacts? Of(string path)
    {
        Span<byte> facts = stackalloc byte[Room];
        if (OperatingSystem.IsWindows())
        {
            return Directory.Exists(path) ? new(PathKind.Folder, 0, 0, 1)
                : File.Exists(path) ? new(PathKind.PlainFile, 0, 0, 1)
                : null;
        }
        int failed =
            OperatingSystem.IsLinux() ? Statx(ThisFolder, path, NoFollow, Basics, ref facts[0])
            : RuntimeInformation.ProcessArchitecture == Architecture.X64 ? LstatX64(path, ref facts[0])
            : Lstat(path, ref facts[0]);
        return (failed == 0 ? 0 : Marshal.GetLastPInvokeError()) switch
        {
            0 => Read(facts),
            NoFile or NoFolder => null,
            Denied => throw new UnauthorizedAccessException($"{path}: {Marshal.GetPInvokeErrorMessage(Denied)}"),
            int error => throw new IOException($"{path}: {Marshal.GetPInvokeErrorMessage(error)}", error),
        };
    }

    /// <summary>What an open file is, whatever stands under its name now.</summary>
    /// <param name="file">An open file.</param>
    /// <returns>Its facts.</returns>
    /// <exception cref="IOException">The system does not say.</exception>
    internal static FileFacts Of(SafeFileHandle file)
    {
        Span<byte> facts = stackalloc byte[Room];
        bool isRead =
            OperatingSystem.IsWindows()
            || (
                OperatingSystem.IsLinux() ? Statx(file, "", EmptyPath, Basics, ref facts[0]) == 0
                : RuntimeInformation.ProcessArchitecture == Architecture.X64 ? FstatX64(file, ref facts[0]) == 0
                : Fstat(file, ref facts[0]) == 0
            );
        return isRead ? Read(facts) : throw new IOException(Marshal.GetLastPInvokeErrorMessage());
    }

    /// <summary>Whether two are the same file.</summary>
    /// <param name="other">The other, null for none.</param>
    /// <returns>True for the same number on the same file system.</returns>
    internal bool IsSameAs(FileFacts? other) => other is { } it && (it.Device, it.Number) == (Device, Number);

    private static FileFacts Read(ReadOnlySpan<byte> facts) =>
        OperatingSystem.IsLinux()
            ? new(
                KindOf(Int(facts, 28)),
                Int(facts, 140) | ((ulong)Int(facts, 136) << 32),
                BinaryPrimitives.ReadUInt64LittleEndian(facts[32..]),
                Int(facts, 16)
            )
            : new(
                KindOf(Int(facts, 4)),
                Int(facts, 0),
                BinaryPrimitives.ReadUInt64LittleEndian(facts[8..]),
                Int(facts, 4) >> 16
            );

    private static uint Int(ReadOnlySpan<byte> facts, int at) => BinaryPrimitives.ReadUInt32LittleEndian(facts[at..]);

    private static PathKind KindOf(uint mode) =>
        (mode & 0xf000) switch
        {
            0x8000 => PathKind.PlainFile,
            0x4000 => PathKind.Folder,
            0xa000 => PathKind.Link,
            _ => PathKind.Other,
        };

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Statx(int folder, string path, int flags, uint mask, ref byte facts);

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Statx(SafeFileHandle file, string path, int flags, uint mask, ref byte facts);

    [LibraryImport("libc", EntryPoint = "lstat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Lstat(string path, ref byte facts);

    [LibraryImport(
        "libc",
        EntryPoint = "lstat$INODE64",
        SetLastError = true,
        StringMarshalling = StringMarshalling.Utf8
    )]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int LstatX64(string path, ref byte facts);

    [LibraryImport("libc", EntryPoint = "fstat", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Fstat(SafeFileHandle file, ref byte facts);

    [LibraryImport("libc", EntryPoint = "fstat$INODE64", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int FstatX64(SafeFileHandle file, ref byte facts);
}
