using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Files;

/// <summary>import: a CSV set into an empty store, or one table as people keep it into any.</summary>
internal static class ImportVerb
{
    private static readonly Argument<string> Source = new("DIR|FILE")
    {
        Description = "a folder with the CSV set, or one table; - is the standard input",
    };

    private static readonly Option<bool> Try = Said.Switch("--try", "show what would come in; nothing is written");

    private static readonly Option<bool> Update = Said.Switch("--update", "correct what the shop has already");

    private static readonly Option<bool> IgnoreUnknown = Said.Switch("--ignore-unknown", "leave unknown columns out");

    private static readonly Option<bool> KeepUnknown = Said.Switch(
        "--keep-unknown",
        "keep unknown columns in the note"
    );

    private static readonly Option<string?> CarryDown = Said.Text(
        "--carry-down",
        "COLUMNS",
        "an empty cell repeats the one above: form,eye,steel"
    );

    public static Verb Verb { get; } =
        new(
            "import",
            "Imports a table from a spreadsheet, or a folder of CSV files.",
            "import my-tools.csv --try",
            [Source, Try, Update, IgnoreUnknown, KeepUnknown, CarryDown],
            Run,
            "All or nothing: what is wrong is listed by line and column, with what would be right.\n"
                + $"A table is one of {string.Join(", ", Tables.All.Select(kind => kind.Name))}, known by its headings; \"toolwear template\" makes an empty one. Separator, decimal mark, encoding and line ends are found out and said. Headings are read whatever their case and order; sizes may name their unit in the heading or the cell. A folder is one that export wrote, or one made like it, and is read to the letter, into an empty shop."
        );

    private static void Run(Call call)
    {
        string typed = call.Get(Source)!;
        bool isThere = Bench.IsThere(call.Site, call.StorePath);
        Shop shop =
            !isThere ? Shop.Empty
            : call.Get(Try) ? call.Shop
            : call.ToWrite().Shop;
        if (typed != "-" && Directory.Exists(typed))
        {
            call.Without("goes with one table, not with a folder", Update, IgnoreUnknown, KeepUnknown, CarryDown);
            Folder(call, NamedFiles.FullPath("DIR", typed), shop);
            return;
        }

        CsvFile file = NamedFiles.Table(call.Site, typed);
        BringingWishes wishes = new(
            call.Get(IgnoreUnknown),
            call.Get(KeepUnknown),
            call.Get(Update),
            call.SaidOn,
            BringingWishes.Columns(call.Get(CarryDown) ?? "")
        );
        LengthUnit units = call.Get(Said.Units) ?? shop.Settings.Units;
        BroughtFile brought = BroughtFile.Of(file, shop, units, call.Site.Today, wishes);
        if (call.Get(Try) && call.Format == "text")
        {
            call.Print(BroughtText.Of(brought, units, call.Width));
            call.ExitCode = brought.Faults.IsEmpty ? 0 : RefusedException.DataExit;
            return;
        }

        call.Warn(BroughtText.Understood(brought));
        foreach (RowRemark doubt in brought.Doubts)
        {
            call.Warn(doubt.ToString());
        }

        call.RefuseFaults(brought.ToldFaults, brought.MoreFaults);
        if (call.Get(Try))
        {
            call.Print(BroughtTable.Rows(brought));
            return;
        }

        Enter(call, brought.What!.Entries, BroughtText.NothingNew(brought));
    }

    private static void Folder(Call call, string path, Shop shop)
    {
        CsvImported imported = NamedFiles.ReadSet(path, shop, call.Site.Today);
        call.RefuseFaults(imported.Faults, imported.MoreFaults);
        if (call.Get(Try))
        {
            call.PrintLine($"{imported.Entries.Length} entries can come in; nothing was written");
            return;
        }

        Enter(call, imported.Entries, $"{path} has nothing to import");
    }

    private static void Enter(Call call, ImmutableArray<LedgerEntry> entries, string nothing)
    {
        if (entries.IsEmpty)
        {
            throw RefusedException.WrongData(nothing);
        }

        Bench bench = call.ToWrite();
        IReadOnlyList<string>? doubts = bench.DoubtsOf(entries);
        Into(bench, entries, call.Site.Today, call.Get(Said.Once));
        call.WarnOfMarksAlike(entries);
        call.WarnOfSizes(doubts);
        call.PrintLine(BroughtText.Imported(entries.Length, bench.Shop));
    }

    /// <summary>Enters what was imported as one line of the journal.</summary>
    public static void Into(Bench bench, ImmutableArray<LedgerEntry> entries, DateOnly day, string? once = null)
    {
        if (bench.RecordAll(entries, day, once).Refusal is { } refusal)
        {
            throw RefusedException.WrongData(refusal);
        }
    }
}
