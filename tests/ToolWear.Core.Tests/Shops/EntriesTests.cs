using CsCheck;
using ToolWear.Core.Ledger;
using Xunit;

namespace ToolWear.Core.Tests.Shops;

public sealed class EntriesTests
{
    [Fact]
    public void Lists_that_grow_from_one_another_each_keep_their_own_entries() =>
        Gen.Int[0, 100]
            .Array[1, 60]
            .Sample(from =>
            {
                List<(Entries List, long[] Wanted)> grown = [([], [])];
                for (int i = 0; i < from.Length; i++)
                {
                    // now the newest list, now one that was added to before
                    (Entries list, long[] wanted) = grown[from[i] < 70 ? grown.Count - 1 : from[i] % grown.Count];
                    grown.Add((list.Add(Entry(i)), [.. wanted, i]));
                }

                Assert.All(
                    grown,
                    each =>
                    {
                        Assert.Equal(each.Wanted, each.List.Select(entry => entry.Number));
                        Assert.Equal(each.Wanted.Length, each.List.Count);
                        Assert.Equal(each.Wanted, each.List.AsSpan().ToArray().Select(entry => entry.Number));
                    }
                );
            });

    [Fact]
    public void Two_threads_that_add_to_one_list_get_a_list_each()
    {
        for (int round = 0; round < 200; round++)
        {
            Entries shared = [Entry(1), Entry(2)];
            shared = shared.Add(Entry(3));
            Entries[] grown = new Entries[8];
            Parallel.For(0, grown.Length, i => grown[i] = shared.Add(Entry(100 + i)).Add(Entry(200 + i)));
            for (int i = 0; i < grown.Length; i++)
            {
                Assert.Equal([1, 2, 3, 100 + i, 200 + i], grown[i].Select(entry => entry.Number));
            }
        }
    }

    [Fact]
    public void No_entries_are_no_entries()
    {
        Entries none = [];
        Assert.True(none.IsEmpty);
        Assert.False(none.Exists(_ => true));
        Assert.Throws<IndexOutOfRangeException>(() => none[0]);
    }

    private static Entered Entry(long number) =>
        new(number, DateTimeOffset.UnixEpoch, new DateOnly(2026, 1, 1), new SettingChanged("hands", $"{number}"));
}
