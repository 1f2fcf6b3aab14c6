using System.Diagnostics;
using System.Globalization;

namespace ToolWear.Tests.Commands;

/// <summary>A program built elsewhere, which the tests drive instead of the code beside them: by hand, before a release.</summary>
/// <remarks>TOOLWEAR_PROGRAM names it. Its clock is set by faketime, which has to be on the path.</remarks>
internal static class Outside
{
    /// <summary>The program, null in every usual run.</summary>
    public static string? Program { get; } = Environment.GetEnvironmentVariable("TOOLWEAR_PROGRAM");

    /// <summary>How the program is called with a clock that begins at a site's now.</summary>
    public static string[] Called(TestSite site) =>
        [
            "faketime",
            "-f",
            site.Clock.GetUtcNow().ToString("@yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture),
            Program ?? throw new InvalidOperationException("TOOLWEAR_PROGRAM names no program."),
        ];

    /// <summary>Runs a command line on a site's store.</summary>
    public static Ran Run(TestSite site, string[] arguments)
    {
        string[] all = arguments.Contains("--store") ? arguments : [.. arguments, "--store", site.Store];
        string[] called = Called(site);
        ProcessStartInfo start = new(called[0], [.. called[1..], .. all])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = site.Folder,
        };
        start.Environment["TZ"] = "UTC";
        start.Environment["TMPDIR"] = site.Folder;
        start.Environment["XDG_DATA_HOME"] = site.Folder;
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
