using System.Text;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Backups;

public sealed class StoreCheckTests
{
    private static readonly StorePaths Paths = TestShop.OnCrashingDisk;

    [Fact]
    public void A_sound_store_has_nothing_to_say()
    {
        CrashingDisk disk = Filled();
        CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
        Assert.Empty(report.Findings);
        Assert.Equal(9, report.Entries);
        Assert.False(report.IsAnythingGone);
    }

    [Fact]
    public void Any_damaged_line_stops_the_opening_and_is_mended_from_the_documents()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Journal);
        int mended = 0;
        for (int at = 0; at < whole.Length - 1; at += 13)
        {
            CrashingDisk disk = filled.AfterKill();
            byte[] rotten = Flipped(whole, at);
            disk.Put(Paths.Journal, rotten);
            Assert.Throws<DamagedJournalException>(() => TestShop.Open(Paths, disk));
            Assert.Equal(rotten, disk.Bytes(Paths.Journal));
            CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
            Assert.False(report.IsAnythingGone);
            Assert.Contains(report.Findings, finding => finding.Kind == FindingKind.JournalMended);
            Assert.Equal(whole, disk.Bytes(Paths.Journal));
            string aside = disk.FilesIn(CrashingDisk.Folder)
                .Single(file => file.Contains(".aside-", StringComparison.Ordinal));
            Assert.Equal(rotten, disk.Bytes(aside));
            mended++;
        }
        Assert.InRange(mended, 50, 500);
    }

    [Fact]
    public void A_journal_that_is_gone_or_cut_is_made_anew_from_the_documents()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Journal);
        int firstLine = Array.IndexOf(whole, (byte)'\n') + 1;
        foreach (int length in new[] { 0, 40, firstLine, firstLine + 5, whole.Length / 2, whole.Length - 1 })
        {
            CrashingDisk disk = filled.AfterKill();
            disk.Put(Paths.Journal, whole[..length]);
            CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
            Assert.False(report.IsAnythingGone);
            Assert.Equal(whole, disk.Bytes(Paths.Journal));
        }
        CrashingDisk gone = filled.AfterKill();
        gone.Delete(Paths.Journal);
        Assert.Throws<DamagedJournalException>(() => TestShop.Open(Paths, gone));
        Assert.Equal(9, StoreCheck.Run(Paths, gone, TestShop.Settings()).Entries);
        Assert.Equal(whole, gone.Bytes(Paths.Journal));
    }

    [Fact]
    public void A_damaged_line_is_mended_from_the_newest_backup_where_the_documents_are_gone()
    {
        CrashingDisk disk = Filled();
        byte[] whole = disk.Bytes(Paths.Journal);
        using (Store store = TestShop.Open(Paths, disk))
        {
            Assert.Null(store.BackUp());
        }
        disk.Delete(Paths.Documents);
        disk.Put(Paths.Journal, Flipped(whole, whole.Length / 2));
        CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
        Assert.False(report.IsAnythingGone);
        Assert.Equal(whole, disk.Bytes(Paths.Journal));
    }

    [Fact]
    public void What_nobody_holds_is_said_to_be_gone_and_the_journal_is_left_as_it_is()
    {
        CrashingDisk disk = Filled();
        byte[] rotten = Flipped(disk.Bytes(Paths.Journal), disk.Bytes(Paths.Journal).Length / 2);
        disk.Put(Paths.Journal, rotten);
        disk.Delete(Paths.Documents);
        CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
        Assert.True(report.IsAnythingGone);
        Assert.Equal(rotten, disk.Bytes(Paths.Journal));
        Assert.InRange(report.Entries, 1, 8);
    }

    [Fact]
    public void An_accepted_last_line_cut_short_is_no_torn_tail_where_the_documents_know_it()
    {
        CrashingDisk disk = Filled();
        byte[] whole = disk.Bytes(Paths.Journal);
        disk.Put(Paths.Journal, whole[..^20]);
        DamagedJournalException e = Assert.Throws<DamagedJournalException>(() => TestShop.Open(Paths, disk));
        Assert.Contains("toolwear check", e.Message, StringComparison.Ordinal);
        Assert.Equal(whole[..^20], disk.Bytes(Paths.Journal));
    }

    [Fact]
    public void Wrong_documents_beside_a_sound_journal_are_rebuilt_and_nothing_is_gone()
    {
        CrashingDisk disk = Filled();
        byte[] rotten = disk.Bytes(Paths.Documents);
        int at = rotten.AsSpan().IndexOf(Encoding.UTF8.GetBytes("\"heats\":3"));
        Assert.InRange(at, 1, rotten.Length);
        rotten = Flipped(rotten, at + 8);
        disk.Put(Paths.Documents, rotten);
        CheckReport report = StoreCheck.Run(Paths, disk, TestShop.Settings());
        Assert.Equal([FindingKind.DocumentsRebuilt], report.Findings.Select(finding => finding.Kind));
        Assert.Empty(StoreCheck.Run(Paths, disk, TestShop.Settings()).Findings);
    }

    [Fact]
    public void A_newer_journal_is_refused_civilly_and_left_as_it_is()
    {
        CrashingDisk disk = Filled();
        var older = new KnownKinds(new Dictionary<string, int>(StringComparer.Ordinal) { ["heats"] = 1 });
        StoreSettings settings = TestShop.Settings() with { Kinds = older };
        byte[] before = disk.Bytes(Paths.Journal);
        Assert.Throws<NewerJournalException>(() => Store.Open(Paths, disk, settings, _ => { }));
        Assert.Throws<NewerJournalException>(() => StoreCheck.Run(Paths, disk, settings));
        Assert.Equal(before, disk.Bytes(Paths.Journal));
    }

    private static CrashingDisk Filled()
    {
        var disk = new CrashingDisk { HoldsDocuments = true };
        using Store store = TestShop.Open(Paths, disk);
        for (int i = 1; i <= 6; i++)
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", i));
        }
        store.Append(TestShop.Day, TestShop.Heats("R4", 1), TestShop.Note(90));
        store.Append(TestShop.Day, TestShop.Note(10));
        return disk;
    }

    private static byte[] Flipped(byte[] bytes, int at)
    {
        byte[] rotten = [.. bytes];
        rotten[at] ^= 4;
        return rotten;
    }
}
