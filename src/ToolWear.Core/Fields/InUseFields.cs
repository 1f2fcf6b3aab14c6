using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>A tool that a shop already has, in one row.</summary>
/// <param name="Tool">The tool without its gauge mark.</param>
/// <param name="Gauge">The gauge mark's name; null for the one that tools of its form usually have first.</param>
/// <param name="Wears">The main direction of wear; null for the usual.</param>
/// <param name="Size">The size now.</param>
/// <param name="Scrap">The size at which it is scrapped, null where none is set.</param>
/// <param name="Made">The size at which it was made, null where not known.</param>
/// <param name="On">The day of the size, null for today.</param>
public sealed record InUse(
    Tool Tool,
    string? Gauge,
    Wears? Wears,
    Length Size,
    Length? Scrap,
    Length? Made,
    DateOnly? On
)
{
    /// <summary>Its gauge mark.</summary>
    /// <returns>The gauge mark; what was not said of it is usual for the form.</returns>
    public GaugeMark GaugeMark()
    {
        string name = Gauge ?? Tool.Form.UsualGaugeMarks[0].Name;
        UsualGaugeMark? usual = Tool.Form.UsualGaugeMarks.FirstOrDefault(each => each.Name == name);
        Wears wears = Wears ?? (usual ?? Tool.Form.UsualGaugeMarks[0]).Wears;
        return new(
            name,
            wears,
            usual?.Measures,
            null,
            Made,
            wears == Tools.Wears.Smaller ? Scrap : null,
            wears == Tools.Wears.Larger ? Scrap : null,
            null
        );
    }

    /// <summary>The tool with its gauge mark, in use.</summary>
    /// <returns>The tool.</returns>
    public Tool Whole() =>
        Tool with
        {
            Start = new(
                StartedAs.InUse,
                Tool.Start.HeatsBefore,
                Tool.Start.How ?? (Tool.Start.HeatsBefore is null ? HeatsBeforeHow.Unknown : null)
            ),
            GaugeMarks = [GaugeMark()],
        };

    /// <summary>Adding it by one size: as made where it is new, else its first reading where there is one.</summary>
    /// <param name="resolution">The step of the size as typed, null for the usual.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>What is recorded.</returns>
    public ImmutableArray<LedgerEntry> Added(Length? resolution, DateOnly today)
    {
        ToolAdded added = new(Tool with { GaugeMarks = [AsAdded()] });
        return Size > Length.Zero && Tool.Start.As == StartedAs.InUse
            ? [added, Reading(today) with { Resolution = resolution }]
            : [added];
    }

    /// <summary>Its gauge mark where its one size is that as made, of a new tool.</summary>
    internal GaugeMark AsAdded() =>
        GaugeMark() with
        {
            Start = Size > Length.Zero && Tool.Start.As == StartedAs.New ? Size : null,
        };

    /// <summary>The reading of its size.</summary>
    /// <param name="today">The shop's day.</param>
    /// <returns>The reading.</returns>
    public ToolMeasured Reading(DateOnly today) =>
        new(Tool.Mark, GaugeMark().Name, On ?? today, null, Size, null, null, null);
}

/// <summary>The fields of a tool that a shop already has.</summary>
public static class InUseFields
{
    /// <summary>The table.</summary>
    public static FieldTable<InUse> Table { get; } =
        new FieldTable<InUse>("tools-in-use.csv", new(ToolFields.Blank, null, null, Length.Zero, null, null, null))
            .Of(ToolFields.First, t => t.Tool, (t, v) => t with { Tool = v })
            .Maybe("gauge", Name, t => t.Gauge, (t, v) => t with { Gauge = v })
            .Means("the gauge mark's name")
            .Called("gauge mark")
            .Maybe("wears", Word(GaugeMark.WearsWords), t => t.Wears, (t, v) => t with { Wears = v })
            .Means("the main direction of wear")
            .Needs("size_mm", Size, t => t.Size, (t, v) => t with { Size = v!.Value })
            .Means("the size that the caliper read, or the size now")
            .Called("size now", "now", "current size", "reading", "measured")
            .Maybe("scrap_mm", Size, t => t.Scrap, (t, v) => t with { Scrap = v })
            .Means("the size at which a tool in use is scrapped")
            .Called(
                "scrap size",
                "scrap under",
                "scrap at",
                "scrap over",
                "scrap below",
                "limit",
                "wear limit",
                "min size",
                "minimum"
            )
            .Maybe("made_mm", Size, t => t.Made, (t, v) => t with { Made = v })
            .Means("the size at which a tool in use was made, where known")
            .Called("made size", "size made", "size when made", "size new", "new size", "start", "start size")
            .Of(ToolFields.Start, t => t.Tool, (t, v) => t with { Tool = v })
            .Maybe("on", PastDay, t => t.On, (t, v) => t with { On = v })
            .Means("the day, as year-month-day")
            .Called("day", "date", "measured on", "read on")
            .Of(ToolFields.Last, t => t.Tool, (t, v) => t with { Tool = v });

    /// <summary>What a form asks of a tool that is added.</summary>
    public static FieldTable<InUse> Asked { get; } =
        new FieldTable<InUse>("", Table.Blank)
        {
            All =
            [
                .. ToolFields
                    .Table.All.Where(field =>
                        field.Name is "tool" or "form" or "eye" or "place" or "steel" or "started_as"
                    )
                    .Select(field =>
                        // the mark is asked first, and what another tool has is no word to complete to
                        field.Within<InUse>(t => t.Tool, (t, v) => t with { Tool = v }) with
                        {
                            IsKey = false,
                            Like = Kept.Nothing,
                        }
                    ),
            ],
        }
            .Maybe(
                "heats_before",
                HeatsInHalves,
                t => t.Tool.Start.HeatsBefore,
                (t, v) =>
                    t with
                    {
                        Tool = t.Tool with
                        {
                            Start =
                                v is null && t.Tool.Start.As == StartedAs.New
                                    ? ToolStart.New
                                    : new(
                                        t.Tool.Start.As,
                                        v,
                                        v is null ? HeatsBeforeHow.Unknown : HeatsBeforeHow.Estimated
                                    ),
                        },
                    }
            )
            .Means(ToolFields.Table["heats_before"].Means, ToolFields.Table["heats_before"].Asked)
            .Maybe(
                "size_mm",
                Size,
                t => t.Size > Length.Zero ? t.Size : null,
                (t, v) => t with { Size = v ?? Length.Zero }
            )
            .Means("the size at its gauge mark now (of a new tool, as made); empty where not measured yet", "Size now")
            .Maybe("scrap_mm", Size, t => t.Scrap, (t, v) => t with { Scrap = v })
            .Means(
                "the size at which it is done: under it for a drift, over it for a fuller's flat; empty where none is set",
                "Scrap size"
            ) with
        {
            Check = t =>
                t.Tool.Start.Refusal() is { } start ? new("heats_before", start)
                : t.AsAdded().Refusal() is { } scrap ? new("scrap_mm", scrap)
                : null,
        };
}
