using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Disks;
using ToolWear.Testing.Generators;
using ToolWear.Testing.NaiveShop;
using Xunit;

namespace ToolWear.Storage.Tests;

/// <summary>Random ledgers through the store, the power cut anywhere: what is found folds to what the slow, obvious shop says.</summary>
public sealed class RandomLedgerTests
{
    private static readonly StoreSettings Settings = TestShop.Settings() with
    {
        Kinds = new KnownKinds(EntryFormat.Known),
    };

    [Fact]
    public void What_is_there_after_a_power_cut_is_the_shop_up_to_what_was_acknowledged_or_one_line_more() =>
        Gen.Select(Ledgers.Plausible, Gen.Int[1, 80], Gen.Int[0, 400], Gen.Int[1, 4], Gen.Bool)
            .Sample(
                (ledger, cutAt, bytes, longest, lengthFirst) =>
                {
                    var disk = new CrashingDisk { CutPowerAt = cutAt };
                    (int acknowledged, int next) = Record(disk, ledger, longest);
                    CrashingDisk dark = disk.AfterPowerCut(
                        new Tear(new FirstBytes(bytes), bytes % 3, LengthFirst: lengthFirst)
                    );
                    ImmutableArray<Entered> found = Read(dark);
                    Assert.True(
                        found.Length == acknowledged || found.Length == acknowledged + next,
                        $"{found.Length} found, {acknowledged} acknowledged, {next} in flight"
                    );
                    SlowShop slow = new();
                    foreach ((Entered entered, Entered back) in ledger.Zip(found))
                    {
                        // the moment is the store's own
                        Assert.True(slow.Takes(entered with { At = back.At }));
                    }
                    Assert.Equal(slow.Tell(), ShopTold.Of(Shop.Fold(found).After!), ignoreLineEndingDifferences: false);
                },
                iter: 300,
                threads: 2
            );

    // Lines of one entry and batches of a few.
    private static (int Acknowledged, int Next) Record(CrashingDisk disk, ImmutableArray<Entered> ledger, int longest)
    {
        int at = 0;
        int next = 0;
        try
        {
            using Store store = Store.Open(TestShop.OnCrashingDisk, disk, Settings, _ => { });
            while (at < ledger.Length)
            {
                // a line has one day
                next = ledger.Skip(at).TakeWhile(each => each.Day == ledger[at].Day).Take((at % longest) + 1).Count();
                store.Append(
                    ledger[at].Day,
                    [.. ledger.Skip(at).Take(next).Select(each => EntryFormat.Write(each.What))]
                );
                at += next;
                next = 0;
            }
        }
        catch (PowerCutException)
        {
            // nothing more comes
        }
        return (at, next);
    }

    private static ImmutableArray<Entered> Read(CrashingDisk disk)
    {
        var found = ImmutableArray.CreateBuilder<Entered>();
        using Store store = Store.Open(
            TestShop.OnCrashingDisk,
            disk,
            Settings,
            line =>
            {
                foreach (string body in line.Bodies)
                {
                    found.Add(new Entered(found.Count + 1, line.At, line.Day, EntryFormat.Read(body)));
                }
            }
        );
        return found.ToImmutable();
    }
}
