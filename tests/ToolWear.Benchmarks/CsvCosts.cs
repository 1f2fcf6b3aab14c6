using CsvHelper;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Csv;
using ToolWear.Storage.Disks;
using ToolWear.Testing.LargeShops;

namespace ToolWear.Benchmarks;

/// <summary>Export and import beside the library of CSV alone, on the same rows.</summary>
internal static class CsvCosts
{
    /// <summary>Measures both.</summary>
    /// <param name="folder">A folder on the disk.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="runs">How often each.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="said">Where to.</param>
    public static void Measure(string folder, int entries, int runs, int seed, TextWriter said)
    {
        (DateOnly Day, LedgerEntry Entry)[] ledger = [.. LargeShop.Ledger(10, 40, entries, seed)];
        DateOnly today = ledger[^1].Day;
        Shop shop = FoldedOf(ledger);
        IReadOnlyList<CsvFile> files = CsvSet.Export(shop);
        string[][][] rows = [.. files.Select(Rows)];
        long count = rows.Sum(file => file.Length - 1);
        string hash = Hash(files);
        string bareHash = "";
        (double ours, double bare) = Measuring.InTurns(
            runs,
            _ => Measuring.Timed(() => files = CsvSet.Export(shop)),
            _ => Measuring.Timed(() => bareHash = Hash([.. rows.Select(file => new CsvFile("", Written(file)))]))
        );
        MustBe(hash, Hash(files));
        MustBe(hash, bareHash);
        Measuring.Row(
            said,
            "export; bare writing of the same rows",
            count,
            ours,
            bare,
            bare / ours,
            "ratio >= 0.3",
            hash
        );
        rows = [];
        Import(folder, files, count, today, runs, said);
    }

    private static void Import(
        string folder,
        IReadOnlyList<CsvFile> files,
        long count,
        DateOnly today,
        int runs,
        TextWriter said
    )
    {
        byte[] journal = [];
        string hash = "";
        List<double> closed = [];
        (double ours, double bare) = Measuring.InTurns(
            runs,
            run =>
            {
                string path = Path.Combine(folder, Measuring.Invariant($"imported{run}.db"));
                double saved = 0;
                double all = Measuring.Timed(() =>
                {
                    using Bench bench = Bench.ToWrite(StoreMade.SiteOf(path), path);
                    saved = Measuring.Timed(() => bench.RecordAll(CsvSet.Import(files, today).Entries, today));
                    hash = Hash(CsvSet.Export(bench.Shop));
                });
                closed.Add(all);
                journal = File.ReadAllBytes(new StorePaths(path).Journal);
                Directory.GetFiles(folder, "imported*").ToList().ForEach(File.Delete);
                return saved;
            },
            run => Measuring.Timed(() => ReadAndAppended(files, Path.Combine(folder, "imported.bare"), journal))
        );
        MustBe(Hash(files), hash);
        Measuring.Row(
            said,
            "import; bare reading and one append",
            count,
            ours,
            bare,
            bare / ours,
            "ratio >= 0.3",
            hash
        );
    }

    private static Shop FoldedOf((DateOnly Day, LedgerEntry Entry)[] ledger)
    {
        Step step = Shop.Fold([
            .. ledger.Select((each, i) => new Entered(i + 1, DateTimeOffset.UnixEpoch, each.Day, each.Entry)),
        ]);
        return step.After ?? throw new InvalidOperationException(step.Refusal);
    }

    private static void ReadAndAppended(IEnumerable<CsvFile> files, string path, byte[] journal)
    {
        foreach (CsvFile file in files)
        {
            _ = Rows(file);
        }

        using IDiskFile bare = new RealDisk().Create(path);
        bare.Write(0, journal);
        bare.Sync();
    }

    private static string[][] Rows(CsvFile file)
    {
        using CsvReader reader = CsvReader.Create(
            file.Bytes,
            new CsvReaderOptions { Separator = ',', HasHeader = false }
        );
        List<string[]> rows = [];
        while (reader.Read())
        {
            string[] cells = new string[reader.FieldCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = reader.GetString(i);
            }

            rows.Add(cells);
        }

        return [.. rows];
    }

    private static byte[] Written(string[][] rows)
    {
        using MemoryStream stream = new();
        using (CsvWriter writer = CsvWriter.Create(stream, leaveOpen: true))
        {
            foreach (string[] row in rows)
            {
                foreach (string cell in row)
                {
                    writer.WriteField(cell);
                }

                writer.EndRecord();
            }

            writer.Flush();
        }

        return stream.ToArray();
    }

    private static string Hash(IReadOnlyList<CsvFile> files) =>
        Measuring.Hash(string.Concat(files.Select(file => Measuring.Hash(file.Bytes.Span))));

    private static void MustBe(string wanted, string got)
    {
        if (got != wanted)
        {
            throw new InvalidOperationException($"the results differ: {wanted}, {got}");
        }
    }
}
