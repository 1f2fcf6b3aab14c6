using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Storage.Csv;
using ToolWear.Storage.HandMade;
using Xunit;

namespace ToolWear.Storage.Tests.Csv;

public sealed class CsvImportTests
{
    private static readonly DateOnly Today = ShopInHand.Day("2026-06-30");

    [Fact]
    public void Without_ranks_the_days_order_with_reworks_after_the_heats_of_their_day()
    {
        CsvImported imported = Import(
            ("tools.csv", "tool,form\nR1,drift\nR2,drift\n"),
            ("gauge-marks.csv", "tool,gauge,wears\nR1,width,smaller\n"),
            ("sessions.csv", "session,on,heads,closed\nb,2026-05-02,,no\na,2026-05-01,6,\n"),
            ("heats.csv", "session,tool,work,heats\nb,R1,cheeks,2\na,R1,cheeks,3\n"),
            ("readings.csv", "tool,gauge,on,session,size_mm\nR1,width,2026-05-02,a,13.5\nR1,width,2026-05-01,,13.6\n"),
            ("reworks.csv", "tool,on,what\nR1,2026-05-01,straightened\n"),
            ("aside.csv", "tool,on,what\nR1,2026-04-30,set aside\nR1,2026-05-01,brought back\n"),
            ("scrapped.csv", "tool,on,cause\nR1,2026-05-02,worn\n")
        );
        Assert.Equal("", RoundTrip.FaultsOf(imported));
        Assert.Equal(
            "ToolAdded\nToolAdded\nToolSetAside\nToolBroughtBack\nSessionOpened\nSessionClosed\nHeatsWorked\nToolMeasured\n"
                + "ToolReworked\nToolMeasured\nSessionOpened\nHeatsWorked\nToolScrapped",
            RoundTrip.Lines(imported.Entries.Select(entry => entry.GetType().Name))
        );
        Assert.Equal("b", ShopInHand.Folded(imported.Entries, Today).OpenSession?.Name);
        Assert.Equal(6, Assert.IsType<SessionClosed>(imported.Entries[5]).Heads);
    }

    [Fact]
    public void Texts_lose_one_quote_mark_in_front_and_come_to_normal_form_C()
    {
        CsvImported imported = Import(("tools.csv", "\uFEFFtool,form,note\r\n'=A\u0308,drift,\"''x\ny\"\r\n"));
        Tool tool = Assert.IsType<ToolAdded>(Assert.Single(imported.Entries)).Tool;
        Assert.Equal("=\u00C4", tool.Mark.Text);
        Assert.Equal("'x\ny", tool.Note);
    }

    [Fact]
    public void Columns_may_come_in_any_order_and_the_optional_ones_may_be_missing()
    {
        CsvImported imported = Import(
            ("tools.csv", "form,heats_before_how,tool,heats_before\nfuller,counted,F,12.5\n")
        );
        Tool tool = Assert.IsType<ToolAdded>(Assert.Single(imported.Entries)).Tool;
        Assert.Equal(new ToolStart(StartedAs.InUse, Heats.OfHalves(25), HeatsBeforeHow.Counted), tool.Start);
    }

    [Theory]
    [InlineData("36.8,17.6,3.2,")]
    [InlineData("36.8,,3.2,8.8")]
    [InlineData("36.8,17.6,3.2,8.8")]
    public void A_teardrop_is_read_of_its_width_or_its_large_radius(string cells)
    {
        CsvImported imported = Import(
            ("tools.csv", "tool,form\nR1,drift\n"),
            (
                "stations.csv",
                $"tool,part,from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\nR1,full-size,0,teardrop,{cells}\n"
            )
        );
        Tool tool = Assert.IsType<ToolAdded>(Assert.Single(imported.Entries)).Tool;
        Assert.Equal(
            ShopInHand.Section(Core.Sections.SectionKind.Teardrop, 36.8m, 17.6m, 3.2m),
            tool.Stations.Single().Section
        );
    }

    [Theory]
    [InlineData("36.8,17.6,3.2,9", "large_radius_mm: twice 9 mm is not the width 17.6 mm; leave one of them empty")]
    [InlineData("36.8,,3.2,", "b_mm: a teardrop has a width as well; write it here")]
    [InlineData("16.8,17.6,3.2,", "section: A teardrop is longer than it is wide; 16.8 mm by 17.6 mm is not.")]
    public void A_section_that_cannot_be_is_told_at_its_cell(string cells, string fault) =>
        Assert.Equal(
            "stations.csv:2: " + fault,
            RoundTrip.FaultsOf(
                Import(
                    ("tools.csv", "tool,form\nR1,drift\n"),
                    (
                        "stations.csv",
                        $"tool,part,from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\nR1,nose,0,teardrop,{cells}\n"
                    )
                )
            )
        );

    [Fact]
    public void A_table_of_tools_in_use_adds_each_with_its_size_now()
    {
        CsvFile table = RoundTrip.File(
            "mine.csv",
            "tool,form,place,size_mm,scrap_mm,made_mm,heats_before,heats_before_how,on\n"
                + "R1,drift,rough,13.4,12.8,14,,,2026-06-01\nF1,fuller,,1.6,3,,40,estimated,\n"
        );
        Brought imported = Brought(table);
        Assert.Empty(imported.Faults);
        Shop shop = ShopInHand.Folded(imported.Entries, Today);
        Assert.Equal(4, imported.Entries.Length);
        Tool drift = shop.Tools[1].Tool;
        Assert.Equal(
            new("width", Wears.Smaller, Measures.Width, null, ShopInHand.Mm(14), ShopInHand.Mm(12.8m), null, null),
            drift.GaugeMarks[0]
        );
        Assert.Equal(ToolStart.Unknown, drift.Start);
        Tool fuller = shop.Tools[3].Tool;
        Assert.Equal(
            new("flat", Wears.Larger, Measures.Flat, null, null, null, ShopInHand.Mm(3), null),
            fuller.GaugeMarks[0]
        );
        Assert.Equal(new(StartedAs.InUse, Heats.Of(40), HeatsBeforeHow.Estimated), fuller.Start);
        Assert.Equal(
            new ToolMeasured(fuller.Mark, "flat", Today, null, ShopInHand.Mm(1.6m), null, null, null),
            imported.Entries[3]
        );
        Assert.Equal(ShopInHand.Day("2026-06-01"), Assert.IsType<ToolMeasured>(imported.Entries[1]).On);
        RoundTrip.Through(shop, Today);
    }

    [Fact]
    public void A_tool_in_use_whose_scrap_size_lies_the_wrong_way_is_refused()
    {
        CsvFile table = RoundTrip.File("t.csv", "tool,form,size_mm,scrap_mm,made_mm\nR1,drift,13.4,14.8,14\n");
        Assert.Equal(
            "line 2: scrap_mm: gauge mark width wears smaller, so its scrap size 14.8 mm must lie under the starting size 14 mm",
            string.Join('\n', Brought(table).Faults)
        );
    }

    private static Brought Brought(CsvFile table) =>
        Tables.Read(HandMadeTable.Read(table).Table!, Shop.Empty, LengthUnit.Mm, Today, new());

    private static CsvImported Import(params (string Name, string Text)[] files) =>
        CsvSet.Import(files.Select(file => RoundTrip.File(file.Name, file.Text)), Today);
}
