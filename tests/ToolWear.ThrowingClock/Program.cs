using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Storage.Disks;
using ToolWear.ThrowingClock;

// the program with a clock of ours: once the file exists that is named in front of its arguments, whoever asks for the
// time gets an exception, which on the screens is whoever draws the day
Environment.SetEnvironmentVariable("TUI_CONFIG", null);
Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Site site = new(
    Console.Out,
    Console.Error,
    new FaultyClock(args[0]),
    new RealDisk(),
    () => new string('0', 32),
    Path.GetFullPath("shop.db"),
    Path.GetTempPath()
)
{
    Tty = new Tty(
        !Console.IsInputRedirected && !Console.IsOutputRedirected,
        Environment.GetEnvironmentVariable("TERM") ?? "",
        HasManyColours: false,
        WantsNoColour: false,
        bytes =>
        {
            using Stream raw = Console.OpenStandardOutput();
            raw.Write(bytes.Span);
            raw.Flush();
        },
        Environment.Exit
    ),
};
return Verbs.Run(site, args[1..]);
