using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

public sealed class StockRackTests
{
    // a round of 20 over 100 mm, 7 % loss: 107 mm of a 20 bar; 107 x 400/900 = 47.56 of a 30 bar, cut as 48
    private const double Of20 = 107;
    private const double Of30 = 48;
    private const double Cut = 2;

    [Fact]
    public void The_smallest_bar_that_serves_is_cut_and_what_is_left_said()
    {
        StockRack rack = Rack(
            ("small", "4140", 19, 900),
            ("right", "4140", 20, 250),
            ("large", "4140", 30, 900),
            ("other", "H13", 20, 900)
        );
        BatchStock stock = rack.Cut(Pin(), "4140", 3, Batch(1));

        Assert.Equal("right large", string.Join(' ', stock.Cuts.Select(cut => cut.Bar.Name)));
        Assert.Equal([2, 1], stock.Cuts.Select(cut => cut.Pieces));
        Assert.Equal(Of20, stock.Cuts[0].PieceMm, 9);
        Assert.Equal(250 - (2 * (Of20 + Cut)), stock.Cuts[0].LeftMm, 9);
        Assert.Equal(Of30, stock.Cuts[1].PieceMm, 9);
        Assert.Null(stock.Buy);
        Assert.Empty(stock.Notes);
        Assert.Empty(rack.Cuts().Shared);
    }

    [Fact]
    public void Of_two_bars_of_one_section_the_shorter_is_cut_first()
    {
        StockRack rack = Rack(("long", "4140", 20, 900), ("short", "4140", 20, 120));
        Assert.Equal("short", rack.Cut(Pin(), "4140", 1, Batch(1)).Cuts.Single().Bar.Name);
        Assert.Equal("long", rack.Cut(Pin(), "4140", 1, Batch(2)).Cuts.Single().Bar.Name);
    }

    [Fact]
    public void What_the_rack_lacks_is_bought_in_whole_bars_of_the_same_size()
    {
        StockRack rack = Rack(("right", "4140", 20, 150));
        BatchStock stock = rack.Cut(Pin(), "4140", 30, Batch(1));

        // 27 pieces of 107 with a cut of 2 each go into a bar of 3000; 29 are wanted beside the one from the rack
        Assert.Equal(1, Assert.Single(stock.Cuts).Pieces);
        Assert.Equal((Wanted("4140"), 2, 29), (stock.Buy!.Bar, stock.Buy.Bars, stock.Buy.Pieces));
    }

    [Fact]
    public void What_is_left_of_a_bought_bar_serves_the_next_batch()
    {
        StockRack rack = Rack();
        BatchStock first = rack.Cut(Pin(), "W1", 20, Batch(1));
        BatchStock second = rack.Cut(Pin(), "W1", 10, Batch(2));

        // 27 pieces of 107 go into a bar of 3000: 7 of the second batch into the first bar, 3 into another
        Assert.Equal((1, 20), (first.Buy!.Bars, first.Buy.Pieces));
        Assert.Equal(7, Assert.Single(second.Cuts).Pieces);
        Assert.Equal((1, 3), (second.Buy!.Bars, second.Buy.Pieces));
        CutList cuts = rack.Cuts();
        Assert.Equal(2, Assert.Single(cuts.Buy).Bars);
        Assert.Equal(
            [3000 - (27 * (Of20 + Cut)), 3000 - (3 * (Of20 + Cut))],
            cuts.Bars.Select(bar => Math.Round(bar.LeftMm, 9))
        );
        Assert.Equal([Batch(1), Batch(2)], cuts.Bars[0].Batches.Select(each => each.Batch));
        Assert.Empty(cuts.Shared);
    }

    [Fact]
    public void A_piece_longer_than_any_bar_is_said_and_not_left_out()
    {
        StockRack rack = new(Short().Shop);
        BatchStock stock = rack.Cut(Pin(), "W1", 1, Batch(1));
        Assert.Null(stock.Buy);
        Assert.Contains("longer than a bar", Assert.Single(stock.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_steel_that_was_never_in_the_rack_is_bought_as_a_round_that_serves()
    {
        BatchStock stock = Rack().Cut(Pin(), "W1", 1, Batch(1));
        Assert.Equal((Wanted("W1"), 1), (stock.Buy!.Bar, stock.Buy.Bars));
    }

    [Fact]
    public void A_bar_that_is_too_small_is_left_and_a_size_that_merchants_keep_is_bought()
    {
        BatchStock stock = Rack(("small", "4140", 10, 900)).Cut(Pin(20.5m), "4140", 1, Batch(1));
        Assert.Empty(stock.Cuts);
        // EN 10060:2003, table 1: 22 follows 20; 107 x (20.5 / 22)^2 = 92.9
        Assert.Equal((Length.FromMm(22m), 93), (stock.Buy!.Bar.Size.A, stock.Buy.PieceMm));
    }

    [Fact]
    public void One_bar_is_bought_for_a_smaller_and_a_larger_batch()
    {
        Body small = Pin();
        Body large = Pin(27.5m);
        StockRack rack = new(new Story().Shop, new StockWanted(small, "W1", 2), new StockWanted(large, "W1", 2));
        Assert.Equal(Length.FromMm(28m), rack.Cut(small, "W1", 2, Batch(1)).Buy!.Bar.Size.A);
        Assert.Null(rack.Cut(large, "W1", 2, Batch(2)).Buy);
        Assert.Equal(1, Assert.Single(rack.Cuts().Buy).Bars);
    }

    [Fact]
    public void Pieces_cuts_and_what_is_left_are_the_bar()
    {
        StockRack rack = Rack(("one", "4140", 30, 900), ("two", "4140", 30, 700));
        rack.Cut(Pin(), "4140", 9, Batch(1));
        rack.Cut(Pin(25m), "4140", 7, Batch(2));
        foreach (BarUse bar in rack.Cuts().Bars)
        {
            double pieces = bar.Batches.Sum(each => each.Pieces * (each.PieceMm + bar.CutMm));
            Assert.Equal(bar.LengthMm, pieces + bar.LeftMm, 9);
        }
    }

    [Fact]
    public void A_merchants_list_of_ones_own_counts_and_a_shop_of_inches_buys_by_inches()
    {
        Story story = new();
        story.Enter(new SettingChanged("bar_sizes_mm", "25 40"));
        Assert.Equal(25, new StockRack(story.Shop).Cut(Pin(), "W1", 1, Batch(1)).Buy!.Bar.Size.A.Mm);
        story = new();
        story.Enter(new SettingChanged("units", "in"));
        // 13/16 in is 20.6 mm
        Assert.Equal(25.4 * 13 / 16, new StockRack(story.Shop).Cut(Pin(), "W1", 1, Batch(1)).Buy!.Bar.Size.A.Mm, 6);
    }

    [Theory]
    [InlineData(300, false)]
    [InlineData(150, true)]
    public void Two_batches_that_want_one_bar_are_named(double lengthMm, bool isTooShort)
    {
        StockRack rack = Rack(("right", "4140", 20, lengthMm));
        rack.Cut(Pin(), "4140", 1, Batch(1));
        rack.Cut(Pin(), "4140", 1, Batch(2));
        SharedBar shared = Assert.Single(rack.Cuts().Shared);
        Assert.Equal(("right", isTooShort), (shared.Bar.Name, shared.IsTooShort));
        Assert.Equal([Batch(1), Batch(2)], shared.Batches);
    }

    private static BatchName Batch(int day) => new(new ToolPlace("H", Place.Rough, "drift"), Story.Day(day));

    private static BarWanted Wanted(string steel) =>
        new(null, steel, new BarSize(SectionKind.Round, Length.FromMm(20m), null));

    private static Story Short()
    {
        Story story = new();
        story.Enter(new SettingChanged("bar_length_mm", "100"));
        return story;
    }

    private static StockRack Rack(params (string Name, string Steel, double Mm, double LengthMm)[] bars)
    {
        Story story = new();
        foreach ((string name, string steel, double mm, double lengthMm) in bars)
        {
            story.Enter(
                new BarDescribed(
                    name,
                    steel,
                    SectionKind.Round,
                    Length.FromMm(mm),
                    null,
                    Length.FromMm(lengthMm),
                    null,
                    null
                )
            );
        }

        return new StockRack(story.Shop);
    }

    private static Body Pin(decimal mm = 20)
    {
        Assert.True(RoundSection.TryMake(Length.FromMm(mm), out RoundSection? round, out string? refusal), refusal);
        Station[] stations = [new(BodyPart.Body, Length.Zero, round), new(BodyPart.Body, Length.FromMm(100m), round)];
        Assert.True(Body.TryMake(stations, out Body? body, out refusal), refusal);
        return body;
    }
}
