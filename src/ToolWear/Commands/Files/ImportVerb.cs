using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Files;

/// <summary>import: a CSV set, or one table of tools in use, into an empty store.</summary>
internal static class ImportVerb
{
    private static readonly Argument<string> Source = new("DIR")
    {
        Description = "a folder with the CSV set, or one CSV table of tools in use",
    };

    public static Verb Verb { get; } =
        new(
            "import",
            "Takes a folder of CSV files, or one table of the tools you have, into an empty store.",
            "import my-tools.csv",
            [Source],
            Run,
            "All or nothing: what is wrong is listed by file, line and column. The folder is one that export wrote, or one\n"
                + "made like it. A table of the tools you have is a CSV file with a header row and these columns, sizes in mm:\n"
                + $"{ToolsInUseColumns}."
        );

    private static void Run(Call call)
    {
        string path = NamedFiles.FullPath("DIR", call.Get(Source)!);
        CsvImported imported = NamedFiles.ReadSet(path, call.Site.Today);
        call.RefuseFaults(imported.Faults, imported.MoreFaults);
        Bench bench = call.ToWrite();
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

        Into(bench, imported.Entries, call.Site.Today, call.Get(Said.Once));
        call.WarnOfMarksAlike(imported.Entries);
        call.PrintLine(
            $"{imported.Entries.Length} entries, {bench.Shop.Tools.Count} tools, {bench.Shop.Sessions.Count} sessions imported"
        );
    }

    /// <summary>Enters what was imported as one line of the journal.</summary>
    public static void Into(Bench bench, ImmutableArray<LedgerEntry> entries, DateOnly day, string? once = null)
    {
        if (bench.RecordAll(entries, day, once).Refusal is { } refusal)
        {
            throw RefusedException.WrongData(refusal);
        }
    }

    private const string ToolsInUseColumns =
        "tool, form, size_mm (now); where known eye, place, section, steel, gauge, wears, scrap_mm, made_mm, "
        + "heats_before, heats_before_how, guess_heats, on, peg, note";
}
