using System.Runtime.CompilerServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Storage.Csv;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;
using ToolWear.Storage.Stores;
using ToolWear.Storage.Tests.Csv;
using Xunit;

namespace ToolWear.Storage.Tests;

/// <summary>Journals as earlier programs wrote them by their own commands, the last before the entries changed: each was
/// built from the history of its day. They are never made again.</summary>
public sealed class OlderProgramsTests
{
    private static readonly DateOnly Today = new(2026, 12, 1);

    [Theory]
    [InlineData("2026-11-24", 24, "the first program")]
    [InlineData("2026-11-25", 24, "nothing that must be known may be missing; heads at a stage")]
    [InlineData("2026-11-30", 27, "loans and stock-takes")]
    [InlineData("2026-12-01", 31, "a key for what is done once; tools corrected by a table")]
    public void The_shop_of_an_earlier_program_opens_round_trips_and_goes_on(string day, int entries, string with)
    {
        Assert.NotEmpty(with);
        using TemporaryFolder folder = new();
        File.Copy(Sample($"program-of-{day}.journal"), folder.Store.Journal);

        Shop shop = Opened(folder.Store);

        Assert.Equal(entries, shop.Ledger.Count);
        ToolInShop cracked = shop.Tools.Values.Single(tool => tool.Mark.Text == "S1");
        Assert.Equal(ToolState.Scrapped, cracked.State);
        Assert.Equal(
            (Finding.Cracked, (ToolPart?)null),
            cracked.Events.Select(each => each.What).OfType<ToolLookedOver>().Select(e => (e.Finding, e.Part)).Last()
        );
        // a slip that earlier programs took: it opens, but no folder brings it into another shop until it is crossed out
        ToolMark mark = shop.Tools.Values.Single(tool => tool.Mark.Text == "A1").Mark;
        Entered slip = shop.Ledger.Single(each => each.What is ToolMeasured { Size.Mm: < 2 });
        CsvFault fault = Assert.Single(CsvSet.Import(CsvSet.Export(shop), Today).Faults);
        Assert.Contains("A1 width 1.39 mm cannot be", fault.ToString(), StringComparison.Ordinal);

        // and today's program writes on in it what the earlier one could not say
        using (Store store = Store.Open(folder.Store, new RealDisk(), Settings(), _ => { }))
        {
            store.Append(Today, EntryFormat.Write(new EntryCrossedOut(slip.Number, "a slip")));
            ToolLookedOver found = new(mark, Today, Finding.Cracked, null, null, ToolPart.StruckEnd);
            store.Append(Today, EntryFormat.Write(found));
        }

        Shop after = Opened(folder.Store);
        Assert.Equal(entries + 2, after.Ledger.Count);
        Shop again = RoundTrip.Through(after, Today);
        Assert.Equal(
            ToolPart.StruckEnd,
            again
                .Tools.Values.Single(tool => tool.Mark.Text == "A1")
                .Events.Select(each => each.What)
                .OfType<ToolLookedOver>()
                .Last()
                .Part
        );
    }

    private static Shop Opened(StorePaths paths)
    {
        Shop shop = Shop.Empty;
        void Take(JournalLine line)
        {
            foreach (string body in line.Bodies)
            {
                shop =
                    shop.After(new Entered(shop.NextNumber, line.At, line.Day, EntryFormat.Read(body))).After
                    ?? throw new InvalidOperationException($"refused: {body}");
            }
        }

        using Store store = Store.Open(paths, new RealDisk(), Settings(), Take);
        Assert.Equal(shop.Ledger.Count, store.LastSeq);
        return shop;
    }

    private static StoreSettings Settings() => TestShop.Settings() with { Kinds = new KnownKinds(EntryFormat.Known) };

    private static string Sample(string name, [CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here) ?? "", "samples", name);
}
