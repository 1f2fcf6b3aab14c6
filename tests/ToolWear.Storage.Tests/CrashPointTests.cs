using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests;

/// <summary>
/// The promise of the store, tried at every point: whenever the power goes, and whatever of the unsynced has reached the
/// disk, everything acknowledged is there in order, and at most the one line that was being written appears besides, whole.
/// </summary>
public sealed class CrashPointTests
{
    private static readonly ImmutableArray<ImmutableArray<string>> Work =
    [
        [TestShop.Heats("R3", 1)],
        [TestShop.Note(700)],
        [TestShop.Heats("R3", 2), TestShop.Heats("R4", 2), TestShop.Note(1300)],
        [TestShop.Heats("R4", 3)],
        // a line of exactly three sectors and more, and one that ends near a sector's end
        [TestShop.Note(1536)],
        [TestShop.Note(330)],
        [TestShop.Heats("R5", 4)],
    ];

    [Fact]
    public void Nothing_acknowledged_is_lost_wherever_the_power_is_cut()
    {
        int operations = Run(new CrashingDisk()).Operations;
        int points = 0;
        for (int at = 1; at <= operations; at++)
        {
            var disk = new CrashingDisk { CutPowerAt = at };
            Outcome outcome = Run(disk);
            Assert.True(outcome.WasCut);
            foreach (Tear tear in Tears(disk))
            {
                points++;
                MustHold(outcome, disk.AfterPowerCut(tear), $"operation {at}, {tear}");
            }
        }
        Assert.InRange(points, 2000, 20_000);
    }

    [Fact]
    public void Nothing_acknowledged_is_lost_when_the_power_goes_again_after_a_kill()
    {
        int operations = Run(new CrashingDisk()).Operations;
        int points = 0;
        for (int at = 1; at <= operations; at++)
        {
            var first = new CrashingDisk { CutPowerAt = at };
            Outcome outcome = Run(first);
            CrashingDisk killed = first.AfterKill();
            ImmutableArray<string> shown = TestShop.Bodies(TestShop.OnCrashingDisk, killed);
            MustBe(outcome, shown, $"killed at {at}");
            // what was shown once must stay, though the first process never synced it
            CrashingDisk dark = killed.AfterPowerCut(new Tear(new FirstBytes(0), Names: 0));
            Assert.Equal(shown, TestShop.Bodies(TestShop.OnCrashingDisk, dark));
            points++;
        }
        Assert.InRange(points, 20, 100);
    }

    [Fact]
    public void Nothing_acknowledged_is_lost_when_documents_stand_beside_the_journal()
    {
        int operations = Run(new CrashingDisk { HoldsDocuments = true }).Operations;
        for (int at = 1; at <= operations; at += 3)
        {
            var disk = new CrashingDisk { CutPowerAt = at, HoldsDocuments = true };
            Outcome outcome = Run(disk);
            MustHold(outcome, disk.AfterPowerCut(new Tear(new FirstBytes(at * 7 % 60))), $"operation {at}");
        }
    }

    private static IEnumerable<Tear> Tears(CrashingDisk disk)
    {
        int names = disk.PendingNames;
        for (int kept = 0; kept <= names; kept++)
        {
            int step = Math.Max(1, disk.LastWriteLength / 60);
            for (int bytes = 0; bytes <= disk.LastWriteLength + step; bytes += step)
            {
                yield return new Tear(new FirstBytes(bytes), kept);
                yield return new Tear(new FirstBytes(bytes), kept, LengthFirst: true);
            }
            // all but the line end, and all but the last digit
            yield return new Tear(new FirstBytes(disk.LastWriteLength - 1), kept);
            yield return new Tear(new FirstBytes(disk.LastWriteLength - 2), kept);
            for (ulong mask = 0; mask < 1UL << disk.LastWriteSectors; mask++)
            {
                yield return new Tear(new Sectors(mask), kept);
                yield return new Tear(new Sectors(mask), kept, LengthFirst: true);
            }
        }
    }

    private static Outcome Run(CrashingDisk disk)
    {
        var acknowledged = ImmutableArray.CreateBuilder<string>();
        int lines = 0;
        bool wasCut = false;
        try
        {
            foreach (int session in new[] { 4, Work.Length })
            {
                using Store store = TestShop.Open(TestShop.OnCrashingDisk, disk);
                while (lines < session)
                {
                    store.Append(TestShop.Day, Work[lines]);
                    acknowledged.AddRange(Work[lines]);
                    lines++;
                }
            }
        }
        catch (PowerCutException)
        {
            wasCut = true;
        }
        ImmutableArray<string> next = lines < Work.Length ? Work[lines] : [];
        return new Outcome(acknowledged.DrainToImmutable(), next, disk.Operations, wasCut);
    }

    private static void MustHold(Outcome outcome, CrashingDisk disk, string where)
    {
        ImmutableArray<string> found = TestShop.Bodies(TestShop.OnCrashingDisk, disk);
        MustBe(outcome, found, where);
        // and the shop goes on from there
        using (Store store = TestShop.Open(TestShop.OnCrashingDisk, disk))
        {
            Assert.Equal(found.Length + 1, store.Append(TestShop.Day, TestShop.Heats("R9", 9)).Seq);
        }
        Assert.Equal([.. found, TestShop.Heats("R9", 9)], TestShop.Bodies(TestShop.OnCrashingDisk, disk));
    }

    private static void MustBe(Outcome outcome, ImmutableArray<string> found, string where)
    {
        bool isExact = found.SequenceEqual(outcome.Acknowledged, StringComparer.Ordinal);
        bool hasNext = found.SequenceEqual(outcome.Acknowledged.AddRange(outcome.Next), StringComparer.Ordinal);
        Assert.True(isExact || hasNext, $"{where}: {found.Length} found, {outcome.Acknowledged.Length} acknowledged");
    }

    private sealed record Outcome(
        ImmutableArray<string> Acknowledged,
        ImmutableArray<string> Next,
        int Operations,
        bool WasCut
    );
}
