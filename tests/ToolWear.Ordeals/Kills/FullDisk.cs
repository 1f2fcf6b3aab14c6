using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Kills;

/// <summary>Fills a real, small disk at many points while a shop records. By hand: it wants a disk of its own.</summary>
internal static class FullDisk
{
    private const int Points = 50;

    /// <summary>Fills the disk at fifty points, frees it, and holds what is found against what was acknowledged.</summary>
    /// <param name="folder">An empty folder on a disk of at most some megabytes, a tmpfs for example.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(string folder)
    {
        int refused = 0;
        long acknowledged = 0;
        long lost = 0;
        for (int point = 0; point < Points; point++)
        {
            string store = Path.Combine(folder, "shop.db");
            string filler = Path.Combine(folder, "filler");
            (long accepted, bool wasRefused) = Record(store, filler, point);
            refused += wasRefused ? 1 : 0;
            File.Delete(filler);
            using (Bench again = Bench.ToWrite(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null), store))
            {
                acknowledged += accepted;
                lost += Math.Max(0, accepted - again.Shop.Ledger.Count);
                bool isSame = again.Shop.Ledger.Select(each => each.What.GetType()).SequenceEqual(Types(accepted));
                // and the shop goes on
                lost +=
                    isSame && again.RecordAll(new SteadyWork(point).Line(accepted + 1), SteadyWork.Day).Number > 0
                        ? 0
                        : 1;
            }

            foreach (string file in Directory.GetFiles(folder))
            {
                File.Delete(file);
            }

            IEnumerable<Type> Types(long count)
            {
                SteadyWork work = new(point);
                for (long next = 1; next <= count; )
                {
                    foreach (LedgerEntry entry in work.Line(next))
                    {
                        next++;
                        yield return entry.GetType();
                    }
                }
            }
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Points} fill points, {refused} refused an entry; acknowledged {acknowledged}, lost or wrong {lost}"
            )
        );
        return lost == 0 && refused == Points ? 0 : 1;
    }

    private static (long Accepted, bool WasRefused) Record(string store, string filler, int point)
    {
        using Bench bench = Bench.ToWrite(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null), store);
        SteadyWork work = new(point);
        try
        {
            for (int i = 0; i < 10_000; i++)
            {
                bench.RecordAll(work.Line(bench.Shop.NextNumber), SteadyWork.Day);
                if (i == 3)
                {
                    Fill(filler, leave: point * 700);
                }
            }
        }
        catch (StoreBrokenException)
        {
            return (bench.Shop.Ledger.Count, true);
        }

        return (bench.Shop.Ledger.Count, false);
    }

    private static void Fill(string path, int leave)
    {
        using FileStream file = File.Create(path);
        byte[] some = new byte[4096];
        try
        {
            while (true)
            {
                file.Write(some);
                file.Flush();
            }
        }
        catch (IOException)
        {
            file.SetLength(Math.Max(0, file.Length - leave));
        }
    }
}
