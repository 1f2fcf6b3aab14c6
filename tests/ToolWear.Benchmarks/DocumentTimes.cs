using System.Collections.Immutable;
using System.Diagnostics;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Entries;

namespace ToolWear.Benchmarks;

/// <summary>What a store's documents take: to give a tool's entries, to be built anew. The store stays as it is.</summary>
internal static class DocumentTimes
{
    private const int Wanted = 500;
    private const int Questions = 21;

    /// <summary>Measures both.</summary>
    /// <param name="path">A store that nobody has open.</param>
    /// <param name="said">Where to.</param>
    public static void Measure(string path, TextWriter said)
    {
        var disk = new RealDisk();
        var paths = new StorePaths(path);
        Ask(paths, disk, said);
        Rebuild(paths, disk, said);
    }

    // Tools wear out before they have 500 entries: as many neighbours are asked as together have them, which is more
    // work than one tool of 500. Each question goes to another part of the store, so that its pages are cold.
    private static void Ask(StorePaths paths, RealDisk disk, TextWriter said)
    {
        ImmutableArray<string>.Builder marks = ImmutableArray.CreateBuilder<string>();
        using var store = Store.Open(
            paths,
            disk,
            StoreMade.Settings,
            line =>
            {
                foreach (
                    string body in line.Bodies.Where(body => body.Contains("tool-added", StringComparison.Ordinal))
                )
                {
                    marks.AddRange(EntryFormat.Read(body).Tools.Select(mark => mark.Text));
                }
            }
        );
        var times = new List<double>();
        var tools = new List<int>();
        for (int i = 0; i < Questions; i++)
        {
            int first = (int)((long)marks.Count * i / Questions);
            int found = 0;
            int asked = 0;
            long began = Stopwatch.GetTimestamp();
            while (found < Wanted && first + asked < marks.Count)
            {
                ImmutableArray<StoredEntry> entries = store.EntriesOfTool(marks[first + asked]);
                found += Math.Min(entries.Length, Wanted);
                asked++;
            }

            times.Add(Since(began).TotalMilliseconds);
            tools.Add(asked);
        }

        times.Sort();
        tools.Sort();
        Measuring.Row(
            said,
            Measuring.Invariant($"{Wanted} entries of {tools[Questions / 2]} tools; worst"),
            store.LastSeq,
            times[Questions / 2],
            times[^1],
            null,
            "ours <= 10",
            ""
        );
    }

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
