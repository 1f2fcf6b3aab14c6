using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tests.Shops;
using ToolWear.Core.Tools;
using Xunit;

namespace ToolWear.Core.Tests.Deeds;

/// <summary>A tool entered by one size: as made where it is new, as its first reading where it is in use.</summary>
public sealed class AddingToolTests
{
    [Fact]
    public void A_new_tool_starts_at_its_size_and_has_no_reading()
    {
        AddingTool deed = Add(ToolStart.New, Story.Mm(15));
        ToolAdded added = Assert.IsType<ToolAdded>(Assert.Single(deed.Entries));
        GaugeMark gauge = Assert.Single(added.Tool.GaugeMarks);
        Assert.Equal(
            ("width", Story.Mm(16), Story.Mm(15), null),
            (gauge.Name, gauge.Start, gauge.Least, gauge.Greatest)
        );
        Assert.Null(deed.ScrapRefusal);
    }

    [Fact]
    public void A_tool_in_use_is_read_today_as_finely_as_it_was_typed_and_its_start_is_not_known()
    {
        AddingTool deed = Add(ToolStart.Unknown, Story.Mm(15));
        Assert.Null(Assert.Single(((ToolAdded)deed.Entries[0]).Tool.GaugeMarks).Start);
        Assert.Equal(
            new ToolMeasured(Story.Mark("R1"), "width", Story.Day(1), null, Story.Mm(16), Story.Mm(0.4), null, null),
            deed.Entries[1]
        );
        Assert.Equal(2, deed.Entries.Length);
    }

    [Fact]
    public void A_scrap_size_on_the_wrong_side_is_refused() =>
        Assert.Contains("must lie under", Add(ToolStart.New, Story.Mm(17)).ScrapRefusal, StringComparison.Ordinal);

    private static AddingTool Add(ToolStart start, Length scrap) =>
        AddingTool.Of(
            Story.Mark("R1"),
            Story.Form("drift"),
            "H",
            Place.Rough,
            null,
            start,
            new TypedSize(Story.Mm(16), Story.Mm(0.4)),
            scrap,
            Story.Day(1)
        );
}
