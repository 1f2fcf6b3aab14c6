using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Ledger;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;

namespace ToolWear.Doors;

/// <summary>What of a damaged shop was saved into a new one.</summary>
/// <param name="Entries">How many entries the new shop has.</param>
/// <param name="Missing">What it has not, by number, a line each.</param>
internal sealed record Salvaging(long Entries, ImmutableArray<string> Missing)
{
    /// <summary>Saves every line that can be proved and that the shop can still take without those that are lost.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="from">The damaged store; it stays as it is.</param>
    /// <param name="path">The new store; nothing stands there.</param>
    /// <param name="folders">Where backups lie besides the store's own folder.</param>
    public static Salvaging Into(Site site, StorePaths from, string path, IEnumerable<string> folders)
    {
        StorePaths into = new(path);
        if (site.Disk.KindOf(path) != PathKind.Nothing || site.Disk.KindOf(into.Journal) != PathKind.Nothing)
        {
            throw new StoreRefusedException($"{path} is there already. Nothing was saved; name a new file.");
        }

        var clock = new ClockOfLines(site.Clock);
        Dictionary<long, long> numbers = [];
        var missing = ImmutableArray.CreateBuilder<string>();
        long next = 1;
        using Bench bench = Bench.ToWrite(site with { Clock = clock }, path);
        foreach (JournalLine line in Salvage.Lines(from, site.Disk, new KnownKinds(EntryFormat.Known), folders))
        {
            if (line.Seq > next)
            {
                missing.Add($"missing: {Span(next, line.Seq - 1)}");
            }

            next = line.LastSeq + 1;
            clock.Now = line.At;
            if (Take(bench, line, numbers) is { } refusal)
            {
                missing.Add($"not taken: {Span(line.Seq, line.LastSeq)}: {refusal}");
            }
        }

        return new(bench.Shop.Ledger.Count, missing.ToImmutable());
    }

    private static string Span(long first, long last) =>
        first == last ? $"entry {first}" : $"entries {first} to {last}";

    private static string? Take(Bench bench, JournalLine line, Dictionary<long, long> numbers)
    {
        try
        {
            LedgerEntry?[] entries = [.. line.Bodies.Select(body => Renumbered(EntryFormat.Read(body), numbers))];
            if (entries.Contains(null))
            {
                return "it speaks of an entry that is missing";
            }

            string? once = EntryFormat.OnceOf(line.Bodies.Utf8(line.Bodies.Count - 1));
            RecordedAs recorded = bench.RecordAll([.. entries.OfType<LedgerEntry>()], line.Day, once);
            for (int i = 0; recorded.Number is { } number && i < entries.Length; i++)
            {
                numbers[line.Seq + i] = number - entries.Length + 1 + i;
            }

            return recorded.Refusal;
        }
        catch (JsonException)
        {
            return "it is not written as an entry is";
        }
    }

    // two kinds of entry speak of others by number
    private static LedgerEntry? Renumbered(LedgerEntry entry, Dictionary<long, long> numbers) =>
        entry switch
        {
            EntryCrossedOut e => numbers.TryGetValue(e.Entry, out long number) ? e with { Entry = number } : null,
            EntryCountsAgain e => numbers.TryGetValue(e.Entry, out long number) ? e with { Entry = number } : null,
            _ => entry,
        };

    /// <summary>The moment at which the line at hand was accepted.</summary>
    private sealed class ClockOfLines(TimeProvider zone) : TimeProvider
    {
        public DateTimeOffset Now { get; set; }

        public override TimeZoneInfo LocalTimeZone => zone.LocalTimeZone;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
