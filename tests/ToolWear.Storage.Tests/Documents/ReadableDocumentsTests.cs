using LiteDB;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;
using Xunit;

namespace ToolWear.Storage.Tests.Documents;

/// <summary>FILE is a database that other programs can read: a document an entry, with the entry's own fields.</summary>
public sealed class ReadableDocumentsTests
{
    [Fact]
    public void A_document_shows_number_day_kind_and_the_fields_of_its_entry_as_what_they_are()
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, new RealDisk()))
        {
            store.Append(TestShop.Day, TestShop.Heats("R1", 1));
            store.Append(TestShop.Day.AddDays(1), TestShop.Heats("R3", 4), TestShop.Heats("R5", 2));
        }
        using var database = new LiteDatabase(folder.Store.Documents);
        BsonDocument found = Assert.Single(database.GetCollection("entries").Find("$.tool = 'R5'"));
        Assert.Equal(
            ["_id", "day", "kind", "v", "tool", "heats", "at", "line", "crc", "body"],
            found.Keys,
            StringComparer.Ordinal
        );
        Assert.Equal(3, found["_id"].AsInt64);
        Assert.Equal("2026-11-25", found["day"].AsString);
        Assert.Equal("heats", found["kind"].AsString);
        Assert.Equal(2, found["heats"].AsInt32);
        Assert.Equal(2, found["line"].AsInt64);
        Assert.Equal(TestShop.Heats("R5", 2), found["body"].AsString);
        Assert.Equal(
            ["_id"],
            database.GetCollection("$indexes").FindAll().Select(each => each["name"].AsString).Distinct()
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Noise_in_the_log_never_reaches_the_database_and_makes_no_endless_file(int seed)
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, new RealDisk()))
        {
            store.Append(TestShop.Day, TestShop.Heats("R1", 1));
        }
        byte[] noise = new byte[16 * 1024];
        new Random(seed).NextBytes(noise);
        // a page counts for the database where this byte is 1
        (noise[18], noise[8192 + 18]) = (1, 1);
        File.WriteAllBytes(folder.Store.DocumentLog, noise);
        using (Store again = TestShop.Open(folder.Store, new RealDisk()))
        {
            Assert.True(again.VerifyDocuments());
            StoreFinding finding = Assert.Single(again.Findings);
            Assert.Equal(FindingKind.DocumentsRebuilt, finding.Kind);
            Assert.Contains("shop.db-log is none of theirs", finding.Sentence, StringComparison.Ordinal);
        }
        Assert.All(Directory.GetFiles(folder.Path), file => Assert.InRange(new FileInfo(file).Length, 0, 1 << 20));
        // what was there is kept as it was
        Assert.Equal(noise, File.ReadAllBytes(Directory.GetFiles(folder.Path, "*.aside-*-log").Single()));
    }

    [Fact]
    public void A_page_number_that_has_rotted_to_something_far_away_makes_no_endless_file()
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, new RealDisk()))
        {
            store.Append(TestShop.Day, TestShop.Heats("R1", 1));
        }
        // LiteDB 5's header: the last page's number stands at 64, and what comes next is written behind it
        byte[] file = File.ReadAllBytes(folder.Store.Documents);
        file[67] = 0x1f;
        File.WriteAllBytes(folder.Store.Documents, file);
        using (Store again = TestShop.Open(folder.Store, new RealDisk()))
        {
            for (int i = 0; i < 50; i++)
            {
                again.Append(TestShop.Day, TestShop.Note(5000));
            }
            Assert.True(again.VerifyDocuments() || again.VerifyDocuments());
        }
        Assert.All(Directory.GetFiles(folder.Path), each => Assert.InRange(new FileInfo(each).Length, 0, 4 << 20));
    }
}
