using System.Collections.Immutable;
using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>A command whose system calls are recorded, and what its shop may be at any moment of it.</summary>
/// <param name="Name">What it does.</param>
/// <param name="Prepare">Makes what stands in the folder before.</param>
/// <param name="Line">The command line; "*" begins a path in the folder.</param>
internal sealed record Deed(string Name, Action<Shelf> Prepare, params ImmutableArray<string> Line)
{
    /// <summary>The store that is looked at.</summary>
    public string Store { get; init; } = "shop.db";

    /// <summary>Whether the store cannot be read before: then a check may have to be run again.</summary>
    public bool BeginsDamaged { get; init; }

    /// <summary>What else must be there once it is acknowledged, and sound or absent before.</summary>
    public Func<string, bool, string?> Beside { get; init; } = (_, _) => null;

    /// <summary>The line that adds the tool of every deed.</summary>
    public static ImmutableArray<string> Tool { get; } =
    ["add-tool", "R3", "--form", "drift", "--gauge", "width,smaller,60,14.0,12.8,"];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Deed> All { get; } =
    [
        new("heats", Shop, "heats", "R3", "3"),
        new("heats that open a session", ClosedShop, "heats", "R3", "3"),
        new("measure", ClosedShop, "measure", "R3", "width", "13.7"),
        new("close-session", Shop, "close-session"),
        new("cross-out", ClosedShop, "cross-out", "4", "never", "--store", "*shop.db"),
        new("import", Exported, "import", "*set", "--store", "*new.db") { Store = "new.db" },
        new("demo", NewHome, "demo", "--no-screens", "--store", "*new.db") { Store = "new.db" },
        new("backup", Shop, "backup", "*copy") { Beside = Copied },
        new("restore", BackedUp, "restore", "*copy", "--yes") { Beside = KeptAside },
        new("restore without documents", BackedUpAlone, "restore", "*copy", "--yes") { Beside = KeptAside },
        new("restore into nothing", BackedUp, "restore", "*copy", "--yes", "--store", "*new.db") { Store = "new.db" },
        new("export", Shop, "export", "*out") { Beside = WrittenOut },
        new("check of a rotten journal", Rotten, "check") { BeginsDamaged = true },
        new("check without documents", BackedUpAlone, "check"),
        new("first start in a new home", NewHome, [.. Tool]) { Store = "home/.local/share/toolwear/shop.db" },
    ];

    /// <summary>The command line in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The line.</returns>
    public string[] LineIn(string folder)
    {
        string[] line = [.. Line.Select(each => each.StartsWith('*') ? Path.Combine(folder, each[1..]) : each)];
        return line.Contains("--store") || Store != "shop.db"
            ? line
            : [.. line, "--store", Path.Combine(folder, Store)];
    }

    /// <summary>The entries of the store in a folder, as who opens it to write gets them.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>Their texts; none where there is no store.</returns>
    public IReadOnlyList<string> Ledger(string folder)
    {
        StorePaths paths = new(Path.Combine(folder, Store));
        StoreSettings settings = Shelf.Settings;
        List<string> bodies = [];
        RealDisk disk = new();
        if (!Directory.Exists(paths.Folder) || !File.Exists(paths.Journal) && !File.Exists(paths.Documents))
        {
            return bodies;
        }

        Storage.Stores.Store.Open(paths, disk, settings, line => bodies.AddRange(line.Bodies)).Dispose();
        return bodies;
    }

    /// <summary>The same where the store may be damaged from the start.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The texts.</returns>
    public IReadOnlyList<string> LedgerMended(string folder)
    {
        try
        {
            return Ledger(folder);
        }
        catch (DamagedJournalException) when (BeginsDamaged)
        {
            StoreCheck.Run(new StorePaths(Path.Combine(folder, Store)), new RealDisk(), Shelf.Settings);
            return Ledger(folder);
        }
    }

    private const long InShop = 5;
    private const long InBackedUp = 7;

    private static void Shop(Shelf shelf) =>
        shelf.Run([.. Tool], ["heats", "R3", "2"], ["measure", "R3", "width", "13.9"], ["look-over", "R3", "sound"]);

    private static void ClosedShop(Shelf shelf)
    {
        Shop(shelf);
        shelf.Run(["heats", "R3", "4"], ["close-session"]);
    }

    private static void Exported(Shelf shelf)
    {
        ClosedShop(shelf);
        shelf.Run(["export", shelf.In("set")]);
    }

    private static void BackedUp(Shelf shelf)
    {
        Shop(shelf);
        shelf.Run(["backup", shelf.In("copy")], ["heats", "R3", "4"], ["close-session"]);
    }

    private static void BackedUpAlone(Shelf shelf)
    {
        BackedUp(shelf);
        File.Delete(shelf.In("shop.db"));
    }

    private static void Rotten(Shelf shelf)
    {
        Shop(shelf);
        string journal = shelf.In("shop.db.journal");
        byte[] bytes = File.ReadAllBytes(journal);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(journal, bytes);
    }

    private static void NewHome(Shelf shelf) => Directory.CreateDirectory(shelf.In("home"));

    private static string? Copied(string folder, bool isAcknowledged)
    {
        string copy = Path.Combine(folder, "copy");
        return File.Exists(copy) ? Held(copy, InShop)
            : isAcknowledged ? "the copy is gone"
            : null;
    }

    // the shop that a restore puts away must not be lost before the other is there, nor after
    private static string? KeptAside(string folder, bool isAcknowledged)
    {
        string journal = Path.Combine(folder, "shop.db.journal");
        string? aside = Directory.GetFiles(folder, "shop.db.journal.aside*").FirstOrDefault();
        return Held(journal, InShop) is not null ? null
            : aside is null ? "what was there is not kept aside"
            : Held(aside, InBackedUp);
    }

    private static string? Held(string journal, long entries)
    {
        try
        {
            StorePaths nowhere = new(Path.Combine(Path.GetDirectoryName(journal)!, "nowhere.db"));
            long then = Restore.Look(nowhere, new RealDisk(), Shelf.Settings.Kinds, journal).Then.Point.Seq;
            return then == entries ? null : $"{journal} holds {then} entries";
        }
        catch (StoreException e)
        {
            return e.Message;
        }
    }

    private static string? WrittenOut(string folder, bool isAcknowledged)
    {
        string whole = Path.Combine(folder, "whole");
        string written = Path.Combine(folder, "out");
        using StringWriter said = new();
        Site site = KilledRecorder.SiteOf(new RealDisk(), said);
        if (Verbs.Run(site, ["export", whole, "--store", Path.Combine(folder, "shop.db")]) != 0)
        {
            return said.ToString();
        }

        foreach (string path in Directory.GetFiles(whole, "*.csv"))
        {
            string other = Path.Combine(written, Path.GetFileName(path));
            bool isThere = File.Exists(other);
            if (isThere ? !File.ReadAllBytes(path).SequenceEqual(File.ReadAllBytes(other)) : isAcknowledged)
            {
                return Path.GetFileName(path) + (isThere ? " is not whole" : " is gone");
            }
        }

        return null;
    }
}
