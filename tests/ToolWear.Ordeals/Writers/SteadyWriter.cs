using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Ordeals.Syscalls;
using ToolWear.Storage;
using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Writers;

/// <summary>A child that keeps one shop open, as a window does, and records what can be told from all others' by its note.</summary>
internal static class SteadyWriter
{
    /// <summary>Records; says on standard output "entry N NOTE" for what was accepted and "no SENTENCE" for what was not.</summary>
    /// <param name="store">The store; its tool R3 is looked over again and again.</param>
    /// <param name="name">The writer's name.</param>
    /// <param name="count">How many entries are tried.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string store, string name, int count)
    {
        Site site = KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null);
        Bench? bench = null;
        for (int i = 0; i < count; i++)
        {
            string note = string.Create(CultureInfo.InvariantCulture, $"{name}-{i}");
            try
            {
                bench ??= Bench.ToWrite(site, store);
                RecordedAs recorded = bench.Record(
                    new ToolLookedOver(Shelf.Tool, site.Today, Finding.Sound, null, note)
                );
                Console.WriteLine(recorded.Number is { } number ? $"entry {number} {note}" : $"no {recorded.Refusal}");
            }
            catch (StoreException e)
            {
                Console.WriteLine("no " + e.Message);
                bench?.Dispose();
                bench = null;
            }
        }

        bench?.Dispose();
        return 0;
    }
}
