using System.Collections.Immutable;
using System.Text.Json;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;

namespace ToolWear.Doors;

/// <summary>The one door from commands and screens to the ledger and the shop.</summary>
/// <remarks>An entry is durable before the shop here changes; what the shop refuses is never stored.</remarks>
public sealed class Bench : IDisposable
{
    private readonly Site site;
    private readonly Store? store;
    private readonly OnceKeys keys;

    private Bench(Site site, Store? store, OnceKeys keys, Shop shop)
    {
        this.site = site;
        this.store = store;
        this.keys = keys;
        Shop = shop;
    }

    /// <summary>The shop as its ledger says now.</summary>
    public Shop Shop { get; private set; }

    /// <summary>Whether no other window is open on the store.</summary>
    public bool IsOnlyWindow => store?.HasDocuments ?? false;

    /// <summary>What others have entered since the bench was opened, by other windows and commands.</summary>
    public ImmutableArray<Entered> FromOthers { get; private set; } = [];

    /// <summary>What the store found out of order and has dealt with.</summary>
    public ImmutableArray<StoreFinding> Findings => store?.Findings ?? [];

    /// <summary>What a store must know of entries.</summary>
    /// <param name="site">The world around.</param>
    /// <returns>The settings.</returns>
    public static StoreSettings Settings(Site site) =>
        new(new KnownKinds(EntryFormat.Known), site.Clock, site.NewShopId, Alone: site.Alone);

    /// <summary>Opens a store to write, and makes it where there is none.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="path">The store.</param>
    /// <returns>The bench.</returns>
    /// <exception cref="StoreException">It cannot be opened; the message says why and what to do.</exception>
    public static Bench ToWrite(Site site, string path)
    {
        if (path == site.UsualStore && Path.GetDirectoryName(path) is { Length: > 0 } folder)
        {
            // the usual place is the program's own to make; a folder that was named is not
            site.Disk.MakeFolder(folder);
        }

        OnceKeys known = new();
        LedgerReading reading = new(known);
        Store opened = Store.Open(new StorePaths(path), site.Disk, Settings(site), reading.Take);
        try
        {
            Shop shop = Fold(path, reading);
            if (shop.Settings.Get(ShopSetting.BackupFolder) is { Length: > 0 } second)
            {
                opened.HoldAgainst(second);
            }

            return new(site, opened, known, shop);
        }
        catch
        {
            opened.Dispose();
            throw;
        }
    }

    /// <summary>Whether there is a store.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="path">The store.</param>
    /// <returns>False where nothing stands there.</returns>
    public static bool IsThere(Site site, string path) =>
        site.Disk.KindOf(new StorePaths(path).Journal) != PathKind.Nothing
        || site.Disk.KindOf(path) != PathKind.Nothing;

    /// <summary>Reads a store beside whoever writes it.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="path">The store.</param>
    /// <returns>The bench; it records nothing.</returns>
    /// <exception cref="StoreException">It cannot be read; the message says why and what to do.</exception>
    public static Bench ToRead(Site site, string path)
    {
        StorePaths paths = new(path);
        if (!IsThere(site, path))
        {
            throw new StoreRefusedException(
                $"there is no shop in {path} yet: \"toolwear import FILE\" or \"toolwear add-tool\" begins one, --store FILE names another"
            );
        }

        OnceKeys known = new();
        LedgerReading reading = new(known);
        Store.Read(paths, site.Disk, new KnownKinds(EntryFormat.Known), reading.Take);
        return new(site, null, known, Fold(path, reading));
    }

    /// <summary>Records one entry.</summary>
    /// <param name="entry">What happened.</param>
    /// <returns>Its number, or why the shop refuses it.</returns>
    /// <exception cref="StoreBrokenException">It could not be made durable and was not accepted.</exception>
    public RecordedAs Record(LedgerEntry entry) => RecordAll([entry], site.Today);

    /// <summary>Records entries all together or not at all, as one line of the journal.</summary>
    /// <param name="entries">What happened, in order; at least one.</param>
    /// <param name="day">The shop's day.</param>
    /// <param name="once">The key of a command that is to be done once, null for none.</param>
    /// <returns>The number of the last, which is that of the first time where the key is known; or why the shop refuses one of them.</returns>
    /// <exception cref="StoreBrokenException">They could not be made durable and were not accepted.</exception>
    public RecordedAs RecordAll(ImmutableArray<LedgerEntry> entries, DateOnly day, string? once = null)
    {
        Store writer = store ?? throw new InvalidOperationException("This bench only reads.");
        DateTimeOffset at = site.Clock.GetUtcNow();
        Shop after = Shop;
        string? refusal = null;
        long? before = null;
        // asked under the store's lock, so that nobody can enter between the shop's answer and the disk
        JournalLine? line = writer.Append(
            day,
            added =>
            {
                TakeIn(added);
                before = once is null ? null : keys.NumberOf(once);
                (after, refusal) = before is null ? Tried(entries, at, day) : (Shop, null);
                return refusal is null && before is null
                    ? [.. entries.Select((each, i) => EntryFormat.Write(each, i == entries.Length - 1 ? once : null))]
                    : [];
            }
        );
        if (line is null)
        {
            return new RecordedAs(before, refusal);
        }

        keys.Take(line);
        Shop = after;
        return new RecordedAs(after.Ledger.Count, null);
    }

    /// <summary>Takes in what others have entered meanwhile; waits for nobody.</summary>
    /// <exception cref="StoreException">The journal is not the one that was opened; the message says what to do.</exception>
    public void Look() => TakeIn(store?.Look() ?? []);

    /// <summary>The number of the entry that was recorded with a key; null where none was.</summary>
    /// <param name="once">The key.</param>
    public long? NumberOf(string once) => keys.NumberOf(once);

    /// <summary>Every folder that a shop has ever set for second backups, as far as its journal can be read.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="paths">The store.</param>
    /// <returns>Full paths.</returns>
    public static ImmutableArray<string> BackupFolders(Site site, StorePaths paths)
    {
        HashSet<string> folders = new(StringComparer.Ordinal);
        try
        {
            Store.Read(paths, site.Disk, new KnownKinds(EntryFormat.Known), line => folders.UnionWith(FoldersIn(line)));
        }
        catch (Exception e) when (e is StoreException or JsonException)
        {
            // what is damaged is somebody else's to say; the folders set before it are known
            return [.. folders];
        }

        return [.. folders];
    }

    /// <summary>Copies the journal into the store's own backups and the shop's second folder, as after each session.</summary>
    /// <returns>What went wrong; a backup that fails stops nothing.</returns>
    public IEnumerable<string> BackUp()
    {
        string second = Shop.Settings.Get(ShopSetting.BackupFolder);
        StoreFinding?[] findings = [store?.BackUp(), second.Length == 0 ? null : store?.BackUp(second)];
        return findings.OfType<StoreFinding>().Select(finding => finding.Sentence);
    }

    /// <inheritdoc />
    public void Dispose() => store?.Dispose();

    /// <summary>What is unlikely about the sizes of entries, to be asked about once.</summary>
    /// <param name="entries">The entries, in order.</param>
    /// <returns>Sentences, none where all are likely; null where the shop refuses one.</returns>
    public IReadOnlyList<string>? DoubtsOf(ImmutableArray<LedgerEntry> entries)
    {
        List<string> doubts = [];
        return Tried(entries, site.Clock.GetUtcNow(), site.Today, doubts).Refusal is null ? doubts : null;
    }

    private (Shop After, string? Refusal) Tried(
        ImmutableArray<LedgerEntry> entries,
        DateTimeOffset at,
        DateOnly day,
        List<string>? doubts = null
    )
    {
        Shop after = Shop;
        foreach (LedgerEntry entry in entries)
        {
            if (Pedal.Fault(entry) is { } fault)
            {
                return (Shop, fault);
            }

            Step step = after.After(new Entered(after.NextNumber, at, day, entry));
            // only where it is entered: what stands in a ledger of before is read as it is
            SizeRule sizes = SizeRule.Of(after, entry);
            if (step.After is not { } next || sizes.Cannot is not null)
            {
                return (Shop, step.Refusal ?? sizes.Cannot);
            }

            doubts?.AddRange(sizes.Unlikely is { } doubt ? [doubt] : []);

            after = next;
        }

        return (after, null);
    }

    private static IEnumerable<string> FoldersIn(JournalLine line) =>
        line
            .Bodies.Where(body => body.Contains(ShopSetting.BackupFolder.Name, StringComparison.Ordinal))
            .Select(EntryFormat.Read)
            .OfType<SettingChanged>()
            .Where(change => change.Setting == ShopSetting.BackupFolder.Name && Path.IsPathFullyQualified(change.Value))
            .Select(change => change.Value);

    private void TakeIn(ImmutableArray<JournalLine> added)
    {
        foreach (JournalLine line in added)
        {
            keys.Take(line);
        }

        foreach (Entered entered in LedgerReading.Read(added, Shop.Ledger.Count))
        {
            Shop = Possible(store!.Paths.Documents, Shop.After(entered));
            FromOthers = FromOthers.Add(entered);
        }
    }

    private static Shop Fold(string path, LedgerReading reading) => Possible(path, Shop.Fold(reading.Ledger()));

    private static Shop Possible(string path, Step step) =>
        step.After ?? throw new DamagedJournalException(0, LedgerImpossible(path, step.Refusal!));

    private static string LedgerImpossible(string path, string why) =>
        $"the journal of {path} holds what cannot be: {why}. Nothing was changed. \"toolwear check\" looks further.";
}

/// <summary>What came of recording.</summary>
/// <param name="Number">The number of the last entry recorded; null where it was refused.</param>
/// <param name="Refusal">Why the shop refuses it; null where it was recorded.</param>
public readonly record struct RecordedAs(long? Number, string? Refusal);
