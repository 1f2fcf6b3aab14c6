using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;

namespace ToolWear.Commands.Files;

/// <summary>restore: a backup in the store's place.</summary>
internal static class RestoreVerb
{
    private static readonly Argument<string> File = new("FILE") { Description = "a backup" };
    private static readonly Option<bool> Yes = Said.Switch("--yes", "do it; without it only what would happen is said");

    public static Verb Verb { get; } =
        new(
            "restore",
            "Puts a backup in the shop's place, with --yes.",
            "restore shop-2026-05-01.backup --yes",
            [File, Yes],
            Run,
            "Without --yes it only says how many entries would go. What is there now is kept beside under another name."
        );

    private static void Run(Call call)
    {
        string path = NamedFiles.FullPath("FILE", call.Get(File)!);
        NamedFiles.MustBePlain(path);
        StorePaths paths = new(call.StorePath);
        RestoreOutlook outlook = Restore.Look(paths, call.Site.Disk, new KnownKinds(EntryFormat.Known), path);
        string would = $"{outlook.Then.Point.Seq} entries then ({outlook.Then}), {outlook.Gone} of those now would go";
        if (!call.Get(Yes))
        {
            throw RefusedException.WrongUsage(
                $"{would}{(outlook.IsOtherShop ? "; the backup is of another shop" : "")}. Nothing was changed; --yes does it"
            );
        }

        Restore.PutInPlace(
            paths,
            call.Site.Disk,
            Bench.Settings(call.Site),
            path,
            Bench.BackupFolders(call.Site, paths)
        );
        call.PrintLine($"restored: {would}; the files that were here lie beside under another name");
    }
}
