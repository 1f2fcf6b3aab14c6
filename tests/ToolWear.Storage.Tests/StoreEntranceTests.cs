using System.Diagnostics;
using System.Text;
using LiteDB;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using Xunit;

namespace ToolWear.Storage.Tests;

/// <summary>What stands at the store's path and is no store is refused and left as it was.</summary>
public sealed class StoreEntranceTests
{
    private readonly RealDisk _disk = new();

    [Theory]
    [InlineData(1)]
    [InlineData(100)]
    [InlineData(8192)]
    [InlineData(20_000)]
    public void A_foreign_file_is_left_byte_for_byte_and_nothing_appears_beside_it(int length)
    {
        using var folder = new TemporaryFolder();
        byte[] foreign =
        [
            .. Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("some text\n", 2000))).Take(length),
        ];
        using (FileStream file = File.Create(folder.Store.Documents))
        {
            file.Write(foreign);
        }
        StoreRefusedException e = Assert.Throws<StoreRefusedException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Contains("shop.db is no store", e.Message, StringComparison.Ordinal);
        Assert.Equal(foreign, File.ReadAllBytes(folder.Store.Documents));
        Assert.Single(Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void A_folder_is_refused()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Store.Documents);
        StoreRefusedException e = Assert.Throws<StoreRefusedException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Contains("is a folder", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_path_in_no_folder_is_refused()
    {
        using var folder = new TemporaryFolder();
        var paths = new StorePaths(folder.File("nowhere/shop.db"));
        Assert.Throws<StoreRefusedException>(() => TestShop.Open(paths, _disk));
    }

    [Fact]
    public void A_device_is_refused()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no /dev.");
        }
        Assert.Equal(PathKind.Other, _disk.KindOf("/dev/null"));
        Assert.Throws<StoreRefusedException>(() => TestShop.Open(new StorePaths("/dev/null"), _disk));
    }

    [Theory]
    [InlineData("")]
    [InlineData(".journal")]
    [InlineData(".lock")]
    public void A_pipe_is_refused_and_nobody_waits_for_it(string ending)
    {
        using var folder = new TemporaryFolder();
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such files.");
        }
        using (var made = Process.Start("mkfifo", [folder.Store.Documents + ending]))
        {
            made.WaitForExit();
        }
        StoreRefusedException e = Assert.Throws<StoreRefusedException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Contains("is no plain file", e.Message, StringComparison.Ordinal);
        Assert.Throws<StoreRefusedException>(() => Store.Read(folder.Store, _disk, TestShop.Kinds, _ => { }));
        Assert.Single(Directory.GetFileSystemEntries(folder.Path));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("", false)]
    [InlineData(".journal", true)]
    [InlineData(".lock", true)]
    public void A_symbolic_link_is_refused_and_what_it_leads_to_is_left_as_it_is(string ending, bool leadsSomewhere)
    {
        using var folder = new TemporaryFolder();
        string target = folder.File("elsewhere");
        if (leadsSomewhere)
        {
            File.WriteAllText(target, "some text");
        }
        File.CreateSymbolicLink(folder.Store.Documents + ending, target);
        StoreRefusedException e = Assert.Throws<StoreRefusedException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Contains("is a symbolic link", e.Message, StringComparison.Ordinal);
        Assert.Equal(leadsSomewhere ? 2 : 1, Directory.GetFileSystemEntries(folder.Path).Length);
        Assert.Equal(leadsSomewhere, File.Exists(target));
    }

    [Fact]
    public void A_folder_reached_by_a_link_holds_a_store_as_any_other()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("real"));
        Directory.CreateSymbolicLink(folder.File("link"), folder.File("real"));
        using (Store store = TestShop.Open(new StorePaths(folder.File("link/shop.db")), _disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        }
        Assert.Single(TestShop.Bodies(new StorePaths(folder.File("real/shop.db")), _disk));
    }

    [Theory]
    [InlineData("my shop.db")]
    [InlineData("Werkstatt Größe 槌 🔨.db")]
    [InlineData("'quoted\"; rm -rf *\t.db")]
    [InlineData("-n.db")]
    public void A_store_may_have_any_name(string name)
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("a folder ü"));
        var paths = new StorePaths(folder.File(Path.Combine("a folder ü", name)));
        using (Store store = TestShop.Open(paths, _disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
            Assert.Null(store.BackUp());
        }
        Assert.Empty(StoreCheck.Run(paths, _disk, TestShop.Settings()).Findings);
        Assert.Single(TestShop.Bodies(paths, _disk));
    }

    [Fact]
    public void Another_programs_database_is_refused_and_left_as_it_is_even_by_a_check()
    {
        using var folder = new TemporaryFolder();
        using (var other = new LiteDatabase(folder.Store.Documents))
        {
            other.GetCollection("meta").Insert(new BsonDocument { ["name"] = "somebody" });
            other.GetCollection("songs").Insert(new BsonDocument { ["title"] = "Anvil" });
        }
        byte[] before = File.ReadAllBytes(folder.Store.Documents);
        DamagedJournalException e = Assert.Throws<DamagedJournalException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Contains("another program's, name another store", e.Message, StringComparison.Ordinal);
        Assert.Throws<DamagedJournalException>(() => Store.Read(folder.Store, _disk, TestShop.Kinds, _ => { }));
        Assert.True(StoreCheck.Run(folder.Store, _disk, TestShop.Settings()).IsAnythingGone);
        Assert.Equal(before, File.ReadAllBytes(folder.Store.Documents));
        Assert.False(File.Exists(folder.Store.Journal));
    }

    [Fact]
    public void Another_programs_journal_is_refused_as_damaged_and_left_as_it_is()
    {
        using var folder = new TemporaryFolder();
        using (FileStream file = File.Create(folder.Store.Journal))
        {
            file.Write("Dear journal,\n"u8);
        }
        Assert.Throws<DamagedJournalException>(() => TestShop.Open(folder.Store, _disk));
        Assert.Equal("Dear journal,\n"u8.ToArray(), File.ReadAllBytes(folder.Store.Journal));
    }

    [Fact]
    public void An_empty_file_may_become_a_store()
    {
        using var folder = new TemporaryFolder();
        File.Create(folder.Store.Documents).Dispose();
        Assert.Empty(TestShop.Bodies(folder.Store, _disk));
    }

    [Fact]
    public void Reading_where_there_is_no_store_makes_none()
    {
        using var folder = new TemporaryFolder();
        Assert.Throws<StoreRefusedException>(() => Store.Read(folder.Store, _disk, TestShop.Kinds, _ => { }));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }
}
