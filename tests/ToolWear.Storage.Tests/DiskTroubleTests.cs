using System.Collections.Immutable;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests;

public sealed class DiskTroubleTests
{
    [Fact]
    public void A_full_disk_at_any_byte_of_any_append_loses_nothing_accepted()
    {
        var roomy = new CrashingDisk();
        long all = Work(roomy, long.MaxValue).Written;
        int refused = 0;
        for (long free = 0; free < all; free += 3)
        {
            var disk = new CrashingDisk();
            (ImmutableArray<string> accepted, _, bool wasRefused) = Work(disk, free);
            refused += wasRefused ? 1 : 0;
            disk.FreeBytes = long.MaxValue;
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, disk), StringComparer.Ordinal);
        }
        Assert.InRange(refused, 100, 2000);
    }

    [Fact]
    public void After_a_failed_sync_nothing_was_accepted_and_nothing_more_is_until_reopened()
    {
        for (int after = 1; after <= 5; after++)
        {
            var disk = new CrashingDisk();
            var accepted = ImmutableArray.CreateBuilder<string>();
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
            {
                disk.FailSyncAt = disk.Syncs + after;
                for (int i = 1; i < after; i++)
                {
                    store.Append(TestShop.Day, TestShop.Heats("R3", i));
                    accepted.Add(TestShop.Heats("R3", i));
                }
                Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", after)));
                int operations = disk.Operations;
                Assert.Throws<StoreBrokenException>(() => store.Append(TestShop.Day, TestShop.Heats("R3", after)));
                Assert.Equal(operations, disk.Operations);
            }
            // the line must not be shown from memory: no later sync would bring it to the disk
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, disk), StringComparer.Ordinal);
            CrashingDisk dark = disk.AfterPowerCut(new Tear(new FirstBytes(0)));
            Assert.Equal(accepted, TestShop.Bodies(TestShop.OnCrashingDisk, dark), StringComparer.Ordinal);
        }
    }

    [Fact]
    public void A_torn_tail_is_dropped_and_said_so_and_a_line_without_its_end_is_kept_and_said_so()
    {
        var disk = new CrashingDisk();
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            store.Append(TestShop.Day, TestShop.Heats("R3", 1));
            store.Append(TestShop.Day, TestShop.Heats("R3", 2));
        }
        byte[] whole = disk.Bytes(TestShop.OnCrashingDisk.Journal);
        foreach (
            (int missing, FindingKind kind, int left) in new[]
            {
                (1, FindingKind.LineCompleted, 2),
                (2, FindingKind.TailDropped, 1),
            }
        )
        {
            disk.Put(TestShop.OnCrashingDisk.Journal, whole[..^missing]);
            using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
            {
                Assert.Contains(store.Findings, finding => finding.Kind == kind);
                Assert.Equal(left, store.LastSeq);
            }
            Assert.Equal(left, TestShop.Bodies(TestShop.OnCrashingDisk, disk).Length);
        }
    }

    [Fact]
    public void A_disk_that_refuses_the_new_store_leaves_nothing_that_is_taken_for_one()
    {
        var disk = new CrashingDisk { FailSyncAt = 1 };
        Assert.Throws<IOException>(() => TestShop.Open(TestShop.OnCrashingDisk, disk));
        Assert.Empty(TestShop.Bodies(TestShop.OnCrashingDisk, disk));
    }

    private static (ImmutableArray<string> Accepted, long Written, bool WasRefused) Work(CrashingDisk disk, long free)
    {
        var accepted = ImmutableArray.CreateBuilder<string>();
        using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
        disk.FreeBytes = free;
        try
        {
            for (int i = 1; i <= 8; i++)
            {
                string body = i % 3 == 0 ? TestShop.Note(i * 20) : TestShop.Heats("R3", i);
                store.Append(TestShop.Day, body);
                accepted.Add(body);
            }
        }
        catch (StoreBrokenException e)
        {
            Assert.Contains("not accepted", e.Message, StringComparison.Ordinal);
            return (accepted.DrainToImmutable(), free, true);
        }
        return (accepted.DrainToImmutable(), free - disk.FreeBytes, false);
    }
}
