using LiteDB;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Documents;

/// <summary>Whatever becomes of the documents, it is noticed, and they are built anew.</summary>
public sealed class DocumentDamageTests
{
    private const int Entries = 120;

    private static readonly StorePaths Paths = TestShop.OnCrashingDisk;

    [Fact]
    public void Deleted_documents_are_built_anew()
    {
        CrashingDisk disk = Filled();
        disk.Delete(Paths.Documents);
        MustBeSound(disk, mustBeRebuilt: true);
    }

    [Fact]
    public void Documents_that_lag_behind_catch_up_without_being_built_anew()
    {
        CrashingDisk disk = Filled();
        byte[] old = disk.Bytes(Paths.Documents);
        using (Store store = TestShop.Open(Paths, disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R7", 1), TestShop.Heats("R8", 1));
        }
        disk.Put(Paths.Documents, old);
        using Store again = TestShop.Open(Paths, disk);
        Assert.True(again.VerifyDocuments());
        Assert.Equal(Entries + 2, again.LastSeq);
        Assert.Empty(again.Findings);
    }

    [Fact]
    public void Documents_cut_at_any_page_are_noticed_and_built_anew()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Documents);
        for (int length = 1; length < whole.Length; length += 8192 + 777)
        {
            CrashingDisk disk = filled.AfterKill();
            disk.Put(Paths.Documents, whole[..length]);
            MustBeSound(disk, mustBeRebuilt: false);
        }
    }

    [Fact]
    public void Flipped_bits_are_noticed_or_lie_where_nothing_is_kept()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Documents);
        var chance = new Random(20261124);
        int noticed = 0;
        for (int i = 0; i < 60; i++)
        {
            CrashingDisk disk = filled.AfterKill();
            byte[] rotten = [.. whole];
            int at = LiveByte(whole, chance);
            rotten[at] ^= (byte)(1 << chance.Next(8));
            disk.Put(Paths.Documents, rotten);
            noticed += MustBeSound(disk, mustBeRebuilt: false);
        }
        Assert.InRange(noticed, 10, 60);
    }

    [Fact]
    public void A_zeroed_page_is_noticed_or_held_nothing()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Documents);
        for (int page = 0; page < whole.Length / 8192; page++)
        {
            CrashingDisk disk = filled.AfterKill();
            byte[] rotten = [.. whole];
            rotten.AsSpan(page * 8192, 8192).Clear();
            disk.Put(Paths.Documents, rotten);
            MustBeSound(disk, mustBeRebuilt: false);
        }
    }

    [Fact]
    public void Documents_of_another_shop_are_moved_aside_and_built_anew()
    {
        CrashingDisk other = Filled("fedcba9876543210fedcba9876543210");
        CrashingDisk disk = Filled();
        disk.Put(Paths.Documents, other.Bytes(Paths.Documents));
        MustBeSound(disk, mustBeRebuilt: true);
        Assert.Contains(disk.FilesIn(CrashingDisk.Folder), file => file.Contains(".aside-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_foreign_file_in_the_documents_place_is_kept_aside_as_it_was()
    {
        CrashingDisk disk = Filled();
        byte[] foreign = [.. Enumerable.Range(0, 20_000).Select(i => (byte)(i % 251))];
        disk.Put(Paths.Documents, foreign);
        MustBeSound(disk, mustBeRebuilt: true);
        string aside = disk.FilesIn(CrashingDisk.Folder)
            .Single(file => file.Contains(".aside-", StringComparison.Ordinal));
        Assert.Equal(foreign, disk.Bytes(aside));
    }

    [Fact]
    public void Without_documents_the_journal_takes_entries_and_it_is_said()
    {
        var disk = new CrashingDisk { HoldsDocuments = false };
        Fill(disk, TestShop.Id);
        using Store store = TestShop.Open(Paths, disk);
        Assert.False(store.VerifyDocuments());
        Assert.Equal(Entries, store.LastSeq);
        Assert.Contains(store.Findings, finding => finding.Kind == FindingKind.DocumentsUnavailable);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Documents_that_nobody_closed_are_compared_whole_at_the_next_opening(bool wasClosed)
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, new RealDisk()))
        {
            for (int i = 0; i < 20; i++)
            {
                store.Append(TestShop.Day, TestShop.Heats("R1", i));
            }
        }
        using (var rotten = new LiteDatabase(folder.Store.Documents))
        {
            Assert.True(rotten.GetCollection("entries").Delete(7L));
        }
        if (!wasClosed)
        {
            File.Create(folder.Store.DocumentLog).Dispose();
        }
        using Store again = TestShop.Open(folder.Store, new RealDisk());
        // what nobody noticed a check does
        Assert.Equal(!wasClosed, again.VerifyDocuments());
        Assert.Single(again.Findings, finding => finding.Kind == FindingKind.DocumentsRebuilt);
        Assert.True(again.VerifyDocuments());
    }

    private static CrashingDisk Filled(string shop = TestShop.Id)
    {
        var disk = new CrashingDisk { HoldsDocuments = true };
        Fill(disk, shop);
        return disk;
    }

    private static void Fill(IDisk disk, string shop)
    {
        StoreSettings settings = TestShop.Settings() with { NewShopId = () => shop };
        using Store store = Store.Open(Paths, disk, settings, _ => { });
        for (int i = 0; i < Entries; i++)
        {
            store.Append(TestShop.Day.AddDays(i / 40), TestShop.Heats("R" + (i % 3), i));
        }
    }

    // pages are mostly empty: a bit flipped there proves nothing
    private static int LiveByte(byte[] bytes, Random chance)
    {
        int at = chance.Next(bytes.Length);
        while (bytes[at] == 0)
        {
            at = chance.Next(bytes.Length);
        }
        return at;
    }

    private static int MustBeSound(CrashingDisk disk, bool mustBeRebuilt)
    {
        int noticed;
        using (Store store = TestShop.Open(Paths, disk))
        {
            bool equal = store.VerifyDocuments();
            bool isLeft = store.Findings.Any(finding => finding.Kind == FindingKind.DocumentsUnavailable);
            Assert.True(store.VerifyDocuments() || isLeft);
            // rebuilt, or so rotten that reading them did not end and they were put aside
            noticed = store.Findings.Count(finding =>
                finding.Kind is FindingKind.DocumentsRebuilt or FindingKind.DocumentsUnavailable
            );
            Assert.True(equal || noticed > 0);
        }
        if (mustBeRebuilt)
        {
            Assert.Equal(1, noticed);
        }
        return Math.Min(noticed, 1);
    }
}
