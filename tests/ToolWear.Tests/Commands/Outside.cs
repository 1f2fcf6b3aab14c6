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
            site.Clock.GetLocalNow().ToString("@yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture),
            Program ?? throw new InvalidOperationException("TOOLWEAR_PROGRAM names no program."),
        ];

    /// <summary>Runs a command line on a site's store.</summary>
    public static Ran Run(TestSite site, string[] arguments)
    {
        string[] all =
            arguments is [['[', ..] asked, string typed] ? Asked(site, asked, typed)
            : arguments.Contains("--store") ? arguments
            : [.. arguments, "--store", site.Store];
        string[] called = Called(site);
        ProcessStartInfo start = new(called[0], [.. called[1..], .. all])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = site.Folder,
        };
        start.Environment["TZ"] = site.Clock.LocalTimeZone.Id;
        start.Environment["TMPDIR"] = site.Folder;
        start.Environment["XDG_DATA_HOME"] = site.Folder;
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    /// <summary>What a shell asks: the store is named behind the verb, where one stands there.</summary>
    private static string[] Asked(TestSite site, string asked, string typed)
    {
        string[] parts = typed.Split(' ', 2);
        string all = parts is [var verb, var rest] ? $"{verb} --store {site.Store} {rest}" : typed;
        return [parts.Length == 1 ? asked : $"[suggest:{all.Length}]", all];
    }
}
