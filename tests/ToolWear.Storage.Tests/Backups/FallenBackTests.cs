using System.Text;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using Xunit;

namespace ToolWear.Storage.Tests.Backups;

/// <summary>On the real disk: an older journal, a forked one, junk behind the last line, lines that nobody else has.</summary>
public sealed class FallenBackTests
{
    private static readonly RealDisk Disk = new();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_older_journal_is_named_wherever_a_backup_knows_better_and_brought_forward(bool isSecondFolder)
    {
        using var folder = new TemporaryFolder();
        byte[] older = Filled(folder, 5);
        string second = folder.File("second");
        string[] folders = isSecondFolder ? [second] : [];
        using (Store store = TestShop.Open(folder.Store, Disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 6));
            Assert.Null(store.BackUp(isSecondFolder ? second : null));
        }
        byte[] whole = File.ReadAllBytes(folder.Store.Journal);
        File.WriteAllBytes(folder.Store.Journal, older);
        File.Delete(folder.Store.Documents);
        DamagedJournalException named = Assert.Throws<DamagedJournalException>(() =>
        {
            using Store store = TestShop.Open(folder.Store, Disk);
            Array.ForEach(folders, store.HoldAgainst);
        });
        Assert.Contains("ends with entry 5", named.Message, StringComparison.Ordinal);
        Assert.Contains("holds entry 6", named.Message, StringComparison.Ordinal);
        Assert.True(StoreCheck.Look(folder.Store, Disk, TestShop.Settings(), folders).IsAnythingGone);
        Assert.Equal(older, File.ReadAllBytes(folder.Store.Journal));
        CheckReport report = StoreCheck.Run(folder.Store, Disk, TestShop.Settings(), folders);
        Assert.False(report.IsAnythingGone);
        Assert.Equal(whole, File.ReadAllBytes(folder.Store.Journal));
        Assert.Empty(StoreCheck.Look(folder.Store, Disk, TestShop.Settings(), folders).Findings);
    }

    [Fact]
    public void A_shop_continued_from_an_older_journal_is_named_until_one_of_the_two_is_chosen()
    {
        using var folder = new TemporaryFolder();
        byte[] older = Filled(folder, 5);
        using (Store store = TestShop.Open(folder.Store, Disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 6));
            Assert.Null(store.BackUp());
        }
        Directory.Move(folder.Store.Backups, folder.File("kept"));
        File.WriteAllBytes(folder.Store.Journal, older);
        File.Delete(folder.Store.Documents);
        using (Store store = TestShop.Open(folder.Store, Disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R4", 1));
            store.Append(TestShop.Day, TestShop.Heats("R4", 2));
        }
        Directory.Move(folder.File("kept"), folder.Store.Backups);
        DamagedJournalException named = Assert.Throws<DamagedJournalException>(() => TestShop.Open(folder.Store, Disk));
        Assert.Contains("part at or before entry 6", named.Message, StringComparison.Ordinal);
        Assert.Throws<DamagedJournalException>(() => StoreCheck.Run(folder.Store, Disk, TestShop.Settings()));
        Backup.CopyOut(folder.Store, Disk, TestShop.Kinds, folder.File("this one"));
        Restore.PutInPlace(folder.Store, Disk, TestShop.Settings(), folder.File("this one"));
        Assert.Equal(TestShop.Heats("R4", 2), TestShop.Bodies(folder.Store, Disk)[^1]);
    }

    [Fact]
    public void Every_backup_of_the_shop_is_asked_and_no_other_shops()
    {
        using var folder = new TemporaryFolder();
        _ = Filled(folder, 3);
        using (Store store = TestShop.Open(folder.Store, Disk))
        {
            Assert.Null(store.BackUp());
        }
        byte[] whole = File.ReadAllBytes(folder.Store.Journal);
        // sound, with higher numbers, and of another shop
        StoreSettings settings = TestShop.Settings() with
        {
            NewShopId = () => "fedcba9876543210fedcba9876543210",
        };
        using (Store other = Store.Open(new StorePaths(folder.File("other.db")), Disk, settings, _ => { }))
        {
            for (int i = 1; i <= 5; i++)
            {
                other.Append(TestShop.Day, TestShop.Note(i));
                other.Append(TestShop.Day, TestShop.Note(i));
                Assert.Null(other.BackUp(folder.Store.Backups));
            }
        }
        File.Delete(folder.Store.Documents);
        byte[] rotten = [.. whole];
        rotten[whole.Length / 2] ^= 4;
        File.WriteAllBytes(folder.Store.Journal, rotten);
        Assert.False(StoreCheck.Run(folder.Store, Disk, TestShop.Settings()).IsAnythingGone);
        Assert.Equal(whole, File.ReadAllBytes(folder.Store.Journal));
    }

    [Theory]
    [InlineData("junk\n")]
    [InlineData("junk\nand more\n\n")]
    [InlineData("\n")]
    public void Junk_behind_the_last_line_is_dropped_and_said_so_where_the_documents_know_that_line(string junk)
    {
        using var folder = new TemporaryFolder();
        byte[] whole = Filled(folder, 4);
        File.AppendAllText(folder.Store.Journal, junk);
        Assert.Equal(4, Store.Read(folder.Store, Disk, TestShop.Kinds, _ => { }).Seq);
        CheckReport report = StoreCheck.Run(folder.Store, Disk, TestShop.Settings());
        StoreFinding said = Assert.Single(report.Findings);
        Assert.Equal(FindingKind.TailDropped, said.Kind);
        Assert.Contains("no entry", said.Sentence, StringComparison.Ordinal);
        Assert.Equal(whole, File.ReadAllBytes(folder.Store.Journal));
    }

    [Fact]
    public void Junk_in_the_place_of_a_line_is_damage_where_nobody_can_say_that_there_was_none()
    {
        using var folder = new TemporaryFolder();
        byte[] whole = Filled(folder, 4);
        int last = whole.AsSpan()[..^1].LastIndexOf((byte)'\n') + 1;
        byte[] junk =
        [
            .. whole[..last],
            .. Encoding.ASCII.GetBytes(new string('#', whole.Length - last - 1)),
            (byte)'\n',
        ];
        File.WriteAllBytes(folder.Store.Journal, junk);
        // the documents know the line that stood there
        Assert.Throws<DamagedJournalException>(() => TestShop.Open(folder.Store, Disk));
        File.Delete(folder.Store.Documents);
        Assert.Throws<DamagedJournalException>(() => TestShop.Open(folder.Store, Disk));
        Assert.True(StoreCheck.Run(folder.Store, Disk, TestShop.Settings()).IsAnythingGone);
        Assert.Equal(junk, File.ReadAllBytes(folder.Store.Journal));
    }

    [Fact]
    public void Every_line_that_can_be_proved_is_saved_and_what_is_missing_is_known_by_number()
    {
        using var folder = new TemporaryFolder();
        byte[] whole = Filled(folder, 12);
        List<int> starts = [0, .. Enumerable.Range(0, whole.Length).Where(i => whole[i] == '\n').Select(i => i + 1)];
        File.Delete(folder.Store.Documents);
        byte[] rotten = [.. whole];
        // in the entry of line 4, in the checksum of line 8: the line behind it cannot be proved either
        rotten[starts[4] + 80] ^= 4;
        rotten[starts[9] - 3] ^= 4;
        File.WriteAllBytes(folder.Store.Journal, rotten);
        JournalLine[] saved = [.. Salvage.Lines(folder.Store, Disk, TestShop.Kinds, [])];
        Assert.Equal([1L, 2, 3, 5, 6, 7, 10, 11, 12], saved.Select(line => line.Seq));
        Assert.Equal(TestShop.Heats("R3", 5), saved[3].Bodies[0]);
        Assert.Equal(rotten, File.ReadAllBytes(folder.Store.Journal));
    }

    [Fact]
    public void A_check_beside_a_window_says_that_the_documents_were_not_compared()
    {
        using var folder = new TemporaryFolder();
        _ = Filled(folder, 2);
        Assert.True(StoreCheck.Run(folder.Store, Disk, TestShop.Settings()).HasDocuments);
        using Store window = TestShop.Open(folder.Store, Disk);
        CheckReport beside = StoreCheck.Run(folder.Store, Disk, TestShop.Settings());
        Assert.False(beside.HasDocuments);
        Assert.Equal((2, 0), (beside.Entries, beside.Findings.Length));
    }

    [Fact]
    public void Files_set_aside_are_counted_and_all_but_the_newest_three_are_deleted()
    {
        using var folder = new TemporaryFolder();
        _ = Filled(folder, 2);
        string[] aside =
        [
            .. Enumerable.Range(1, 5).Select(i => $"{folder.Store.Documents}.aside-2026112{i}T120000Z"),
            $"{folder.Store.Documents}.aside-20261121T120000Z-log",
            $"{folder.Store.Journal}.aside-20261125T120000Z-2",
        ];
        string cut = folder.Store.Journal + ".0123456789ab.new";
        string[] foreign = [folder.Store.Documents + ".aside", folder.File("letter.aside-20261121T120000Z")];
        foreach (string path in aside.Concat(foreign).Append(cut))
        {
            File.WriteAllText(path, "x");
        }
        Assert.Equal(7, SetAside.Of(folder.Store, Disk).Length);
        Assert.Equal(4, SetAside.Tidy(folder.Store, Disk, TestShop.Settings()));
        Assert.Equal(4, SetAside.Of(folder.Store, Disk).Length);
        Assert.All(foreign, path => Assert.True(File.Exists(path)));
        Assert.False(File.Exists(cut));
        Assert.Equal(2, TestShop.Bodies(folder.Store, Disk).Length);
    }

    private static byte[] Filled(TemporaryFolder folder, int entries)
    {
        using (Store store = TestShop.Open(folder.Store, Disk))
        {
            for (int i = 1; i <= entries; i++)
            {
                store.Append(TestShop.Day, TestShop.Heats("R3", i));
            }
        }
        return File.ReadAllBytes(folder.Store.Journal);
    }
}
