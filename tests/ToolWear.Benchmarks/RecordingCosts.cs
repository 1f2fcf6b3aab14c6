using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Stores;
using ToolWear.Testing.LargeShops;

namespace ToolWear.Benchmarks;

/// <summary>From an entry to "saved" on a real disk, in turns with one bare append of the same bytes and its sync.</summary>
internal static class RecordingCosts
{
    private const int Before = 1000;

    // the documents follow behind on a thread of their own: neither of the two shall wait for the disk because of them
    private const int RestMs = 15;

    /// <summary>Measures it.</summary>
    /// <param name="folder">A folder on the disk.</param>
    /// <param name="runs">How many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="said">Where to.</param>
    public static void Measure(string folder, int runs, int seed, TextWriter said)
    {
        string path = Path.Combine(folder, "recorded.db");
        StorePaths paths = new(path);
        _ = StoreMade.At(path, 4, 12, Before, seed);
        (DateOnly Day, LedgerEntry Entry)[] next =
        [
            .. LargeShop.Ledger(4, 12, Before + (2 * runs) + 40, seed).Skip((int)Written(paths)),
        ];
        RealDisk disk = new();
        string beside = Path.Combine(folder, "recorded.bare");
        File.Copy(paths.Journal, beside);
        using IDiskFile bare = disk.OpenToWrite(beside);
        byte[] line = [];
        using (Store store = Store.Open(paths, disk, StoreMade.Settings, _ => { }))
        {
            int at = 0;
            (double ours, double other) = Measuring.InTurns(
                runs,
                _ =>
                {
                    string body = EntryFormat.Write(next[at].Entry);
                    return Appended(paths, () => store.Append(next[at++].Day, body), ref line);
                },
                _ => Bare(bare, line)
            );
            Say("Store.Append; bare append and sync", runs, ours, other, "ratio <= 1.3");
        }

        using Bench bench = Bench.ToWrite(StoreMade.SiteOf(path), path);
        ImmutableArray<LedgerEntry> rest = [.. next.Skip(runs + 1).Select(each => each.Entry)];
        int place = 0;
        (double whole, double again) = Measuring.InTurns(
            Math.Min(runs, rest.Length - 1),
            _ => Appended(paths, () => MustBeRecorded(bench.RecordAll([rest[place++]], next[^1].Day)), ref line),
            _ => Bare(bare, line)
        );
        Say("Bench.Record, the shop's rules too; the same", runs, whole, again, "");

        void Say(string what, int n, double ours, double other, string goal) =>
            Measuring.Row(said, what, n, ours, other, ours / other, goal, Measuring.Hash(line));
    }

    private static long Written(StorePaths paths)
    {
        long last = 0;
        Store.Read(paths, new RealDisk(), StoreMade.Settings.Kinds, line => last = line.LastSeq);
        return last;
    }

    private static void MustBeRecorded(RecordedAs recorded)
    {
        if (recorded.Refusal is { } refusal)
        {
            throw new InvalidOperationException(refusal);
        }
    }

    // the line that was added is what the bare append writes next
    private static double Appended(StorePaths paths, Action append, ref byte[] line)
    {
        long before = new FileInfo(paths.Journal).Length;
        Thread.Sleep(RestMs);
        double ms = Measuring.Timed(append);
        using FileStream journal = File.OpenRead(paths.Journal);
        journal.Position = before;
        line = new byte[journal.Length - before];
        journal.ReadExactly(line);
        return ms;
    }

    private static double Bare(IDiskFile file, byte[] line)
    {
        long end = file.Length;
        Thread.Sleep(RestMs);
        return Measuring.Timed(() =>
        {
            file.Write(end, line);
            file.Sync();
        });
    }
}
