using ToolWear.Commands.Calls;
using ToolWear.Storage;
using ToolWear.Storage.Backups;

namespace ToolWear.Commands.Files;

/// <summary>check: verifies the store.</summary>
internal static class CheckVerb
{
    public static Verb Verb { get; } =
        new(
            "check",
            "Verifies the store from end to end, says what it found, and puts right what can be put right.",
            "check",
            [],
            Run
        );

    private static void Run(Call call)
    {
        StoreSettings settings = Bench.Settings(call.Site);
        CheckReport report = StoreCheck.Run(new StorePaths(call.StorePath), call.Site.Disk, settings);
        foreach (StoreFinding finding in report.Findings)
        {
            call.Warn(finding.Sentence);
        }

        if (report.IsAnythingGone)
        {
            throw RefusedException.WrongData(
                $"something that was accepted is gone; {report.Entries} entries can be read"
            );
        }

        // what the lines say must also fold to a shop
        call.PrintLine($"{call.Shop.Ledger.Count} entries, all sound");
    }
}
