using System.Collections.Immutable;
using System.Reflection;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Csv;

namespace ToolWear.Demo;

/// <summary>The invented shop that travels inside the program.</summary>
public static class DemoShop
{
    private const string Folder = "seed-data/";

    /// <summary>The CSV files of the shop, as they were made.</summary>
    /// <returns>The files.</returns>
    public static IEnumerable<CsvFile> Files()
    {
        Assembly program = typeof(DemoShop).Assembly;
        foreach (
            string name in program
                .GetManifestResourceNames()
                .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
        )
        {
            using Stream stream = program.GetManifestResourceStream(name)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            yield return new CsvFile(name[Folder.Length..], bytes);
        }
    }

    /// <summary>The shop's entries, moved by whole weeks so that its last session lies 1 to 7 days before a day.</summary>
    /// <param name="on">That day.</param>
    /// <returns>The entries for an empty store.</returns>
    public static ImmutableArray<LedgerEntry> Entries(DateOnly on)
    {
        CsvImported made = CsvSet.Import(Files(), DateOnly.MaxValue);
        if (!made.Faults.IsEmpty)
        {
            throw new InvalidOperationException($"The demo shop is faulty: {made.Faults[0]}");
        }

        DateOnly last = made.Entries.OfType<SessionOpened>().Max(session => session.On);
        int weeks = (int)Math.Ceiling((on.DayNumber - 7 - last.DayNumber) / 7.0);
        MovedDays moved = new(weeks * 7, on);
        return [.. made.Entries.Select(moved.Of)];
    }
}
