using System.Diagnostics;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests;

public sealed class StoreTests
{
    private readonly RealDisk _disk = new();

    [Fact]
    public void What_was_accepted_is_there_after_reopening_letter_for_letter()
    {
        using var folder = new TemporaryFolder();
        var accepted = new List<JournalLine>();
        using (Store store = TestShop.Open(folder.Store, _disk))
        {
            accepted.Add(store.Append(TestShop.Day, TestShop.Heats("R3", 4)));
            accepted.Add(
                store.Append(TestShop.Day, TestShop.Heats("R3", 5), TestShop.Heats("Größe \\u00e9 \\\" \\n", 1))
            );
            accepted.Add(store.Append(TestShop.Day.AddDays(1), TestShop.Note(3000)));
        }
        var read = new List<JournalLine>();
        using Store again = TestShop.Open(folder.Store, _disk, read);
        Assert.Equal(accepted, read);
        Assert.Equal([1L, 2L, 4L], read.Select(line => line.Seq));
        Assert.Equal(4, again.LastSeq);
        Assert.Equal(TestShop.Id, again.Shop);
        Assert.Empty(again.Findings);
    }

    [Fact]
    public void An_append_costs_exactly_one_sync_and_no_other_operation()
    {
        var disk = new CrashingDisk();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        (int operations, int syncs, int folders) = (disk.Operations, disk.Syncs, disk.FolderSyncs);
        for (int i = 1; i <= 10; i++)
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", i), TestShop.Heats("R4", i));
        }
        Assert.Equal(syncs + 10, disk.Syncs);
        Assert.Equal(operations + 20, disk.Operations);
        Assert.Equal(folders, disk.FolderSyncs);
    }

    [Fact]
    public void A_reader_beside_the_writer_sees_every_accepted_line_and_touches_nothing()
    {
        using var folder = new TemporaryFolder();
        using Store writer = TestShop.Open(folder.Store, _disk);
        for (int i = 1; i <= 20; i++)
        {
            writer.Append(TestShop.Day, TestShop.Heats("R3", i));
            var lines = new List<JournalLine>();
            JournalPoint end = Store.Read(folder.Store, _disk, TestShop.Kinds, lines.Add);
            Assert.Equal(i, lines.Count);
            Assert.Equal(i, end.Seq);
        }
    }

    [Fact]
    public void A_reader_overlooks_the_line_that_is_being_written()
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, _disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
            store.Append(TestShop.Day, TestShop.Heats("R3", 2));
        }
        byte[] whole = File.ReadAllBytes(folder.Store.Journal);
        using (FileStream file = File.OpenWrite(folder.Store.Journal))
        {
            file.SetLength(whole.Length - 30);
        }
        Assert.Equal(1, Store.Read(folder.Store, _disk, TestShop.Kinds, _ => { }).Seq);
        Assert.Equal(whole.Length - 30, new FileInfo(folder.Store.Journal).Length);
    }

    [Fact]
    public void The_files_are_readable_by_the_owner_only()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has other rights.");
            return;
        }
        using var folder = new TemporaryFolder();
        using Store store = TestShop.Open(folder.Store, _disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        Assert.True(store.VerifyDocuments());
        foreach (string file in Directory.GetFiles(folder.Path))
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Closed_a_store_is_its_file_its_journal_and_their_locks()
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, _disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        }
        Assert.Equal(
            "shop.db shop.db-lock shop.db.journal shop.db.lock",
            string.Join(' ', Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal))
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"kind\":\"heats\",\"v\":1}{}")]
    [InlineData("{\"kind\":\"heats\",\n\"v\":1}")]
    [InlineData("{\"kind\":\"heats\"}")]
    [InlineData("{\"kind\":\"heats\",\"v\":3}")]
    [InlineData("{\"kind\":\"unheard of\",\"v\":1}")]
    [InlineData("{\"kind\":\"note\",\"v\":1,\"text\":\"half a letter\"}")]
    public void What_is_no_entry_is_refused_and_nothing_is_written(string body)
    {
        var disk = new CrashingDisk();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        int operations = disk.Operations;
        Assert.Throws<ArgumentException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", 1), Halved(body)));
        Assert.Equal(operations, disk.Operations);
        Assert.Equal(1, store.Append(TestShop.Day, TestShop.Heats("R3", 1)).Seq);
    }

    [Fact]
    public void A_line_with_one_entry_takes_at_most_64_KiB_and_a_batch_may_be_longer()
    {
        var disk = new CrashingDisk();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        Assert.Throws<ArgumentException>(() => store.Append(TestShop.Day, TestShop.Note(64 * 1024)));
        Assert.Throws<ArgumentException>(() => store.Append(TestShop.Day, TestShop.Note((64 * 1024) - 90)));
        store.Append(TestShop.Day, TestShop.Note((64 * 1024) - 200));
        store.Append(TestShop.Day, [.. Enumerable.Repeat(TestShop.Note(60_000), 20)]);
        store.Dispose();
        Assert.Equal(21, TestShop.Bodies(TestShop.OnCrashingDisk, disk).Length);
    }

    // half of a pair of surrogates cannot stand in an attribute
    private static string Halved(string body) => body.Replace("half a letter", "\ud800", StringComparison.Ordinal);
}
