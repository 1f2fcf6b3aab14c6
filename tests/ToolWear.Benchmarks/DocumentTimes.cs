using System.Collections.Immutable;
using System.Diagnostics;
using ToolWear.Storage;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Entries;

namespace ToolWear.Benchmarks;

/// <summary>What a store's documents take: a check of all, a tool's entries, building them anew. The store stays as it is.</summary>
internal static class DocumentTimes
{
    private const int Wanted = 500;
    private const int Questions = 21;

    /// <summary>Measures, and writes one line for each: what, figure, unit.</summary>
    /// <param name="path">A store that nobody has open.</param>
    /// <param name="to">Where the lines go.</param>
    public static void Measure(string path, TextWriter to)
    {
        // first, so that the memory of the process is that of the check
        var disk = new RealDisk();
        var paths = new StorePaths(path);
        long began = Stopwatch.GetTimestamp();
        CheckReport report = StoreCheck.Run(paths, disk, StoreMade.Settings);
        to.WriteLine($"check {Since(began).TotalSeconds:0.00} s");
        using (var self = Process.GetCurrentProcess())
        {
            to.WriteLine($"check-memory {self.PeakWorkingSet64 / 1048576.0:0} MiB");
        }

        to.WriteLine($"check-entries {report.Entries} entries, {report.Findings.Length} findings");
        Ask(paths, disk, to);
        Rebuild(paths, disk, report.Entries, to);
    }

    // Tools wear out before they have 500 entries: as many neighbours are asked as together have them, which is more
    // work than one tool of 500. Each question goes to another part of the store, so that its pages are cold.
    private static void Ask(StorePaths paths, RealDisk disk, TextWriter to)
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
        to.WriteLine($"tool-entries {times[Questions / 2]:0.00} ms, worst {times[^1]:0.00}, for {Wanted} entries");
        to.WriteLine($"tool-questions {tools[Questions / 2]} tools for them");
    }

    private static void Rebuild(StorePaths paths, RealDisk disk, long entries, TextWriter to)
    {
        var anew = new StorePaths(paths.Documents + ".anew");
        File.Copy(paths.Journal, anew.Journal, overwrite: true);
        try
        {
            long began = Stopwatch.GetTimestamp();
            // closing waits until the documents have followed
            Store.Open(anew, disk, StoreMade.Settings, _ => { }).Dispose();
            to.WriteLine($"rebuild {entries / Since(began).TotalSeconds:0} entries/s");
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
