using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands;

/// <summary>import: a CSV set, or one table of tools in use, into an empty store.</summary>
internal static class ImportVerb
{
    private static readonly Argument<string> Source = new("DIR")
    {
        Description = "a folder with the CSV set, or one CSV table of tools in use",
    };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "import",
            "Takes a folder of CSV files, or one table of the tools you have, into an empty store.",
            "import my-tools.csv",
            [Source],
            Run,
            "All or nothing: what is wrong is listed by file, line and column. The folder is one that export wrote, or one\n"
                + "made like it. A table of the tools you have is a CSV file with a header row and these columns, sizes in mm:\n"
                + $"{Words.ToolsInUseColumns}."
        );

    private static void Run(Call call)
    {
        string path = Call.FullPath("DIR", call.Get(Source));
        CsvImported imported = Read(path, call.Site.Today);
        Refuse(call, imported.Faults, imported.MoreFaults);
        using Bench bench = call.ToWrite();
        if (bench.Shop.Ledger.Count > 0)
        {
            throw RefusedException.WrongData(
                $"the store holds {bench.Shop.Ledger.Count} entries already: import goes into an empty store only (--store FILE names another)"
            );
        }

        if (imported.Entries.IsEmpty)
        {
            throw RefusedException.WrongData($"{path} holds nothing to import");
        }

        Into(bench, imported.Entries, call.Site.Today);
        call.WarnOfMarksAlike(bench.Shop, imported.Entries);
        call.PrintLine(
            $"{imported.Entries.Length} entries, {bench.Shop.Tools.Count} tools, {bench.Shop.Sessions.Count} sessions imported"
        );
    }

    /// <summary>Reads a folder with the CSV set, or one table of tools in use.</summary>
    public static CsvImported Read(string path, DateOnly today) =>
        Directory.Exists(path) ? CsvSet.Import(Files.InFolder(path), today)
        : File.Exists(path) ? CsvSet.ImportToolsInUse(Files.Read(path), today)
        : throw RefusedException.WrongData($"there is no folder and no file {path}");

    /// <summary>Enters what was imported as one line of the journal.</summary>
    public static void Into(Bench bench, ImmutableArray<LedgerEntry> entries, DateOnly day)
    {
        if (bench.RecordAll(entries, day).Refusal is { } refusal)
        {
            throw RefusedException.WrongData(refusal);
        }
    }

    /// <summary>Says what is wrong with files and stops, where anything is.</summary>
    public static void Refuse(Call call, ImmutableArray<CsvFault> faults, int more)
    {
        if (faults.IsEmpty)
        {
            return;
        }

        foreach (CsvFault fault in faults)
        {
            call.Warn(fault.ToString());
        }

        throw RefusedException.WrongData(
            more > 0
                ? $"and {more} faults more; nothing was taken"
                : $"{faults.Length} {(faults.Length == 1 ? "fault" : "faults")}; nothing was taken"
        );
    }
}
