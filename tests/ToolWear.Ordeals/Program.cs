using ToolWear.Ordeals;
using ToolWear.Ordeals.Fuzz;
using ToolWear.Ordeals.Kills;
using ToolWear.Ordeals.Processes;
using ToolWear.Ordeals.Rot;
using Xunit.MicrosoftTestingPlatform;
using Xunit.Runner.InProc.SystemConsole;

return args switch
{
    ["recorder", string store, string seed, string pause] => KilledRecorder.Run(
        store,
        int.Parse(seed, null),
        int.Parse(pause, null)
    ),
    ["kills", string number, string seed] => Killing.ByHand(int.Parse(number, null), int.Parse(seed, null)),
    ["journal-flips", string mendEvery] => JournalFlips.ByHand(int.Parse(mendEvery, null)),
    ["fuzz", string number, string seed] => Fuzzing.ByHand(int.Parse(number, null), int.Parse(seed, null)),
    ["quiet", string folder] => QuietChild.Run(folder),
    ["second-writer", string number] => SecondWriter.ByHand(int.Parse(number, null)),
    ["full-disk", string folder] => FullDisk.ByHand(folder),
    _ when args.Any(arg => arg is "--server" or "--internal-msbuild-node") => await TestPlatformTestFramework.RunAsync(
        args,
        SelfRegisteredExtensions.AddSelfRegisteredExtensions
    ),
    _ => await ConsoleRunner.Run(args),
};
