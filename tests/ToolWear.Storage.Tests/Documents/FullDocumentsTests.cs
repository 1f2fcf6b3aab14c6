using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests.Documents;

/// <summary>A disk that is full for the documents: they stand still, the journal answers, and nothing brings the process down.</summary>
public sealed class FullDocumentsTests
{
    [Fact]
    public void Documents_that_cannot_be_written_stand_still_and_are_caught_up_once_there_is_room()
    {
        int stood = 0;
        for (int writes = 0; writes < 160; writes += 4)
        {
            var disk = new CrashingDisk { HoldsDocuments = true };
            var full = new FullDisk(disk, writes);
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, full))
            {
                for (int i = 1; i <= 12; i++)
                {
                    store.Append(TestShop.Day, TestShop.Heats("R1", i));
                    // waits until the document has followed, or has not
                    _ = store.VerifyDocuments();
                    Assert.Equal(i, store.LastSeq);
                }
                stood += store.Findings.Any(finding => finding.Kind == FindingKind.DocumentsUnavailable) ? 1 : 0;
            }
            // what the database has not cleared up itself is cleared up here, where nobody could catch what it throws
            GC.Collect();
            GC.WaitForPendingFinalizers();
            using Store again = TestShop.Open(TestShop.OnCrashingDisk, disk);
            Assert.Equal(12, again.LastSeq);
            Assert.True(again.VerifyDocuments());
        }
        Assert.InRange(stood, 10, 39);
    }

    /// <summary>A disk on which the documents' files take so many writes and no more; the journal's takes all.</summary>
    private sealed class FullDisk(CrashingDisk disk, int writes) : IDisk
    {
        private int _left = writes;

        public PathKind KindOf(string path) => disk.KindOf(path);

        public IDiskFile OpenToRead(string path) => disk.OpenToRead(path);

        public IDiskFile OpenToWrite(string path) => disk.OpenToWrite(path);

        public IDiskFile Create(string path) => disk.Create(path);

        public Stream OpenDocuments(string path) => new FullStream(this, disk.OpenDocuments(path));

        public IDiskLock? TryLock(string path) => disk.TryLock(path);

        public void Move(string from, string to) => disk.Move(from, to);

        public void Delete(string path) => disk.Delete(path);

        public void MakeFolder(string path) => disk.MakeFolder(path);

        public IReadOnlyList<string> FilesIn(string path) => disk.FilesIn(path);

        public void SyncFolder(string path) => disk.SyncFolder(path);

        private sealed class FullStream(FullDisk disk, Stream inner) : Stream
        {
            public override bool CanRead => true;

            public override bool CanSeek => true;

            public override bool CanWrite => true;

            public override long Length => inner.Length;

            public override long Position
            {
                get => inner.Position;
                set => inner.Position = value;
            }

            public override void Flush() => inner.Flush();

            public override int Read(byte[] buffer, int offset, int count) => inner.Read(buffer, offset, count);

            public override long Seek(long offset, SeekOrigin origin) => inner.Seek(offset, origin);

            public override void SetLength(long value) => inner.SetLength(value);

            public override void Write(byte[] buffer, int offset, int count)
            {
                if (disk._left-- <= 0)
                {
                    // a part of it is there
                    inner.Write(buffer, offset, count / 3);
                    throw new IOException("No space left on device");
                }
                inner.Write(buffer, offset, count);
            }

            protected override void Dispose(bool disposing)
            {
                if (disposing)
                {
                    inner.Dispose();
                }
                base.Dispose(disposing);
            }
        }
    }
}
