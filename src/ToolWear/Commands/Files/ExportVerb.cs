using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Storage.Csv;
using ToolWear.Storage.Disks;

namespace ToolWear.Commands.Files;

/// <summary>export: the shop as CSV files.</summary>
internal static class ExportVerb
{
    private static readonly Argument<string> Folder = new("DIR")
    {
        Description = "the folder to write to; made where there is none",
    };

    public static Verb Verb { get; } =
        new(
            "export",
            "Writes the shop as CSV files, its present meaning, notes too.",
            "export my-shop",
            [Folder],
            Run,
            "It writes its own files only. Crossed-out entries are left out, and heads by stage: a session keeps the heads it\n"
                + "finished. backup makes the complete copy."
        );

    private static void Run(Call call)
    {
        string folder = NamedFiles.FullPath("DIR", call.Get(Folder)!);
        if (File.Exists(folder))
        {
            throw RefusedException.WrongData($"{folder} is a file: name a folder");
        }

        IReadOnlyList<CsvFile> files = CsvSet.Export(call.Shop);
        Directory.CreateDirectory(folder);
        foreach (CsvFile file in files)
        {
            WholeFile.Write(call.Site.Disk, Path.Combine(folder, file.Name), file.Bytes.Span);
        }

        // a file of the set that has no rows any more must not speak of what was exported here before
        foreach (string stale in CsvSet.FileNames.Except(files.Select(file => file.Name), StringComparer.Ordinal))
        {
            File.Delete(Path.Combine(folder, stale));
        }

        int stages = call.Shop.Sessions.Values.Count(session => !session.HeadsByStage.IsEmpty);
        if (stages > 0)
        {
            call.Warn(HeadsByStageStay(stages));
        }

        call.PrintLine($"{files.Count} files written to {call.Get(Folder)}");
    }

    private static string HeadsByStageStay(int sessions) =>
        $"heads by stage of {(sessions == 1 ? "one session" : $"{sessions} sessions")} have no column and stay behind; backup takes them along";
}
