using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>export-history: the wear history of every tool as one CSV file.</summary>
internal static class ExportHistoryVerb
{
    private static readonly Argument<string> File = new("FILE") { Description = "the file to write" };

    public static Verb Verb { get; } =
        new(
            "export-history",
            "Writes the wear history, a row a reading, scrapped tools too, as CSV in mm; with --as json as JSON lines.",
            "export-history wear.csv",
            [File, Said.Force],
            Run
        );

    private static void Run(Call call)
    {
        string path = NamedFiles.FullPath("FILE", call.Get(File)!);
        int readings = HistoryFile.Write(
            call.Site,
            path,
            call.Forecasts,
            call.Units,
            call.Format == "json",
            call.Get(Said.Force)
        );
        call.PrintLine(Words.Exported(readings, call.Get(File)!));
    }
}
