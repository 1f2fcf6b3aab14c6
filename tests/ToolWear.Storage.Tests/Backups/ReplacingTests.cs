using ToolWear.Storage.Backups;
using ToolWear.Storage.Csv;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Mending;
using ToolWear.Storage.Stores;
using Xunit;

namespace ToolWear.Storage.Tests.Backups;

/// <summary>On the real disk: no verb replaces what is not its own.</summary>
public sealed class ReplacingTests
{
    private static readonly RealDisk Disk = new();

    [Theory]
    [InlineData("shop.db")]
    [InlineData("shop.db.journal")]
    [InlineData("shop.db-log")]
    [InlineData("shop.db.lock")]
    [InlineData("other.db")]
    [InlineData("other.db.journal")]
    [InlineData("linked/shop.db.journal")]
    [InlineData("linked/other.db.lock")]
    [InlineData("a link")]
    [InlineData("a folder")]
    [InlineData("other's backup")]
    public void Parts_of_a_shop_and_another_shops_backup_are_never_replaced_not_even_when_forced(string name)
    {
        using TemporaryFolder folder = TwoShops();
        Dictionary<string, byte[]> before = Files(folder);
        foreach (bool isForced in new[] { false, true })
        {
            Assert.Throws<StoreRefusedException>(() =>
                Backup.CopyOut(folder.Store, Disk, TestShop.Kinds, folder.File(name), isForced)
            );
            Assert.Throws<StoreRefusedException>(() =>
                Replacing.MustBeAllowed(Disk, folder.File(name), "tool,gauge\n"u8, isForced)
            );
        }
        Assert.Equal(before, Files(folder));
    }

    [Fact]
    public void A_foreign_file_is_replaced_only_when_forced_and_our_own_always()
    {
        using TemporaryFolder folder = TwoShops();
        string letter = folder.File("letter.txt");
        File.WriteAllText(letter, "Dear smith,");
        StoreRefusedException refused = Assert.Throws<StoreRefusedException>(() =>
            Backup.CopyOut(folder.Store, Disk, TestShop.Kinds, letter)
        );
        Assert.Contains("--force", refused.Message, StringComparison.Ordinal);
        Assert.Equal("Dear smith,", File.ReadAllText(letter));
        Assert.Equal(3, Backup.CopyOut(folder.Store, Disk, TestShop.Kinds, letter, isForced: true).Point.Seq);
        Assert.Equal(3, Backup.CopyOut(folder.Store, Disk, TestShop.Kinds, letter).Point.Seq);
        string table = folder.File("wear.csv");
        File.WriteAllText(table, "tool,gauge\nH5,A\n");
        Replacing.MustBeAllowed(Disk, table, "tool,gauge\n"u8, isForced: false);
        Assert.Throws<StoreRefusedException>(() => Replacing.MustBeAllowed(Disk, table, "tool,place\n"u8, false));
    }

    [Fact]
    public void An_export_replaces_and_deletes_what_it_listed_and_nothing_else()
    {
        using var folder = new TemporaryFolder();
        CsvFile tools = new("tools.csv", "mark\nH5\n"u8.ToArray());
        CsvFile loans = new("loans.csv", "tool\nH5\n"u8.ToArray());
        File.WriteAllText(folder.File("tools.csv"), "a stranger's");
        StoreRefusedException refused = Assert.Throws<StoreRefusedException>(() =>
            CsvFolder.Write(Disk, folder.Path, [loans], isForced: false)
        );
        Assert.Contains("tools.csv", refused.Message, StringComparison.Ordinal);
        Assert.Equal(["tools.csv"], Names(folder));
        CsvFolder.Write(Disk, folder.Path, [tools, loans], isForced: true);
        File.WriteAllText(folder.File("letter.csv"), "a stranger's");
        CsvFolder.Write(Disk, folder.Path, [tools], isForced: false);
        Assert.Equal(["letter.csv", "tools.csv", CsvFolder.List], Names(folder));
        // what a stranger has put there since is not ours, though its name is one of the set
        File.WriteAllText(folder.File("loans.csv"), "a stranger's");
        Assert.Throws<StoreRefusedException>(() => CsvFolder.Write(Disk, folder.Path, [tools], isForced: false));
        Assert.Equal("a stranger's", File.ReadAllText(folder.File("loans.csv")));
    }

    [Fact]
    public void What_is_no_backup_is_told_from_a_damaged_one()
    {
        using TemporaryFolder folder = TwoShops();
        File.WriteAllText(folder.File("garbage"), "nothing of the kind");
        foreach (string name in new[] { "garbage", "shop.db", "shop.db.journal" })
        {
            StoreRefusedException refused = Assert.Throws<StoreRefusedException>(() =>
                Restore.Look(folder.Store, Disk, TestShop.Kinds, folder.File(name))
            );
            Assert.Contains("backup", refused.Message, StringComparison.Ordinal);
        }
    }

    private static TemporaryFolder TwoShops()
    {
        var folder = new TemporaryFolder();
        var other = new StorePaths(folder.File("other.db"));
        StoreSettings settings = TestShop.Settings() with { NewShopId = () => "fedcba9876543210fedcba9876543210" };
        using (Store shop = TestShop.Open(folder.Store, Disk))
        using (Store second = Store.Open(other, Disk, settings, _ => { }))
        {
            for (int i = 1; i <= 3; i++)
            {
                shop.Append(TestShop.Day, TestShop.Heats("R3", i));
                second.Append(TestShop.Day, TestShop.Heats("R3", i));
            }
        }
        Directory.CreateSymbolicLink(folder.File("linked"), folder.Path);
        File.CreateSymbolicLink(folder.File("a link"), folder.File("nowhere"));
        Directory.CreateDirectory(folder.File("a folder"));
        Backup.CopyOut(other, Disk, TestShop.Kinds, folder.File("other's backup"));
        return folder;
    }

    private static Dictionary<string, byte[]> Files(TemporaryFolder folder) =>
        Directory
            .GetFiles(folder.Path)
            .Where(path => new FileInfo(path).LinkTarget is null)
            .ToDictionary(path => path, File.ReadAllBytes, StringComparer.Ordinal);

    private static IEnumerable<string?> Names(TemporaryFolder folder) =>
        Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
