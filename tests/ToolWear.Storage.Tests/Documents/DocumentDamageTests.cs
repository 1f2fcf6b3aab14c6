using LiteDB;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Documents;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Documents;

/// <summary>Whatever becomes of the documents, the answers stay right, and it is noticed.</summary>
public sealed class DocumentDamageTests
{
    private const int Entries = 120;

    private static readonly StorePaths Paths = TestShop.OnCrashingDisk;

    [Fact]
    public void Deleted_documents_are_built_anew()
    {
        CrashingDisk disk = Filled();
        disk.Delete(Paths.Documents);
        MustAnswer(disk, mustBeRebuilt: true);
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
        Assert.Equal(Entries + 2, Assert.Single(again.EntriesOfTool("R8")).Seq);
        Assert.Equal(Entries + 1, Assert.Single(again.EntriesOfTool("R7")).Line);
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
            MustAnswer(disk, mustBeRebuilt: false);
        }
    }

    [Fact]
    public void Flipped_bits_never_change_an_answer()
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
            noticed += MustAnswer(disk, mustBeRebuilt: false);
        }
        Assert.InRange(noticed, 10, 60);
    }

    [Fact]
    public void A_zeroed_page_never_changes_an_answer()
    {
        CrashingDisk filled = Filled();
        byte[] whole = filled.Bytes(Paths.Documents);
        for (int page = 0; page < whole.Length / 8192; page++)
        {
            CrashingDisk disk = filled.AfterKill();
            byte[] rotten = [.. whole];
            rotten.AsSpan(page * 8192, 8192).Clear();
            disk.Put(Paths.Documents, rotten);
            MustAnswer(disk, mustBeRebuilt: false);
        }
    }

    [Fact]
    public void Documents_of_another_shop_are_moved_aside_and_built_anew()
    {
        CrashingDisk other = Filled("fedcba9876543210fedcba9876543210");
        CrashingDisk disk = Filled();
        disk.Put(Paths.Documents, other.Bytes(Paths.Documents));
        MustAnswer(disk, mustBeRebuilt: true);
        Assert.Contains(disk.FilesIn(CrashingDisk.Folder), file => file.Contains(".aside-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_foreign_file_in_the_documents_place_is_kept_aside_as_it_was()
    {
        CrashingDisk disk = Filled();
        byte[] foreign = [.. Enumerable.Range(0, 20_000).Select(i => (byte)(i % 251))];
        disk.Put(Paths.Documents, foreign);
        MustAnswer(disk, mustBeRebuilt: true);
        string aside = disk.FilesIn(CrashingDisk.Folder)
            .Single(file => file.Contains(".aside-", StringComparison.Ordinal));
        Assert.Equal(foreign, disk.Bytes(aside));
    }

    [Fact]
    public void Without_documents_the_journal_answers_the_same()
    {
        var disk = new CrashingDisk { HoldsDocuments = false };
        Fill(disk, TestShop.Id);
        using Store store = TestShop.Open(Paths, disk);
        Assert.Equal(Entries / 3, store.EntriesOfTool("R1").Length);
        Assert.Equal(Entries, store.NewestEntries(1)[0].Seq);
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
        Assert.Equal(wasClosed ? 19 : 20, again.EntriesOfTool("R1").Length);
        Assert.Equal(!wasClosed, again.Findings.Any(finding => finding.Kind == FindingKind.DocumentsRebuilt));
        // what nobody noticed a check does
        Assert.Equal(!wasClosed, again.VerifyDocuments());
        Assert.Equal(20, again.EntriesOfTool("R1").Length);
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

    private static int MustAnswer(CrashingDisk disk, bool mustBeRebuilt)
    {
        int noticed;
        using (Store store = TestShop.Open(Paths, disk))
        {
            // what an index leaves out only a check can see, so the check comes first
            bool equal = store.VerifyDocuments();
            for (int tool = 0; tool < 3; tool++)
            {
                StoredEntry[] entries = [.. store.EntriesOfTool("R" + tool)];
                int first = tool;
                Assert.Equal(
                    Enumerable.Range(0, Entries / 3).Select(i => TestShop.Heats("R" + first, first + (3 * i))),
                    entries.Select(entry => entry.Body),
                    StringComparer.Ordinal
                );
            }
            Assert.Equal(40, store.EntriesOfDay(TestShop.Day.AddDays(1)).Length);
            Assert.Equal(Entries, store.NewestEntries(Entries + 1).Length);
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
