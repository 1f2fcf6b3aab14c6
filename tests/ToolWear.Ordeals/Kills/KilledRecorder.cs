using System.Globalization;
using System.Text;
using ToolWear.Doors;
using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Kills;

/// <summary>The child: opens the store as the program does, records for ever and says what is accepted, until it is killed.</summary>
/// <remarks>
/// On standard output: "o N" opened with N entries; "w" the first byte of a line is written; "a N" the line up to entry N
/// is accepted. Nothing is buffered, so that what is said before a kill is heard after it.
/// </remarks>
internal static class KilledRecorder
{
    /// <summary>Records.</summary>
    /// <param name="store">The store.</param>
    /// <param name="seed">What is recorded.</param>
    /// <param name="pause">The longest pause within a line (ms), 0 for writing it in one piece.</param>
    /// <returns>Never.</returns>
    public static int Run(string store, int seed, int pause)
    {
        using Stream output = Console.OpenStandardOutput();
        void Say(string word) => output.Write(Encoding.ASCII.GetBytes(word + "\n"));
        Random chance = new(seed + Environment.ProcessId);
        IDisk disk = pause == 0 ? new RealDisk() : new PausingDisk(chance, pause, () => Say("w"));
        using Bench bench = Bench.ToWrite(SiteOf(disk, TextWriter.Null), store);
        SteadyWork work = new(seed);
        Say(string.Create(CultureInfo.InvariantCulture, $"o {bench.Shop.Ledger.Count}"));
        while (true)
        {
            RecordedAs recorded = bench.RecordAll(work.Line(bench.Shop.NextNumber), SteadyWork.Day);
            Say(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a {recorded.Number ?? throw new InvalidOperationException(recorded.Refusal)}"
                )
            );
        }
    }

    /// <summary>The world around a bench in a folder.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="said">Where it speaks.</param>
    /// <returns>The site.</returns>
    public static Site SiteOf(IDisk disk, TextWriter said) =>
        new(said, said, TimeProvider.System, disk, () => Guid.NewGuid().ToString("N"), "", Path.GetTempPath());
}
