using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;

namespace ToolWear.Storage.Tests;

/// <summary>A small shop's entries, and a store to put them in.</summary>
internal static class TestShop
{
    internal const string Id = "0123456789abcdef0123456789abcdef";

    internal static readonly DateOnly Day = new(2026, 11, 24);

    internal static readonly KnownKinds Kinds = new(
        new Dictionary<string, int>(StringComparer.Ordinal) { ["heats"] = 2, ["note"] = 1 }
    );

    internal static readonly StorePaths OnCrashingDisk = new(CrashingDisk.Folder + "/shop.db");

    internal static StoreSettings Settings() => new(Kinds, new SteadyClock(), () => Id, TimeSpan.FromSeconds(4));

    internal static string Heats(string tool, int heats) =>
        $$"""{"kind":"heats","v":1,"tool":"{{tool}}","heats":{{heats}}}""";

    internal static string Note(int length) => $$"""{"kind":"note","v":1,"text":"{{new string('n', length)}}"}""";

    /// <summary>Opens the store and collects what it accepted.</summary>
    internal static Store Open(StorePaths paths, IDisk disk, List<JournalLine>? lines = null) =>
        Store.Open(paths, disk, Settings(), line => lines?.Add(line));

    /// <summary>The entries a store holds, read anew from its files.</summary>
    internal static ImmutableArray<string> Bodies(StorePaths paths, IDisk disk)
    {
        var bodies = ImmutableArray.CreateBuilder<string>();
        using Store store = Store.Open(paths, disk, Settings(), line => bodies.AddRange(line.Bodies));
        return bodies.DrainToImmutable();
    }

    /// <summary>A clock that goes on by 1.234 s whenever it is asked.</summary>
    private sealed class SteadyClock : TimeProvider
    {
        private DateTimeOffset _now = new(2026, 11, 24, 22, 42, 46, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => _now += TimeSpan.FromMilliseconds(1234);
    }
}
