using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;

namespace ToolWear.Commands.Files;

/// <summary>check: verifies the store.</summary>
internal static class CheckVerb
{
    private static readonly Option<bool> ReadOnly = Said.Switch("--read-only", "only looks, changes nothing");

    private static readonly Option<string?> Salvage = Said.Text(
        "--salvage",
        "FILE",
        "saves every entry that can be proved into a new shop, and lists the others"
    );

    private static readonly Option<bool> Tidy = Said.Switch(
        "--tidy",
        "deletes files set aside, all but the newest three"
    );

    public static Verb Verb { get; } =
        new("check", "Verifies the shop's files and mends what it can.", "check", [ReadOnly, Salvage, Tidy], Run);

    private static void Run(Call call)
    {
        StorePaths paths = new(call.StorePath);
        if (call.Get(Salvage) is { } file)
        {
            Salvaged(call, paths, NamedFiles.FullPath("--salvage", file));
            return;
        }

        StoreSettings settings = Bench.Settings(call.Site);
        string[] folders = [.. Bench.BackupFolders(call.Site, paths)];
        CheckReport report = call.Get(ReadOnly)
            ? StoreCheck.Look(paths, call.Site.Disk, settings, folders)
            : StoreCheck.Run(paths, call.Site.Disk, settings, folders);
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
        string looked =
            report.HasDocuments ? ""
            : call.Get(ReadOnly) ? "; the documents were not compared"
            : "; the documents were not compared, an open window keeps them";
        call.PrintLine($"{call.Shop.Ledger.Count} entries, all sound{looked}");
        if (call.Get(Tidy))
        {
            call.PrintLine($"files deleted that were set aside: {SetAside.Tidy(paths, call.Site.Disk, settings)}");
        }
        else if (SetAside.Of(paths, call.Site.Disk).Length is > 3 and int aside)
        {
            call.PrintLine($"files set aside: {aside}; check --tidy keeps the newest three");
        }
    }

    private static void Salvaged(Call call, StorePaths from, string path)
    {
        Salvaging saved = Salvaging.Into(call.Site, from, path, Bench.BackupFolders(call.Site, from));
        call.PrintLine($"{saved.Entries} entries saved to {path}");
        foreach (string missing in saved.Missing)
        {
            call.PrintLine(missing);
        }

        if (!saved.Missing.IsEmpty)
        {
            call.Warn($"Not all could be saved; {from.Documents} is as it was.");
            call.ExitCode = RefusedException.DataExit;
        }
    }
}
