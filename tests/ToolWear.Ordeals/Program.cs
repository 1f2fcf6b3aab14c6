using ToolWear.Ordeals;
using ToolWear.Ordeals.Fuzz;
using ToolWear.Ordeals.Kills;
using ToolWear.Ordeals.Processes;
using ToolWear.Ordeals.Rot;
using ToolWear.Ordeals.Syscalls;
using ToolWear.Ordeals.Writers;
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
    ["replay", string seed, string some, .. string[] names] => Replay.ByHand(
        int.Parse(seed, null),
        int.Parse(some, null),
        names
    ),
    ["faults", .. string[] names] => Faults.ByHand(names),
    ["writer", string store, string name, string count] => SteadyWriter.Run(store, name, int.Parse(count, null)),
    ["writers", string writers, string entries] => ManyWriters.ByHand(
        int.Parse(writers, null),
        int.Parse(entries, null)
    ),
    ["windows", string entries, string kills, string delayMs] => TwoWindows.ByHand(
        int.Parse(entries, null),
        int.Parse(kills, null),
        int.Parse(delayMs, null)
    ),
    ["full-disk", string folder] => FullDisk.ByHand(folder),
    _ when args.Any(arg => arg is "--server" or "--internal-msbuild-node") => await TestPlatformTestFramework.RunAsync(
        args,
        SelfRegisteredExtensions.AddSelfRegisteredExtensions
    ),
    _ => await ConsoleRunner.Run(args),
};
