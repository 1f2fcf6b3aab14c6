using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Storage.Csv;

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
            [Folder, Said.Force],
            Run,
            $"It replaces only what an export wrote, which is listed in {CsvFolder.List}. Crossed-out entries are left\n"
                + "out, and heads by stage: a session keeps the heads it finished. backup makes the complete copy."
        );

    private static void Run(Call call)
    {
        string folder = NamedFiles.FullPath("DIR", call.Get(Folder)!);
        if (File.Exists(folder))
        {
            throw RefusedException.WrongData($"{folder} is a file: name a folder");
        }

        IReadOnlyList<CsvFile> files = CsvSet.Export(call.Shop);
        CsvFolder.Write(call.Site.Disk, folder, files, call.Get(Said.Force));
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
