using System.Globalization;
using ToolWear.Ordeals.Processes;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>Runs the program under strace(1), which records its system calls and can make them fail.</summary>
internal static class Strace
{
    // every call that changes a file or a name, and those by which it is known which file a number means
    private const string Calls =
        "open,openat,creat,close,write,pwrite64,writev,pwritev,pwritev2,ftruncate,truncate,fallocate,fsync,fdatasync,"
        + "rename,renameat,renameat2,link,linkat,symlink,symlinkat,unlink,unlinkat,mkdir,mkdirat,rmdir,"
        + "copy_file_range,sendfile";

    /// <summary>Why nothing can be recorded here, or null where it can.</summary>
    public static string? Missing { get; } = Look();

    /// <summary>Runs the program to its end and reads back what it did.</summary>
    /// <param name="folder">The current folder; the record of calls is kept in it until it is read.</param>
    /// <param name="home">The home folder.</param>
    /// <param name="faults">What is to fail, as strace writes it ("inject=fsync:error=EIO:when=1"), or nothing.</param>
    /// <param name="line">The command line.</param>
    /// <param name="only">A path: calls on others are neither recorded nor failed; null for all.</param>
    /// <returns>What it came to, and its calls in order.</returns>
    public static (Ended Ended, IReadOnlyList<Call> Calls) Run(
        string folder,
        string home,
        string? faults,
        IReadOnlyList<string> line,
        string? only = null
    )
    {
        string record = Path.Combine(folder, "calls.strace");
        List<string> arguments = ["-f", "-qq", "-xx", "-s", "100000000", "-o", record, "-e", "trace=" + Calls];
        if (faults is not null)
        {
            arguments.AddRange(["-e", faults]);
        }

        if (only is not null)
        {
            arguments.AddRange(["-P", only]);
        }

        arguments.AddRange(["-E", "HOME=" + home, "-E", "XDG_DATA_HOME", "--", Programs.ToolWear, .. line]);
        Ended ended = Programs.End("strace", folder, [.. arguments]);
        IReadOnlyList<Call> calls = TraceReader.Read(File.ReadLines(record));
        File.Delete(record);
        return (ended, calls);
    }

    /// <summary>The words by which one call of a run is made to fail.</summary>
    /// <param name="call">The call, from a run without faults.</param>
    /// <param name="error">The error's name.</param>
    /// <param name="which">Which one of its name in its thread.</param>
    /// <returns>For <see cref="Run"/>.</returns>
    public static string Fault(Call call, string error, int which) =>
        string.Create(CultureInfo.InvariantCulture, $"inject={call.Name}:error={error}:when={which}");

    private static string? Look()
    {
        try
        {
            return Programs.End("strace", Path.GetTempPath(), ["-qq", "-e", "trace=none", "true"]) is { Exit: 0 }
                ? null
                : "strace may not trace here";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "there is no strace here";
        }
    }
}
