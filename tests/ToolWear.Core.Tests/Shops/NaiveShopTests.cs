using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Testing.Generators;
using ToolWear.Testing.NaiveShop;
using Xunit;

namespace ToolWear.Core.Tests.Shops;

/// <summary>The real shop beside the slow, obvious one: the same attempts, the same answers.</summary>
public sealed class NaiveShopTests
{
    [Fact]
    public void Both_shops_take_or_refuse_the_same_and_come_to_the_same_present() =>
        Ledgers.Attempts.Sample(Agree, iter: 600, threads: 2, print: Show);

    [Fact]
    public void Random_attempts_are_worth_trying_each_kind_is_taken_and_each_is_refused()
    {
        HashSet<string> taken = [];
        HashSet<string> refused = [];
        foreach (ImmutableArray<Attempt> attempts in Fixed.Samples(Ledgers.Attempts, 600))
        {
            Shop shop = Shop.Empty;
            foreach (Attempt attempt in attempts)
            {
                Step step = shop.After(Ledgers.Number(shop, attempt));
                (step.After is null ? refused : taken).Add(attempt.What.GetType().Name);
                shop = step.After ?? shop;
            }
        }

        string[] every = [.. EntryGens.Narrow.ByKind.Keys.Select(kind => kind.Name).Order(StringComparer.Ordinal)];
        string[] always = [nameof(PatternDescribed), nameof(SettingChanged)];
        Assert.Empty(every.Except(taken, StringComparer.Ordinal));
        Assert.Empty(every.Except(always, StringComparer.Ordinal).Except(refused, StringComparer.Ordinal));
    }

    private static void Agree(ImmutableArray<Attempt> attempts)
    {
        Shop shop = Shop.Empty;
        SlowShop slow = new();
        foreach (Attempt attempt in attempts)
        {
            Entered entered = Ledgers.Number(shop, attempt);
            Step step = shop.After(entered);
            bool slowTakes = slow.Takes(entered);
            Assert.True(
                slowTakes == step.After is not null,
                $"entry {entered.Number} {Testing.Told.Of(entered.What)}, slow shop {slowTakes}: {step.Refusal ?? "taken"}"
            );
            shop = step.After ?? shop;
        }

        Assert.Equal(slow.Tell(), ShopTold.Of(shop), ignoreLineEndingDifferences: false);
    }

    private static string Show(ImmutableArray<Attempt> attempts) =>
        "\n" + string.Join('\n', attempts.Select(each => $"{each.Day:yyyy-MM-dd} {Testing.Told.Of(each.What)}"));
}
