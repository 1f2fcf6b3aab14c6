using System.Collections.Concurrent;
using System.Diagnostics;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using Xunit;

namespace ToolWear.Storage.Tests;

/// <summary>Many windows, one shop: each store here has a lock of its own, as another process would.</summary>
public sealed class SharedStoreTests
{
    private readonly RealDisk _disk = new();

    [Fact]
    public void Each_of_two_stores_is_told_what_the_other_has_added_and_numbers_go_on()
    {
        using var folder = new TemporaryFolder();
        using Store first = TestShop.Open(folder.Store, _disk);
        Assert.Equal(1, first.Append(TestShop.Day, TestShop.Heats("R3", 1)).Seq);
        using Store second = TestShop.Open(folder.Store, _disk);
        Assert.Empty(second.Look());
        Assert.Equal(2, second.Append(TestShop.Day, TestShop.Heats("R3", 2)).Seq);
        var told = new List<JournalLine>();
        JournalLine? third = first.Append(
            TestShop.Day,
            added =>
            {
                told.AddRange(added);
                return [TestShop.Heats("R3", 3)];
            }
        );
        Assert.Equal(3, third?.Seq);
        Assert.Equal([2L], told.Select(line => line.Seq));
        Assert.Equal(third, Assert.Single(second.Look()));
        Assert.Empty(second.Look());
        Assert.Equal(3, TestShop.Bodies(folder.Store, _disk).Length);
    }

    [Fact]
    public void What_is_refused_once_it_is_known_what_others_added_is_not_written()
    {
        using var folder = new TemporaryFolder();
        using Store first = TestShop.Open(folder.Store, _disk);
        using Store second = TestShop.Open(folder.Store, _disk);
        first.Append(TestShop.Day, TestShop.Heats("R3", 1));
        Assert.Null(second.Append(TestShop.Day, added => added.IsEmpty ? [TestShop.Heats("R3", 1)] : []));
        Assert.Single(TestShop.Bodies(folder.Store, _disk));
    }

    [Fact]
    public void Before_the_first_entry_nothing_is_made_and_a_refused_one_leaves_nothing()
    {
        using var folder = new TemporaryFolder();
        using (Store store = TestShop.Open(folder.Store, _disk))
        {
            Assert.Null(store.Append(TestShop.Day, _ => []));
            Assert.Empty(store.Look());
        }
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void A_lock_that_is_held_is_waited_for_and_for_no_longer_than_two_seconds()
    {
        using var folder = new TemporaryFolder();
        using Store store = TestShop.Open(folder.Store, _disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        var watch = Stopwatch.StartNew();
        using (_disk.TryLock(folder.Store.Lock))
        {
            StoreBusyException busy = Assert.Throws<StoreBusyException>(() =>
                store.Append(TestShop.Day, TestShop.Heats("R3", 2))
            );
            Assert.Contains("Nothing was recorded. Try again", busy.Message, StringComparison.Ordinal);
            Assert.Empty(store.Look());
        }
        Assert.InRange(watch.ElapsedMilliseconds, 1900, 20_000);
        IDiskLock? held = _disk.TryLock(folder.Store.Lock);
        using var giveBack = new Timer(_ => held?.Dispose(), null, 200, Timeout.Infinite);
        Assert.Equal(2, store.Append(TestShop.Day, TestShop.Heats("R3", 2)).Seq);
    }

    [Fact]
    public void Where_the_system_has_no_locks_nothing_is_written_unless_the_smith_answers_for_it()
    {
        using var folder = new TemporaryFolder();
        var lockless = new FaultyDisk { IsLockless = true };
        using (Store store = TestShop.Open(folder.Store, lockless))
        {
            StoreRefusedException refused = Assert.Throws<StoreRefusedException>(() =>
                store.Append(TestShop.Day, TestShop.Heats("R3", 1))
            );
            Assert.Contains("--alone", refused.Message, StringComparison.Ordinal);
        }
        StoreSettings alone = TestShop.Settings() with { Alone = true };
        using (Store store = Store.Open(folder.Store, lockless, alone, _ => { }))
        using (Store other = Store.Open(folder.Store, lockless, alone, _ => { }))
        {
            Assert.Equal(1, store.Append(TestShop.Day, TestShop.Heats("R3", 1)).Seq);
            Assert.Equal(2, other.Append(TestShop.Day, TestShop.Heats("R3", 2)).Seq);
            Assert.Equal(3, store.Append(TestShop.Day, TestShop.Heats("R3", 3)).Seq);
        }
        Assert.Equal(3, TestShop.Bodies(folder.Store, _disk).Length);
    }

    [Theory]
    [InlineData("linked", "has a second name")]
    [InlineData("replaced", "was moved, deleted or replaced")]
    [InlineData("deleted", "was moved, deleted or replaced")]
    [InlineData("cut", "is not as this window left it")]
    [InlineData("emptied", "is not as this window left it")]
    [InlineData("overwritten", "is not as this window left it")]
    public void A_journal_that_was_tampered_with_takes_nothing_more_and_stays_as_it_is(string how, string says)
    {
        using var folder = new TemporaryFolder();
        string journal = folder.Store.Journal;
        using Store store = TestShop.Open(folder.Store, _disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        store.Append(TestShop.Day, TestShop.Heats("R3", 2));
        byte[] whole = File.ReadAllBytes(journal);
        switch (how)
        {
            case "linked":
                Start("ln", journal, folder.File("other"));
                break;
            case "replaced":
                File.Copy(journal, folder.File("copy"));
                File.Move(folder.File("copy"), journal, overwrite: true);
                break;
            case "deleted":
                File.Delete(journal);
                break;
            default:
                using (FileStream file = File.OpenWrite(journal))
                {
                    file.SetLength(how == "emptied" ? 0 : whole.Length - 20);
                    file.Position = file.Length;
                    file.Write(how == "overwritten" ? new byte[40] : []);
                }
                break;
        }
        byte[]? before = File.Exists(journal) ? File.ReadAllBytes(journal) : null;
        for (int i = 0; i < 2; i++)
        {
            StoreException refused = Assert.ThrowsAny<StoreException>(() =>
                store.Append(TestShop.Day, TestShop.Heats("R3", 3))
            );
            Assert.Contains(says, refused.Message, StringComparison.Ordinal);
            Assert.Contains("Nothing was recorded", refused.Message, StringComparison.Ordinal);
        }
        Assert.Equal(before, File.Exists(journal) ? File.ReadAllBytes(journal) : null);
    }

    [Fact]
    public void A_journal_that_is_linked_while_an_entry_is_written_leaves_it_unacknowledged_and_uncut()
    {
        using var folder = new TemporaryFolder();
        var disk = new FaultyDisk();
        using Store store = TestShop.Open(folder.Store, disk);
        store.Append(TestShop.Day, TestShop.Heats("R3", 1));
        disk.AtSync = () => Start("ln", folder.Store.Journal, folder.File("other"));
        StoreBrokenException unsure = Assert.Throws<StoreBrokenException>(() =>
            store.Append(TestShop.Day, TestShop.Heats("R3", 2))
        );
        Assert.Contains("may be there or not", unsure.Message, StringComparison.Ordinal);
        disk.AtSync = null;
        Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", 3)));
        File.Delete(folder.File("other"));
        Assert.Equal(2, TestShop.Bodies(folder.Store, _disk).Length);
    }

    [Fact]
    public void The_documents_go_to_the_store_that_is_left_and_follow_what_both_have_added()
    {
        using var folder = new TemporaryFolder();
        Store first = TestShop.Open(folder.Store, _disk);
        first.Append(TestShop.Day, TestShop.Heats("R3", 1));
        using (Store second = TestShop.Open(folder.Store, _disk))
        {
            Assert.True(first.HasDocuments);
            second.Append(TestShop.Day, TestShop.Heats("R3", 2));
            Assert.False(second.HasDocuments);
            first.Dispose();
            Assert.Empty(second.Look());
            Assert.True(second.HasDocuments);
            second.Append(TestShop.Day, TestShop.Heats("R3", 3));
            Assert.True(second.VerifyDocuments());
        }
        using Store again = TestShop.Open(folder.Store, _disk);
        Assert.True(again.VerifyDocuments());
        Assert.Empty(again.Findings);
    }

    [Fact]
    public void What_the_disk_refuses_is_a_sentence_and_never_a_recorded_entry_called_refused()
    {
        using var folder = new TemporaryFolder();
        var disk = new FaultyDisk { Broken = ".db-lock" };
        using Store store = TestShop.Open(folder.Store, disk);
        Assert.Equal(1, store.Append(TestShop.Day, TestShop.Heats("R3", 1)).Seq);
        Assert.False(store.HasDocuments);
        disk.Broken = ".db.lock";
        Assert.Contains(
            "Nothing can be recorded",
            Assert.Throws<StoreRefusedException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", 2))).Message,
            StringComparison.Ordinal
        );
        disk.Broken = null;
        Assert.Equal(2, store.Append(TestShop.Day, TestShop.Heats("R3", 2)).Seq);
        Assert.True(store.HasDocuments);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Eight_writers_lose_nothing_even_where_the_lock_is_deleted_again_and_again(bool isDeleted)
    {
        using var folder = new TemporaryFolder();
        var accepted = new ConcurrentDictionary<long, string>();
        Write(folder.Store, 0, accepted);
        using var done = new CancellationTokenSource();
        Task deleting = Task.Run(
            () =>
            {
                while (isDeleted && !done.IsCancellationRequested)
                {
                    File.Delete(folder.Store.Lock);
                }
            },
            TestContext.Current.CancellationToken
        );
        Task[] writers =
        [
            .. Enumerable
                .Range(1, 8)
                .Select(i =>
                    Task.Factory.StartNew(
                        () => Write(folder.Store, i, accepted),
                        CancellationToken.None,
                        TaskCreationOptions.LongRunning,
                        TaskScheduler.Default
                    )
                ),
        ];
        await Task.WhenAll(writers);
        await done.CancelAsync();
        await deleting;
        var lines = new List<JournalLine>();
        _ = Store.Read(folder.Store, _disk, TestShop.Kinds, lines.Add);
        Assert.Equal(180, accepted.Count);
        Assert.Equal(180, lines.Count);
        Assert.All(accepted, each => Assert.Equal(each.Value, lines[(int)each.Key - 1].Bodies[0]));
    }

    private void Write(StorePaths paths, int writer, ConcurrentDictionary<long, string> accepted)
    {
        using Store store = TestShop.Open(paths, _disk);
        for (int i = 1; i <= 20; i++)
        {
            string body = TestShop.Heats($"W{writer}", i);
            Assert.True(accepted.TryAdd(store.Append(TestShop.Day, body).Seq, body));
        }
    }

    private static void Start(string program, params string[] arguments)
    {
        using var process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    /// <summary>The real disk with a fault that no real one can be made to have at a chosen moment.</summary>
    private sealed class FaultyDisk : IDisk
    {
        private readonly RealDisk _disk = new();

        internal bool IsLockless { get; init; }

        internal Action? AtSync { get; set; }

        internal string? Broken { get; set; }

        public PathKind KindOf(string path) => _disk.KindOf(path);

        public IDiskFile OpenToRead(string path) => _disk.OpenToRead(path);

        public IDiskFile OpenToWrite(string path) => new FaultyFile(this, _disk.OpenToWrite(path));

        public IDiskFile Create(string path) => _disk.Create(path);

        public Stream OpenDocuments(string path) => _disk.OpenDocuments(path);

        public IDiskLock? TryLock(string path) =>
            Broken is not null && path.EndsWith(Broken, StringComparison.Ordinal)
                ? throw new IOException("Too many open files")
            : IsLockless ? new NoLock()
            : _disk.TryLock(path);

        public void Move(string from, string to) => _disk.Move(from, to);

        public void Delete(string path) => _disk.Delete(path);

        public void MakeFolder(string path) => _disk.MakeFolder(path);

        public IReadOnlyList<string> FilesIn(string path) => _disk.FilesIn(path);

        public void SyncFolder(string path) => _disk.SyncFolder(path);

        private sealed class NoLock : IDiskLock
        {
            public bool IsKept => false;

            public bool IsInPlace => true;

            public void Dispose() { }
        }

        private sealed class FaultyFile(FaultyDisk disk, IDiskFile file) : IDiskFile
        {
            public FilePlace Place => file.Place;

            public IDisposable? TryLock() => file.TryLock();

            public long Length => file.Length;

            public int Read(long offset, Span<byte> into) => file.Read(offset, into);

            public void Write(long offset, ReadOnlySpan<byte> bytes) => file.Write(offset, bytes);

            public void Cut(long length) => file.Cut(length);

            public void Sync()
            {
                file.Sync();
                disk.AtSync?.Invoke();
            }

            public void Dispose() => file.Dispose();
        }
    }
}
