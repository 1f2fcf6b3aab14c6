using System.Diagnostics;

namespace ToolWear.Ordeals.Processes;

/// <summary>What a process came to.</summary>
internal sealed record Ended(int Exit, string Output, string Error);

/// <summary>Starts the program itself, or this one in the part of a child.</summary>
internal static class Programs
{
    private static string Folder => AppContext.BaseDirectory;

    /// <summary>The program as it is built, or the one that TOOLWEAR_PROGRAM names.</summary>
    public static string ToolWear =>
        Environment.GetEnvironmentVariable("TOOLWEAR_PROGRAM")
        ?? Path.Combine(Folder, OperatingSystem.IsWindows() ? "toolwear.exe" : "toolwear");

    /// <summary>Runs the program to its end.</summary>
    /// <param name="folder">The current folder.</param>
    /// <param name="arguments">The command line.</param>
    /// <returns>What it came to.</returns>
    public static Ended Run(string folder, params string[] arguments) => End(ToolWear, folder, arguments);

    /// <summary>Runs this program to its end, as a child.</summary>
    /// <param name="folder">The current folder.</param>
    /// <param name="arguments">The command line.</param>
    /// <returns>What it came to.</returns>
    public static Ended Self(string folder, params string[] arguments) => End(Own, folder, arguments);

    /// <summary>Starts this program as a child.</summary>
    /// <param name="arguments">The command line.</param>
    /// <returns>The child, to be killed and disposed of.</returns>
    public static Process StartSelf(params string[] arguments) => Start(Own, Folder, arguments);

    /// <summary>Starts a program whose streams are ours.</summary>
    /// <param name="program">The program.</param>
    /// <param name="folder">The current folder.</param>
    /// <param name="arguments">The command line.</param>
    /// <returns>The process.</returns>
    public static Process Start(string program, string folder, params string[] arguments)
    {
        ProcessStartInfo start = new(program)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        Array.ForEach(arguments, start.ArgumentList.Add);
        return Process.Start(start)!;
    }

    /// <summary>This program.</summary>
    public static string Own =>
        Path.Combine(Folder, OperatingSystem.IsWindows() ? "ToolWear.Ordeals.exe" : "ToolWear.Ordeals");

    /// <summary>Runs any program to its end.</summary>
    /// <param name="program">The program.</param>
    /// <param name="folder">The current folder.</param>
    /// <param name="arguments">The command line.</param>
    /// <returns>What it came to.</returns>
    public static Ended End(string program, string folder, string[] arguments)
    {
        using Process process = Start(program, folder, arguments);
        process.StandardInput.Close();
        Task<string> error = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(180_000))
        {
            process.Kill();
            Assert.Fail($"{string.Join(' ', arguments)} does not end");
        }

        return new Ended(process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
    }
}
