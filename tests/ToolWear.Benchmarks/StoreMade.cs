using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.LargeShops;

namespace ToolWear.Benchmarks;

/// <summary>Makes the store of a large invented shop, the same bytes for the same figures.</summary>
internal static class StoreMade
{
    /// <summary>What the store is told.</summary>
    public static StoreSettings Settings { get; } =
        new(new KnownKinds(EntryFormat.Known), TimeProvider.System, () => new string('0', 32));

    /// <summary>Makes it.</summary>
    /// <param name="path">Where; nothing may stand there.</param>
    /// <param name="eyes">Eyes, each a kind of its own.</param>
    /// <param name="tools">Drifts in service.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>How many entries it has.</returns>
    public static long At(string path, int eyes, int tools, int entries, int seed)
    {
        return Written(path, LargeShop.Ledger(eyes, tools, entries, seed));
    }

    /// <summary>Makes the store of a shop in which every screen has much to show.</summary>
    /// <param name="path">Where; nothing may stand there.</param>
    /// <param name="tools">Drifts in service.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="today">Its last day.</param>
    /// <returns>How many entries it has.</returns>
    public static long Crowded(string path, int tools, int entries, int seed, DateOnly today) =>
        Written(path, CrowdedShop.Ledger(tools, entries, seed, today, areLong: false));

    /// <summary>The world around a program that speaks to nobody.</summary>
    /// <param name="store">Its store.</param>
    public static Site SiteOf(string store) =>
        new(
            TextWriter.Null,
            TextWriter.Null,
            TimeProvider.System,
            new RealDisk(),
            () => new string('0', 32),
            store,
            Path.GetDirectoryName(store)!
        );

    private static long Written(string path, IEnumerable<(DateOnly Day, LedgerEntry Entry)> ledger)
    {
        using Store store = Store.Open(new StorePaths(path), new QuickDisk(), Settings, _ => { });
        foreach ((DateOnly day, LedgerEntry entry) in ledger)
        {
            store.Append(day, EntryFormat.Write(entry));
        }

        return store.LastSeq;
    }
}
