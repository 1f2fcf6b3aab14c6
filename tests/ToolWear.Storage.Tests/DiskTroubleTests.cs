using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests;

public sealed class DiskTroubleTests
{
    [Fact]
    public void A_full_disk_at_any_byte_of_any_append_loses_nothing_accepted()
    {
        var roomy = new CrashingDisk();
        long all = Work(roomy, long.MaxValue).Written;
        int refused = 0;
        for (long free = 0; free < all; free += 3)
        {
            var disk = new CrashingDisk();
            (ImmutableArray<string> accepted, _, bool wasRefused) = Work(disk, free);
            refused += wasRefused ? 1 : 0;
            disk.FreeBytes = long.MaxValue;
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, disk), StringComparer.Ordinal);
        }
        Assert.InRange(refused, 100, 2000);
    }

    [Fact]
    public void After_a_failed_sync_nothing_was_accepted_and_nothing_more_is_until_reopened()
    {
        for (int after = 1; after <= 5; after++)
        {
            var disk = new CrashingDisk();
            var accepted = ImmutableArray.CreateBuilder<string>();
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
            {
                store.Append(TestShop.Day, TestShop.Note(1));
                accepted.Add(TestShop.Note(1));
                disk.FailSyncAt = disk.Syncs + after;
                for (int i = 1; i < after; i++)
                {
                    store.Append(TestShop.Day, TestShop.Heats("R3", i));
                    accepted.Add(TestShop.Heats("R3", i));
                }
                Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", after)));
                int operations = disk.Operations;
                Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", after)));
                Assert.Equal(operations, disk.Operations);
            }
            // the line must not be shown from memory: no later sync would bring it to the disk
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, disk), StringComparer.Ordinal);
            CrashingDisk dark = disk.AfterPowerCut(new Tear(new FirstBytes(0)));
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, dark), StringComparer.Ordinal);
        }
    }

    [Fact]
    public void A_torn_tail_is_dropped_and_said_so_and_a_line_without_its_end_is_kept_and_said_so()
    {
        var disk = new CrashingDisk();
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
            store.Append(TestShop.Day, TestShop.Heats("R3", 2));
        }
        byte[] whole = disk.Bytes(TestShop.OnCrashingDisk.Journal);
        foreach (
            (int missing, FindingKind kind, int left) in new[]
            {
                (1, FindingKind.LineCompleted, 2),
                (2, FindingKind.TailDropped, 1),
            }
        )
        {
            disk.Put(TestShop.OnCrashingDisk.Journal, whole[..^missing]);
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
            {
                Assert.Contains(store.Findings, finding => finding.Kind == kind);
                Assert.Equal(left, store.LastSeq);
            }
            Assert.Equal(left, TestShop.Bodies(TestShop.OnCrashingDisk, disk).Length);
        }
    }

    [Fact]
    public void A_disk_that_refuses_the_new_store_leaves_nothing_that_is_taken_for_one()
    {
        var disk = new CrashingDisk { FailSyncAt = 1 };
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", 1)));
        }
        Assert.Empty(TestShop.Bodies(TestShop.OnCrashingDisk, disk));
    }

    [Fact]
    public void What_is_written_after_the_folder_has_vanished_is_not_accepted()
    {
        using var folder = new TemporaryFolder();
        string home = folder.File("home");
        Directory.CreateDirectory(home);
        var paths = new StorePaths(Path.Combine(home, "shop.db"));
        var disk = new RealDisk();
        using (Store store = TestShop.Open(paths, disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
            Directory.Move(home, folder.File("away"));
            StoreBrokenException e = Assert.Throws<StoreBrokenException>(() =>
                store.Append(TestShop.Day, TestShop.Heats("R3", 2))
            );
            Assert.Contains("was moved or deleted", e.Message, StringComparison.Ordinal);
            Assert.Equal(FindingKind.BackupFailed, store.BackUp()?.Kind);
        }
        Assert.Throws<StoreRefusedException>(() => TestShop.Open(paths, disk));
        Directory.Move(folder.File("away"), home);
        Assert.Equal([TestShop.Heats("R3", 1)], TestShop.Bodies(paths, disk));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Where_nothing_may_be_written_the_shop_can_be_read_and_is_said_to_be_so(bool isWholeDisk)
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, new RealDisk()))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        }
        var locked = new ReadOnlyDisk(isWholeDisk);
        StoreRefusedException refused = Assert.Throws<StoreRefusedException>(() => TestShop.Open(folder.Store, locked));
        Assert.Contains("check --read-only still work", refused.Message, StringComparison.Ordinal);
        Assert.Equal(1, Store.Read(folder.Store, locked, TestShop.Kinds, _ => { }).Seq);
        Assert.Single(TestShop.Bodies(folder.Store, new RealDisk()));
    }

    [Fact]
    public void A_clock_that_runs_backwards_changes_no_order()
    {
        var disk = new CrashingDisk { HoldsDocuments = true };
        var clock = new BackwardsClock();
        StoreSettings settings = TestShop.Settings() with { Clock = clock };
        using (Store store = Store.Open(TestShop.OnCrashingDisk, disk, settings, _ => { }))
        {
            for (int i = 1; i <= 5; i++)
            {
                store.Append(TestShop.Day.AddDays(-i), TestShop.Heats("R3", i));
            }
            Assert.True(store.VerifyDocuments());
        }
        Assert.Equal(
            Enumerable.Range(1, 5).Select(i => TestShop.Heats("R3", i)),
            TestShop.Bodies(TestShop.OnCrashingDisk, disk),
            StringComparer.Ordinal
        );
    }

    private static (ImmutableArray<string> Accepted, long Written, bool WasRefused) Work(CrashingDisk disk, long free)
    {
        var accepted = ImmutableArray.CreateBuilder<string>();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        disk.FreeBytes = free;
        try
        {
            for (int i = 1; i <= 8; i++)
            {
                string body = i % 3 == 0 ? TestShop.Note(i * 20) : TestShop.Heats("R3", i);
                store.Append(TestShop.Day, body);
                accepted.Add(body);
            }
        }
        catch (StoreBrokenException e)
        {
            Assert.Contains("not accepted", e.Message, StringComparison.Ordinal);
            return (accepted.DrainToImmutable(), free, true);
        }
        return (accepted.DrainToImmutable(), free - disk.FreeBytes, false);
    }

    private sealed class BackwardsClock : TimeProvider
    {
        private DateTimeOffset _now = new(2026, 11, 24, 22, 42, 46, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => _now -= TimeSpan.FromDays(1);
    }

    /// <summary>The real disk, on which this user may write nothing: the tests themselves may run as one who may write all.</summary>
    private sealed class ReadOnlyDisk(bool isWholeDisk) : IDisk
    {
        private readonly RealDisk _disk = new();

        public PathKind KindOf(string path) => _disk.KindOf(path);

        public IDiskFile OpenToRead(string path) => _disk.OpenToRead(path);

        public IDiskFile OpenToWrite(string path) => throw Refused(path);

        public IDiskFile Create(string path) => throw Refused(path);

        public Stream OpenDocuments(string path) => throw Refused(path);

        public IDiskLock? TryLock(string path) => throw Refused(path);

        public void Move(string from, string to) => throw Refused(from);

        public void Delete(string path) => throw Refused(path);

        public void MakeFolder(string path) => throw Refused(path);

        public IReadOnlyList<string> FilesIn(string path) => _disk.FilesIn(path);

        public void SyncFolder(string path) => throw Refused(path);

        private Exception Refused(string path) =>
            isWholeDisk
                ? new IOException("Read-only file system : '" + path + "'")
                : new UnauthorizedAccessException("Access to the path '" + path + "' is denied.");
    }
}
