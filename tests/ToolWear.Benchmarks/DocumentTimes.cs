using System.Diagnostics;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;

namespace ToolWear.Benchmarks;

/// <summary>How fast a store's documents are built anew. The store stays as it is.</summary>
internal static class DocumentTimes
{
    /// <summary>Measures.</summary>
    /// <param name="path">A store that nobody has open.</param>
    /// <param name="said">Where to.</param>
    public static void Measure(string path, TextWriter said) => Rebuild(new StorePaths(path), new RealDisk(), said);

    private static void Rebuild(StorePaths paths, RealDisk disk, TextWriter said)
    {
        var anew = new StorePaths(paths.Documents + ".anew");
        File.Copy(paths.Journal, anew.Journal, overwrite: true);
        try
        {
            long began = Stopwatch.GetTimestamp();
            long entries;
            // closing waits until the documents have followed
            using (Store store = Store.Open(anew, disk, StoreMade.Settings, _ => { }))
            {
                entries = store.LastSeq;
            }

            double rate = entries / Since(began).TotalSeconds;
            Measuring.Row(said, "documents built anew, entries/s", entries, rate, null, null, "ours >= 25000", "");
        }
        finally
        {
            foreach (string file in new[] { anew.Journal, anew.Documents, anew.DocumentLog, anew.Lock })
            {
                File.Delete(file);
            }
        }
    }

    private static TimeSpan Since(long began) => Stopwatch.GetElapsedTime(began);
}
