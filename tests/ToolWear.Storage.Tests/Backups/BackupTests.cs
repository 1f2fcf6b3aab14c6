using System.Collections.Immutable;
using ToolWear.Storage.Backups;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Backups;

public sealed class BackupTests
{
    private readonly RealDisk _disk = new();

    [Fact]
    public void A_backup_is_the_journal_and_comes_back_as_the_same_shop()
    {
        using var folder = new TemporaryFolder();
        string backup = folder.File("copy.toolwear");
        Fill(folder.Store, 5);
        byte[] then = File.ReadAllBytes(folder.Store.Journal);
        Assert.Equal(5, Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, backup).Point.Seq);
        Assert.Equal(then, File.ReadAllBytes(backup));
        Fill(folder.Store, 3);
        RestoreOutlook outlook = Restore.Look(folder.Store, _disk, TestShop.Kinds, backup);
        Assert.Equal("shop 01234567 until 2026-11-24, entry 5", outlook.Then.ToString());
        Assert.Equal((3L, false), (outlook.Gone, outlook.IsOtherShop));
        byte[] now = File.ReadAllBytes(folder.Store.Journal);
        Restore.PutInPlace(folder.Store, _disk, TestShop.Settings(), backup);
        Assert.Equal(5, TestShop.Bodies(folder.Store, _disk).Length);
        Assert.Equal(then, File.ReadAllBytes(folder.Store.Journal));
        string aside = Directory.GetFiles(folder.Path, "*.journal.aside-*").Single();
        Assert.Equal(now, File.ReadAllBytes(aside));
        Assert.Empty(StoreCheck.Run(folder.Store, _disk, TestShop.Settings()).Findings);
    }

    [Fact]
    public void A_backup_is_made_beside_an_open_screen()
    {
        using var folder = new TemporaryFolder();
        using Store store = TestShop.Open(folder.Store, _disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        Assert.Equal(1, Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, folder.File("b")).Point.Seq);
    }

    [Fact]
    public void A_backup_replaces_an_older_backup_and_nothing_else()
    {
        using var folder = new TemporaryFolder();
        Fill(folder.Store, 2);
        string letter = folder.File("letter.txt");
        File.WriteAllLines(letter, ["Dear smith,"]);
        byte[] before = File.ReadAllBytes(letter);
        foreach (string target in new[] { letter, folder.Path, folder.Store.Documents, folder.Store.Journal })
        {
            Assert.Throws<StoreRefusedException>(() => Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, target));
        }
        Assert.Equal(before, File.ReadAllBytes(letter));
        string backup = folder.File("b");
        Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, backup);
        Fill(folder.Store, 2);
        Assert.Equal(4, Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, backup).Point.Seq);
    }

    [Fact]
    public void A_damaged_backup_is_refused_and_the_shop_left_as_it_is()
    {
        using var folder = new TemporaryFolder();
        Fill(folder.Store, 4);
        string backup = folder.File("b");
        Backup.CopyOut(folder.Store, _disk, TestShop.Kinds, backup);
        using (FileStream file = File.OpenWrite(backup))
        {
            file.Position = 150;
            file.WriteByte((byte)'x');
        }
        byte[] before = File.ReadAllBytes(folder.Store.Journal);
        Assert.Throws<DamagedJournalException>(() => Restore.Look(folder.Store, _disk, TestShop.Kinds, backup));
        Assert.Throws<DamagedJournalException>(() =>
            Restore.PutInPlace(folder.Store, _disk, TestShop.Settings(), backup)
        );
        Assert.Equal(before, File.ReadAllBytes(folder.Store.Journal));
    }

    [Fact]
    public void A_restore_survives_a_power_cut_at_every_point_as_the_old_shop_or_the_new()
    {
        CrashingDisk filled = WithBackup(out string backup);
        var counted = filled.AfterKill();
        Restore.PutInPlace(TestShop.OnCrashingDisk, counted, TestShop.Settings(), backup);
        for (int at = 1; at <= counted.Operations; at++)
        {
            CrashingDisk disk = filled.AfterKill();
            disk.CutPowerAt = at;
            Assert.Throws<PowerCutException>(() =>
                Restore.PutInPlace(TestShop.OnCrashingDisk, disk, TestShop.Settings(), backup)
            );
            for (int names = 0; names <= disk.PendingNames; names++)
            {
                CrashingDisk dark = disk.AfterPowerCut(new Tear(new FirstBytes(100), names));
                Assert.Contains(TestShop.Bodies(TestShop.OnCrashingDisk, dark).Length, new[] { 3, 5 });
            }
        }
    }

    [Fact]
    public void A_backup_cut_at_every_point_leaves_the_journal_and_every_older_backup()
    {
        CrashingDisk filled = WithBackup(out _);
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, filled))
        {
            Assert.Null(store.BackUp());
            store.Append(TestShop.Day, TestShop.Heats("R3", 6));
        }
        var counted = filled.AfterKill();
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, counted))
        {
            int before = counted.Operations;
            Assert.Null(store.BackUp());
            counted.CutPowerAt = counted.Operations - before;
        }
        int points = 0;
        for (int at = 1; at <= counted.CutPowerAt; at++)
        {
            CrashingDisk disk = filled.AfterKill();
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
            {
                disk.CutPowerAt = disk.Operations + at;
                Assert.Throws<PowerCutException>(() => store.BackUp());
            }
            for (int names = 0; names <= disk.PendingNames; names++)
            {
                for (int bytes = 0; bytes <= disk.LastWriteLength; bytes += 50)
                {
                    CrashingDisk dark = disk.AfterPowerCut(new Tear(new FirstBytes(bytes), names));
                    long[] backups =
                    [
                        .. BackupFolder
                            .Of(dark, TestShop.OnCrashingDisk.Backups, TestShop.Id)
                            .Select(each => JournalCopy.Read(dark, each.Path, TestShop.Kinds).Seq),
                    ];
                    Assert.True(backups is [5] or [6, 5], string.Join(' ', backups));
                    Assert.Equal(6, TestShop.Bodies(TestShop.OnCrashingDisk, dark).Length);
                    points++;
                }
            }
        }
        Assert.InRange(points, 30, 1000);
    }

    [Fact]
    public void After_going_back_behind_entries_a_check_does_not_bring_them_back()
    {
        CrashingDisk disk = WithBackup(out string backup);
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            Assert.Null(store.BackUp());
        }
        Restore.PutInPlace(TestShop.OnCrashingDisk, disk, TestShop.Settings(), backup);
        Assert.Equal(3, StoreCheck.Run(TestShop.OnCrashingDisk, disk, TestShop.Settings()).Entries);
    }

    [Fact]
    public void A_failed_backup_warns_and_stops_nothing()
    {
        var disk = new CrashingDisk();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        store.Append(TestShop.Day, TestShop.Note(200));
        disk.FreeBytes = 100;
        Assert.Equal(FindingKind.BackupFailed, store.BackUp()?.Kind);
        disk.FreeBytes = 5000;
        Assert.Null(store.BackUp());
        Assert.Equal(2, store.Append(TestShop.Day, TestShop.Heats("R3", 1)).Seq);
    }

    [Fact]
    public void The_last_ten_backups_are_kept_and_the_newest_of_each_month()
    {
        var at = new DateTimeOffset(2026, 1, 1, 12, 0, 0, TimeSpan.Zero);
        ImmutableArray<(string Path, BackupName Name)> newestFirst =
        [
            .. Enumerable
                .Range(0, 100)
                .Select(i => new BackupName("01234567", at.AddDays(99 - i), 100 - i, 1))
                .Select(name => (name.ToString(), name)),
        ];
        HashSet<string> gone = [.. BackupFolder.NoLongerKept(newestFirst)];
        DateTimeOffset[] kept =
        [
            .. newestFirst.Where(backup => !gone.Contains(backup.Path)).Select(backup => backup.Name.At),
        ];
        Assert.Equal(
            ["0331", "0228", "0131"],
            kept.Skip(10).Select(day => $"{day.Month:d2}{day.Day:d2}"),
            StringComparer.Ordinal
        );
        Assert.Equal(newestFirst.Take(10).Select(backup => backup.Name.At), kept.Take(10));
    }

    [Fact]
    public void A_clock_that_runs_backwards_makes_no_new_backup_the_oldest()
    {
        var clock = new FixedClock(new DateTimeOffset(2026, 11, 24, 12, 0, 0, TimeSpan.Zero));
        var disk = new CrashingDisk();
        using Store store = Store.Open(
            TestShop.OnCrashingDisk,
            disk,
            TestShop.Settings() with
            {
                Clock = clock,
            },
            _ => { }
        );
        for (int i = 1; i <= 30; i++)
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", i));
            Assert.Null(store.BackUp());
            clock.Now = clock.Now.AddHours(-5);
        }
        long[] kept =
        [
            .. BackupFolder.Of(disk, TestShop.OnCrashingDisk.Backups, TestShop.Id).Select(each => each.Name.Seq),
        ];
        Assert.Equal([30, 29, 28, 27, 26, 25, 24, 23, 22, 21], kept.Take(10));
        Assert.InRange(kept.Length, 10, 20);
    }

    [Fact]
    public void After_going_back_new_backups_stay_beside_those_that_hold_more()
    {
        CrashingDisk disk = WithBackup(out string backup);
        const string Second = CrashingDisk.Folder + "/second";
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            for (int i = 0; i < 15; i++)
            {
                store.Append(TestShop.Day, TestShop.Heats("R3", i));
                Assert.Null(store.BackUp(Second));
            }
        }
        Restore.PutInPlace(TestShop.OnCrashingDisk, disk, TestShop.Settings(), backup);
        var later = new FixedClock(new DateTimeOffset(2027, 1, 1, 12, 0, 0, TimeSpan.Zero));
        StoreSettings settings = TestShop.Settings() with { Clock = later };
        using Store again = Store.Open(TestShop.OnCrashingDisk, disk, settings, _ => { });
        for (int i = 4; i <= 6; i++)
        {
            again.Append(TestShop.Day, TestShop.Heats("R3", i));
            Assert.Null(again.BackUp(Second));
            later.Now = later.Now.AddDays(1);
        }
        long[] newest =
        [
            .. BackupFolder
                .Of(disk, Second, TestShop.Id)
                .OrderByDescending(each => each.Name.At)
                .Select(each => each.Name.Seq)
                .Take(3),
        ];
        Assert.Equal([6, 5, 4], newest);
    }

    [Theory]
    [InlineData("letter.journal")]
    [InlineData("01234567-20261124T224246123Z-42-89abcdef.journal")]
    [InlineData("01234567-20261124T224246123Z-0000000042-89ABCDEF.journal")]
    [InlineData("01234567-20261124T224246123Z-0000000042-89abcdef.journal.aside")]
    public void Another_name_is_never_taken_for_a_backup(string name)
    {
        Assert.Null(BackupName.TryRead(name));
        Assert.NotNull(BackupName.TryRead("01234567-20261124T224246123Z-0000000042-89abcdef.journal"));
    }

    private static CrashingDisk WithBackup(out string backup)
    {
        var disk = new CrashingDisk();
        backup = CrashingDisk.Folder + "/b";
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        for (int i = 1; i <= 5; i++)
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", i));
            if (i == 3)
            {
                Backup.CopyOut(TestShop.OnCrashingDisk, disk, TestShop.Kinds, backup);
            }
        }
        return disk;
    }

    private void Fill(StorePaths paths, int entries)
    {
        using Store store = TestShop.Open(paths, _disk);
        for (int i = 0; i < entries; i++)
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", i + 1));
        }
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
