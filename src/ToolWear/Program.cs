using System.Runtime.InteropServices;
using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Storage.Disks;

// no configuration of the library's own may reach the screens
Environment.SetEnvironmentVariable("TUI_CONFIG", null);
Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

// the console greets a terminal that it knows with signs for its keypad, which no verb wants; the screens get the name
string terminal = Environment.GetEnvironmentVariable("TERM") ?? "";
Environment.SetEnvironmentVariable("TERM", "dumb");

// where a file may grow no more (setrlimit(2)) the write says so; left alone, SIGXFSZ ends the program without a word
using PosixSignalRegistration? tooLarge = OperatingSystem.IsWindows()
    ? null
    : PosixSignalRegistration.Create((PosixSignal)25, context => context.Cancel = true);
string data = Environment.GetFolderPath(
    Environment.SpecialFolder.LocalApplicationData,
    Environment.SpecialFolderOption.DoNotVerify
);
Site site = new(
    Console.Out,
    Console.Error,
    TimeProvider.System,
    new RealDisk(),
    () => Guid.NewGuid().ToString("N"),
    Path.Combine(data.Length == 0 ? "." : data, "toolwear", "shop.db"),
    Path.GetTempPath()
)
{
    In = Console.OpenStandardInput,
    Width = Math.Max(
        40,
        int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), out int columns) && columns > 0 ? columns
            : !Console.IsOutputRedirected && Console.WindowWidth is > 0 and var window ? window
            : 80
    ),
    Tty = new Tty(
        !Console.IsInputRedirected && !Console.IsOutputRedirected,
        terminal,
        Environment.GetEnvironmentVariable("COLORTERM") is "truecolor" or "24bit",
        !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
        bytes =>
        {
            using Stream raw = Console.OpenStandardOutput();
            raw.Write(bytes.Span);
            raw.Flush();
        },
        Environment.Exit
    ),
};
return Verbs.Run(site, args);
