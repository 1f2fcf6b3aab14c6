using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;

namespace ToolWear.Commands.Files;

/// <summary>backup: a verified copy out.</summary>
internal static class BackupVerb
{
    private static readonly Argument<string> File = new("FILE")
    {
        Description = "the file to write, best on another disk",
    };

    public static Verb Verb { get; } =
        new(
            "backup",
            "Writes a verified copy of the whole shop.",
            "backup shop-2026-05-01.backup",
            [File, Said.Force],
            Run,
            "You can run it while the screens are open."
        );

    private static void Run(Call call)
    {
        string path = NamedFiles.FullPath("FILE", call.Get(File)!);
        JournalHeld copy = Backup.CopyOut(
            new StorePaths(call.StorePath),
            call.Site.Disk,
            new KnownKinds(EntryFormat.Known),
            path,
            call.Get(Said.Force)
        );
        call.PrintLine($"{copy.Point.Seq} entries copied to {call.Get(File)} and read back: {copy}");
    }
}
