using System.Collections.Immutable;
using ToolWear.Core.Fields;
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
        InUse said = Said(ToolStart.New, 15);
        ToolAdded added = Assert.IsType<ToolAdded>(Assert.Single(said.Added(Story.Mm(0.4), Story.Day(1))));
        GaugeMark gauge = Assert.Single(added.Tool.GaugeMarks);
        Assert.Equal(
            ("width", Story.Mm(16), Story.Mm(15), null),
            (gauge.Name, gauge.Start, gauge.Least, gauge.Greatest)
        );
        Assert.Null(InUseFields.Asked.Check(said));
    }

    [Fact]
    public void A_tool_in_use_is_read_today_as_finely_as_it_was_typed_and_its_start_is_not_known()
    {
        ImmutableArray<LedgerEntry> entries = Said(ToolStart.Unknown, 15).Added(Story.Mm(0.4), Story.Day(1));
        Assert.Null(Assert.Single(((ToolAdded)entries[0]).Tool.GaugeMarks).Start);
        Assert.Equal(
            new ToolMeasured(Story.Mark("R1"), "width", Story.Day(1), null, Story.Mm(16), Story.Mm(0.4), null, null),
            entries[1]
        );
        Assert.Equal(2, entries.Length);
    }

    [Fact]
    public void A_scrap_size_on_the_wrong_side_is_refused()
    {
        FieldFault fault = InUseFields.Asked.Check(Said(ToolStart.New, 17))!;
        Assert.Equal("scrap_mm", fault.Field);
        Assert.Contains("must lie under", fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Heats_before_are_an_estimate_of_a_tool_in_use_and_cannot_be_of_a_new_one()
    {
        Assert.Equal(ToolStart.New, Read("new", "").Tool.Start);
        Assert.Equal(ToolStart.Unknown, Read("in use", "").Tool.Start);
        InUse estimated = Read("in use", "20");
        Assert.Equal(new(StartedAs.InUse, Heats.Of(20), HeatsBeforeHow.Estimated), estimated.Tool.Start);
        Assert.Null(InUseFields.Asked.Check(estimated));
        Assert.Equal("heats_before", InUseFields.Asked.Check(Read("new", "20"))!.Field);
    }

    private static InUse Read(string started, string before) =>
        InUseFields.Asked.Read(
            InUseFields.Asked.Blank,
            field =>
                field.Name switch
                {
                    "started_as" => started,
                    "heats_before" => before,
                    _ => null,
                },
            new(LengthUnit.Mm, Story.Day(1)),
            fault => Assert.Fail(fault.Sentence)
        );

    private static InUse Said(ToolStart start, double scrap) =>
        InUseFields.Asked.Blank with
        {
            Tool = InUseFields.Asked.Blank.Tool with
            {
                Mark = Story.Mark("R1"),
                Form = Story.Form("drift"),
                Eye = "H",
                Place = Place.Rough,
                Start = start,
            },
            Size = Story.Mm(16),
            Scrap = Story.Mm(scrap),
        };
}
