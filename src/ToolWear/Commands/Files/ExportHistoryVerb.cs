using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Pens;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>export-history: the wear history of every tool as one CSV file.</summary>
internal static class ExportHistoryVerb
{
    private static readonly Argument<string> File = new("FILE")
    {
        Description = "the file to write; - is the standard output",
    };

    public static Verb Verb { get; } =
        new(
            "export-history",
            "Writes every reading with its wear, as CSV.",
            "export-history wear.csv",
            [File, Said.Force],
            Run,
            "One row a reading, scrapped tools too, in mm; --as json writes JSON lines. A pipe, a device or what a link leads to is written to as it is; a file is replaced whole and keeps its rights."
        )
        {
            IsCsv = true,
        };

    private static void Run(Call call)
    {
        string typed = call.Get(File)!;
        (int readings, bool isInFile) = HistoryFile.Write(
            call.Site,
            typed,
            call.Forecasts,
            call.Format == "json",
            call.Get(Said.Force),
            call.HasSemicolons
        );
        if (isInFile)
        {
            call.PrintLine(Words.Exported(readings, typed));
        }
    }
}
