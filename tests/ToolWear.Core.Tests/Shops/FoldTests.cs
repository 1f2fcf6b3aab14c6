using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Testing.Generators;
using ToolWear.Testing.NaiveShop;
using Xunit;
using static ToolWear.Core.Tests.Shops.Story;

namespace ToolWear.Core.Tests.Shops;

public sealed class FoldTests
{
    [Fact]
    public void The_fold_of_a_ledger_is_where_step_by_step_came_to() =>
        Ledgers.Attempts.Sample(
            attempts =>
            {
                Shop stepped = Ledgers.Accepted(attempts);
                Step folded = Shop.Fold(stepped.Ledger);
                Assert.Null(folded.Refusal);
                Assert.Equal(ShopTold.Of(stepped), ShopTold.Of(folded.After!));
                Assert.Equal(stepped.Ledger, folded.After!.Ledger);
                Assert.Equal(stepped.CrossedOut.Keys.Order(), folded.After.CrossedOut.Keys.Order());
                Assert.Equal(stepped.NextNumber, folded.After.NextNumber);
                Assert.Equal(stepped.OpenSession?.Opening, folded.After.OpenSession?.Opening);
            },
            iter: 300,
            threads: 2
        );

    [Fact]
    public void What_a_folded_shop_takes_next_is_what_the_stepped_one_takes() =>
        Gen.Select(Ledgers.Attempts, EntryGens.Narrow.Any.Array[20, 20])
            .Sample(
                (attempts, next) =>
                {
                    Shop stepped = Ledgers.Accepted(attempts);
                    Shop folded = Shop.Fold(stepped.Ledger).After!;
                    foreach (LedgerEntry what in next)
                    {
                        Entered entered = Ledgers.Number(stepped, new Attempt(Pool.FirstDay.AddDays(Pool.Days), what));
                        Assert.Equal(stepped.After(entered).Refusal, folded.After(entered).Refusal);
                    }
                },
                iter: 100,
                threads: 2
            );

    [Fact]
    public void A_shop_is_never_changed_by_what_comes_after() =>
        Ledgers.Attempts.Sample(
            attempts =>
            {
                Shop shop = Ledgers.Accepted(attempts[..(attempts.Length / 2)]);
                string before = ShopTold.Of(shop);
                foreach (Attempt attempt in attempts)
                {
                    _ = shop.After(Ledgers.Number(shop, attempt));
                }

                Assert.Equal(before, ShopTold.Of(shop));
            },
            iter: 100,
            threads: 2
        );

    [Fact]
    public void An_empty_ledger_folds_to_an_empty_shop()
    {
        Shop shop = Shop.Fold([]).After!;
        Assert.Equal(1, shop.NextNumber);
        Assert.Equal(ShopTold.Of(Shop.Empty), ShopTold.Of(shop));
    }

    [Fact]
    public void A_ledger_that_cannot_be_names_the_entry() =>
        Assert.Equal(
            "entry 2: No tool \"R1\". None is entered yet.",
            Shop.Fold([Entry(1, Opening("s1", Day(1))), Entry(2, LookedOver("R1", Day(1)))]).Refusal
        );

    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(0)]
    public void A_ledger_with_a_gap_in_its_numbers_is_refused(long second) =>
        Assert.Equal(
            $"entry {second} stands where entry 1 comes next",
            Shop.Fold([Entry(second, Opening("s1", Day(1)))]).Refusal
        );

    [Theory]
    [InlineData(2, "there is no entry 2: the ledger holds 1 to 1")]
    [InlineData(3, "there is no entry 3: the ledger holds 1 to 1")]
    [InlineData(0, "there is no entry 0: the ledger holds 1 to 1")]
    public void A_crossing_out_of_what_is_not_there_yet_is_refused(long crossed, string refusal) =>
        Assert.Equal(
            "entry 2: " + refusal,
            Shop.Fold([
                Entry(1, Opening("s1", Day(1))),
                Entry(2, new EntryCrossedOut(crossed, "why")),
                Entry(3, Opening("s2", Day(1))),
            ]).Refusal
        );

    [Fact]
    public void A_crossing_out_of_a_crossing_out_is_refused_in_a_fold_too() =>
        Assert.Equal(
            "entry 3: entry 2 is itself a crossing out: say that entry 1 counts again instead",
            Shop.Fold([
                Entry(1, Opening("s1", Day(1))),
                Entry(2, new EntryCrossedOut(1, "why")),
                Entry(3, new EntryCrossedOut(2, "why")),
            ]).Refusal
        );

    [Fact]
    public void A_second_crossing_out_of_the_same_entry_is_refused_in_a_fold_too() =>
        Assert.Equal(
            "entry 3: entry 1 is crossed out already",
            Shop.Fold([
                Entry(1, Opening("s1", Day(1))),
                Entry(2, new EntryCrossedOut(1, "why")),
                Entry(3, new EntryCrossedOut(1, "why")),
            ]).Refusal
        );

    [Fact]
    public void An_entry_out_of_turn_is_a_bug_and_throws() =>
        Assert.Throws<ArgumentException>(() => Shop.Empty.After(Entry(2, Opening("s1", Day(1)))));

    private static Entered Entry(long number, LedgerEntry what) =>
        new(number, new DateTimeOffset(Day(1).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), Day(1), what);
}
