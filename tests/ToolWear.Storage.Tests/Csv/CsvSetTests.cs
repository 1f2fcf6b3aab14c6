using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Storage.Csv;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

public sealed class CsvSetTests
{
    [Fact]
    public void Export_import_export_of_a_shop_that_has_everything_gives_the_same_bytes_and_histories()
    {
        ShopInHand shop = WholeShop.Make();
        RoundTrip.Through(shop.Shop, shop.Today);
        Assert.Equal(RoundTrip.Lines(CsvSet.FileNames), RoundTrip.NamesOf(CsvSet.Export(shop.Shop)));
    }

    // the characters by which spreadsheets tell a formula: common practice, no source
    [Theory]
    [InlineData("=1", "'=1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@home", "'@home")]
    [InlineData("'so", "''so")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\rx", "'\rx")]
    [InlineData("a@b", "a@b")]
    public void Text_that_a_spreadsheet_takes_for_a_formula_gets_one_mark_in_front(string text, string content) =>
        Assert.Equal(content, CsvCell.Text(text).Content);

    [Fact]
    public void An_empty_shop_writes_shop_and_tools_with_their_headers_only()
    {
        IReadOnlyList<CsvFile> files = CsvSet.Export(Shop.Empty);
        Assert.Equal("shop.csv\ntools.csv", RoundTrip.NamesOf(files));
        Assert.Equal("setting,value\r\n", RoundTrip.TextOf(files[0]));
        Assert.Equal(
            "tool,form,eye,place,section,steel,lot,made_on,started_as,heats_before,heats_before_how,guess_heats,"
                + "steel_cost,forge_hours,grind_hours,treat_cost,peg,note\r\n",
            RoundTrip.TextOf(files[1])
        );
        RoundTrip.Through(Shop.Empty, ShopInHand.Day("2026-01-01"));
    }

    [Fact]
    public void Heats_that_follow_each_other_are_one_row_and_a_rework_between_parts_them()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Enter(new ToolAdded(ShopInHand.Drift("B")));
        shop.Open("s", "2026-05-01");
        shop.Work("s", "A", 3);
        shop.Work("s", "B", 2);
        shop.Work("s", "A", 4);
        shop.Rework("A", "2026-05-01");
        shop.Work("s", "A", 2);
        shop.Close("s");
        Assert.Equal(
            "entry,session,tool,work,heats,how\r\n2,s,A,cheeks,3.5,counted\r\n3,s,B,cheeks,1,counted\r\n5,s,A,cheeks,1,counted\r\n",
            RoundTrip.TextOf(shop.Shop, "heats.csv")
        );
        Assert.StartsWith("entry,tool,on,what", RoundTrip.TextOf(shop.Shop, "reworks.csv"), StringComparison.Ordinal);
        Assert.Contains("\r\n4,A,", RoundTrip.TextOf(shop.Shop, "reworks.csv"), StringComparison.Ordinal);
        RoundTrip.Through(shop.Shop, shop.Today);
    }

    [Fact]
    public void A_row_of_heats_never_exceeds_a_thousand()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Open("s", "2026-05-01");
        shop.Work("s", "A", 1200);
        shop.Work("s", "A", 800);
        shop.Work("s", "A", 1);
        shop.Close("s");
        string heats = RoundTrip.TextOf(shop.Shop, "heats.csv");
        Assert.Contains("2,s,A,cheeks,1000,counted\r\n3,s,A,cheeks,0.5,counted\r\n", heats, StringComparison.Ordinal);
        RoundTrip.Through(shop.Shop, shop.Today);
    }

    [Fact]
    public void Heats_remembered_late_rank_before_the_readings_taken_after_their_session()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Open("s", "2026-05-01");
        shop.Work("s", "A", 4);
        shop.Close("s");
        shop.Measure("A", "2026-05-02", 13.5m, "s");
        shop.Work("s", "A", 2);
        Assert.Contains("2,s,A,cheeks,3,", RoundTrip.TextOf(shop.Shop, "heats.csv"), StringComparison.Ordinal);
        Assert.Contains(
            "3,A,width,2026-05-02,s,13.5",
            RoundTrip.TextOf(shop.Shop, "readings.csv"),
            StringComparison.Ordinal
        );
        RoundTrip.Through(shop.Shop, shop.Today);
    }

    [Fact]
    public void A_mark_used_again_is_unique_in_every_file()
    {
        Shop shop = WholeShop.Make().Shop;
        string tools = RoundTrip.TextOf(shop, "tools.csv");
        Assert.Contains("\r\nH1 (scrapped 2026-05-10),drift,", tools, StringComparison.Ordinal);
        Assert.Contains("\r\nH1 (scrapped 2026-05-12),drift,", tools, StringComparison.Ordinal);
        Assert.Contains("\r\nH1,drift,", tools, StringComparison.Ordinal);
        Assert.Contains(
            ",H1 (scrapped 2026-05-12),cheeks,4,",
            RoundTrip.TextOf(shop, "heats.csv"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            ",H1 (scrapped 2026-05-12),",
            RoundTrip.TextOf(shop, "eyes-measured.csv"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            ",H1 (scrapped 2026-05-10),2026-05-10,made-into,H5,",
            RoundTrip.TextOf(shop, "scrapped.csv"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Two_tools_scrapped_under_one_long_mark_on_one_day_get_a_number_and_keep_to_forty_characters()
    {
        string mark = new('M', 40);
        ShopInHand shop = new();
        for (int i = 0; i < 3; i++)
        {
            shop.Enter(new ToolAdded(ShopInHand.Drift(mark)));
            shop.Enter(
                new ToolScrapped(ShopInHand.Mark(mark), ShopInHand.Day("2026-05-10"), ScrapCause.Worn, null, null)
            );
        }

        string tools = RoundTrip.TextOf(shop.Shop, "tools.csv");
        Assert.Contains($"\r\n{new string('M', 18)} (scrapped 2026-05-10),", tools, StringComparison.Ordinal);
        Assert.Contains($"\r\n{new string('M', 16)} (scrapped 2026-05-10) 2,", tools, StringComparison.Ordinal);
        Assert.Contains($"\r\n{mark},", tools, StringComparison.Ordinal);
        RoundTrip.Through(shop.Shop, shop.Today);
    }

    [Fact]
    public void A_tool_started_anew_is_written_as_one_in_use_whose_heats_nobody_knows()
    {
        Shop shop = WholeShop.Make().Shop;
        Assert.Contains(
            "\r\nH2,drift,H,rough,teardrop,4140,,,in use,,unknown,",
            RoundTrip.TextOf(shop, "tools.csv"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Crossed_out_entries_are_not_written()
    {
        Assert.DoesNotContain(
            "cheeks,100",
            RoundTrip.TextOf(WholeShop.Make().Shop, "heats.csv"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_tool_brought_back_in_the_morning_works_the_same_day_after_a_round_trip()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Enter(new ToolSetAside(ShopInHand.Mark("A"), ShopInHand.Day("2026-05-01"), null));
        shop.Enter(new ToolBroughtBack(ShopInHand.Mark("A"), ShopInHand.Day("2026-05-05"), null));
        shop.Open("late", "2026-05-03");
        shop.Work("late", "A", 2);
        shop.Close("late");
        shop.Open("s", "2026-05-05");
        shop.Work("s", "A", 2);
        shop.Close("s");
        RoundTrip.Through(shop.Shop, shop.Today);
    }

    [Fact]
    public void Heats_after_a_day_on_which_the_tool_is_said_to_have_been_set_aside_survive_a_round_trip()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Open("s", "2026-05-05");
        shop.Work("s", "A", 2);
        shop.Close("s");
        shop.Enter(new ToolSetAside(ShopInHand.Mark("A"), ShopInHand.Day("2026-05-01"), null));
        Shop after = RoundTrip.Through(shop.Shop, shop.Today);
        Assert.Equal(ToolState.SetAside, after.Tools.Values.Single().State);
    }

    [Fact]
    public void A_session_that_was_left_open_is_open_again_though_later_days_had_sessions()
    {
        ShopInHand shop = new();
        shop.Enter(new ToolAdded(ShopInHand.Drift("A")));
        shop.Open("b", "2026-05-05");
        shop.Close("b", 3);
        shop.Rework("A", "2026-05-01");
        shop.Open("a", "2026-05-01");
        shop.Work("a", "A", 2);
        shop.Measure("A", "2026-05-01", 13.9m);
        shop.Rework("A", "2026-05-01");
        Shop after = RoundTrip.Through(shop.Shop, shop.Today);
        Assert.Equal("a", after.OpenSession?.Name);
    }
}
