using System.Diagnostics;
using System.Globalization;
using ToolWear.Ordeals.Processes;
using ToolWear.Storage;
using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Kills;

/// <summary>How long a second writer waits for its refusal while another process records. By hand: it asserts no time.</summary>
internal static class SecondWriter
{
    /// <summary>Tries to open a store that another process records into, and says how long the refusals took.</summary>
    /// <param name="number">How often.</param>
    /// <returns>The exit code: 1 where it was let in.</returns>
    public static int ByHand(int number)
    {
        using TemporaryFolder folder = new();
        StorePaths paths = new(folder.In("shop.db"));
        RealDisk disk = new();
        StoreSettings settings = Bench.Settings(KilledRecorder.SiteOf(disk, TextWriter.Null));
        using Process first = Programs.StartSelf("recorder", paths.Documents, "3", "5");
        try
        {
            while (first.StandardOutput.ReadLine() != "a 4") { }
            List<double> took = [];
            for (int i = 0; i < number; i++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                try
                {
                    Store.Open(paths, disk, settings, _ => { }).Dispose();
                    return 1;
                }
                catch (StoreBusyException)
                {
                    took.Add(watch.Elapsed.TotalMilliseconds);
                }
            }

            took.Sort();
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{number} of {number} refused; median {took[number / 2]:0.0} ms, longest {took[^1]:0.0} ms"
                )
            );
            return 0;
        }
        finally
        {
            first.Kill();
        }
    }
}
