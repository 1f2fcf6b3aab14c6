using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Documents;

/// <summary>Documents so rotten that reading them never ends: nobody waits for ever, nothing is lost.</summary>
public sealed class StuckDocumentsTests
{
    [Fact]
    public void A_store_whose_documents_never_answer_goes_on_with_its_journal_and_puts_them_aside()
    {
        var disk = new CrashingDisk { HoldsDocuments = true };
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R1", 1));
        }

        using var stuck = new StuckDisk(disk);
        StoreSettings hasty = TestShop.Settings() with { WatchLimit = TimeSpan.FromMilliseconds(300) };
        using (Store store = Store.Open(TestShop.OnCrashingDisk, stuck, hasty, _ => { }))
        {
            Assert.Equal(2, store.Append(TestShop.Day, TestShop.Heats("R1", 2)).Seq);
            Assert.Contains(store.Findings, finding => finding.Kind == FindingKind.DocumentsUnavailable);
        }

        stuck.LetGo();
        using Store again = TestShop.Open(TestShop.OnCrashingDisk, disk);
        Assert.True(again.VerifyDocuments());
        Assert.Equal(2, again.LastSeq);
        Assert.DoesNotContain(again.Findings, finding => finding.Kind == FindingKind.DocumentsUnavailable);
    }

    /// <summary>A disk whose documents' stream never comes back from a read.</summary>
    private sealed class StuckDisk(IDisk disk) : IDisk, IDisposable
    {
        private readonly ManualResetEventSlim _letGo = new();

        public void Dispose() => _letGo.Dispose();

        public void LetGo() => _letGo.Set();

        public PathKind KindOf(string path) => disk.KindOf(path);

        public IDiskFile OpenToRead(string path) => disk.OpenToRead(path);

        public IDiskFile OpenToWrite(string path) => disk.OpenToWrite(path);

        public IDiskFile Create(string path) => disk.Create(path);

        public Stream OpenDocuments(string path)
        {
            _letGo.Wait();
            throw new IOException("let go");
        }

        public IDiskLock? TryLock(string path) => disk.TryLock(path);

        public void Move(string from, string to) => disk.Move(from, to);

        public void Delete(string path) => disk.Delete(path);

        public void MakeFolder(string path) => disk.MakeFolder(path);

        public IReadOnlyList<string> FilesIn(string path) => disk.FilesIn(path);

        public void SyncFolder(string path) => disk.SyncFolder(path);
    }
}
