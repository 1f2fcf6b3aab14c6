using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Storage;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using ToolWear.Testing.NaiveShop;

namespace ToolWear.Ordeals.Rot;

/// <summary>Flips bits of a journal of 200 entries, one at a time: in contents, checksums and line ends alike.</summary>
/// <remarks>
/// A flip must be refused, by who reads and by who writes, with the line named in which it lies; or the shop must be the
/// same by the hash of its fold. Of the refused a share is given to a check, which must give back every byte.
/// </remarks>
internal sealed class JournalFlips
{
    private const int Entries = 200;

    private static readonly StorePaths Paths = new(CrashingDisk.Folder + "/shop.db");

    private readonly CrashingDisk _filled = new() { HoldsDocuments = true };
    private readonly CrashingDisk _bare = new();
    private readonly StoreSettings _settings;
    private readonly byte[] _whole;
    private readonly string _hash;

    public JournalFlips()
    {
        _settings = Bench.Settings(KilledRecorder.SiteOf(_filled, TextWriter.Null));
        Fill();
        _whole = _filled.Bytes(Paths.Journal);
        _bare.Put(Paths.Journal, _whole);
        _hash = Read(_bare);
    }

    /// <summary>How many bits there are.</summary>
    public int Bits => _whole.Length * 8;

    /// <summary>How many bits were flipped.</summary>
    public int Flipped { get; private set; }

    /// <summary>How many were refused with the right line named.</summary>
    public int Refused { get; private set; }

    /// <summary>How many left the same shop.</summary>
    public int Same { get; private set; }

    /// <summary>How many of the refused were given to a check, and mended to the last byte.</summary>
    public int Mended { get; private set; }

    /// <summary>What was otherwise.</summary>
    public List<string> Wrong { get; } = [];

    /// <summary>Flips every bit, a stretch of them on each core, and says what came of it; progress to standard error.</summary>
    /// <param name="mendEvery">How many flips there are to one that is mended.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(int mendEvery)
    {
        const int Stretch = 10_000;
        ConcurrentBag<JournalFlips> all = [];
        int bits = new JournalFlips().Bits;
        _ = Parallel.For(
            0,
            (bits + Stretch - 1) / Stretch,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            () => new JournalFlips(),
            (stretch, _, flips) =>
            {
                for (int bit = stretch * Stretch; bit < Math.Min(bits, (stretch + 1) * Stretch); bit++)
                {
                    flips.Flip(bit, mend: bit % mendEvery == 0);
                }

                Console.Error.WriteLine(
                    $"bits {stretch * Stretch} to {Math.Min(bits, (stretch + 1) * Stretch) - 1}: done"
                );
                return flips;
            },
            all.Add
        );
        JournalFlips sum = all.First();
        foreach (JournalFlips flips in all.Skip(1))
        {
            sum.Add(flips);
        }

        Console.Write(sum.ToString());
        return sum.Wrong.Count == 0 && sum.Flipped == bits ? 0 : 1;
    }

    /// <summary>Flips one bit.</summary>
    /// <param name="bit">Which, from 0.</param>
    /// <param name="mend">Whether a check must then mend it.</param>
    public void Flip(int bit, bool mend)
    {
        byte[] rotten = [.. _whole];
        rotten[bit / 8] ^= (byte)(1 << (bit % 8));
        _bare.Put(Paths.Journal, rotten);
        int line = 1 + _whole.AsSpan(0, bit / 8).Count((byte)'\n');
        bool readerRefuses = Refuses(() => Read(_bare), line, bit);
        bool writerRefuses = Refuses(() => ReadToWrite(_bare), line, bit);
        Flipped++;
        Refused += readerRefuses && writerRefuses ? 1 : 0;
        Same += readerRefuses || writerRefuses ? 0 : 1;
        if (readerRefuses != writerRefuses)
        {
            Wrong.Add($"bit {bit}: only one of reader and writer refuses it");
        }

        if (mend && readerRefuses)
        {
            Mend(rotten, bit);
        }
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            {Entries} entries, {_whole.Length} bytes, {Flipped} bits flipped
            refused with their line named {Refused}, the same shop {Same}, given to a check and mended {Mended}, wrong {Wrong.Count}
            {string.Join('\n', Wrong.Take(20))}

            """
        );

    private void Fill()
    {
        SteadyWork work = new(1);
        using Store store = Store.Open(Paths, _filled, _settings, _ => { });
        while (store.LastSeq < Entries)
        {
            store.Append(SteadyWork.Day, [.. work.Line(store.LastSeq + 1).Select(entry => EntryFormat.Write(entry))]);
        }
    }

    private void Add(JournalFlips other)
    {
        Flipped += other.Flipped;
        Refused += other.Refused;
        Same += other.Same;
        Mended += other.Mended;
        Wrong.AddRange(other.Wrong);
    }

    // The shop is the same, or the line is named; anything else is wrong.
    private bool Refuses(Func<string> read, int line, int bit)
    {
        try
        {
            if (read() != _hash)
            {
                Wrong.Add($"bit {bit}: a silently different shop");
            }

            return false;
        }
        catch (DamagedJournalException e)
        {
            if (e.Line != line || !e.Message.StartsWith($"Line {line} of ", StringComparison.Ordinal))
            {
                Wrong.Add($"bit {bit} in line {line}: {e.Message}");
            }

            return true;
        }
    }

    private void Mend(byte[] rotten, int bit)
    {
        CrashingDisk disk = _filled.AfterKill();
        disk.Put(Paths.Journal, rotten);
        CheckReport report = StoreCheck.Run(Paths, disk, _settings);
        if (report.IsAnythingGone || !disk.Bytes(Paths.Journal).AsSpan().SequenceEqual(_whole))
        {
            Wrong.Add($"bit {bit}: not mended");
        }
        else
        {
            Mended++;
        }
    }

    private string Read(CrashingDisk disk)
    {
        List<Entered> ledger = [];
        Store.Read(Paths, disk, _settings.Kinds, line => Take(ledger, line));
        return HashOf(ledger);
    }

    private string ReadToWrite(CrashingDisk disk)
    {
        List<Entered> ledger = [];
        Store.Open(Paths, disk, _settings, line => Take(ledger, line)).Dispose();
        return HashOf(ledger);
    }

    private static void Take(List<Entered> ledger, JournalLine line)
    {
        foreach (string body in line.Bodies)
        {
            ledger.Add(new Entered(ledger.Count + 1, line.At, line.Day, EntryFormat.Read(body)));
        }
    }

    private static string HashOf(List<Entered> ledger) =>
        Shop.Fold(ledger).After is { } shop
            ? Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(ShopTold.Of(shop))))
            : "no shop";
}
