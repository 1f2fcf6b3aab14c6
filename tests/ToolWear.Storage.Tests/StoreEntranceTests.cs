using System.Text;
using ToolWear.Storage.Disks;
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
