using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Deeds;

/// <summary>Adding a tool by one size: that of the gauge mark which tools of its form usually have first.</summary>
/// <param name="Entries">What is recorded: the tool, and of one in use the reading of its size.</param>
/// <param name="ScrapRefusal">Why the scrap size cannot be; null where it can.</param>
public sealed record AddingTool(ImmutableArray<LedgerEntry> Entries, string? ScrapRefusal)
{
    /// <summary>A tool as it was said.</summary>
    /// <param name="mark">Its mark.</param>
    /// <param name="form">Its form.</param>
    /// <param name="eye">Its eye; null where it serves every eye.</param>
    /// <param name="place">Its place in the series.</param>
    /// <param name="steel">Its steel; null where nobody knows.</param>
    /// <param name="start">How it starts.</param>
    /// <param name="size">Its size now, of a new tool as made; null where not measured yet.</param>
    /// <param name="scrap">The size at which it is done; null where none is set.</param>
    /// <param name="on">The day.</param>
    /// <returns>The deed.</returns>
    public static AddingTool Of(
        ToolMark mark,
        ToolForm form,
        string? eye,
        Place place,
        string? steel,
        ToolStart start,
        TypedSize? size,
        Length? scrap,
        DateOnly on
    )
    {
        InUse said = new(
            ToolFields.Blank with
            {
                Mark = mark,
                Form = form,
                Eye = eye,
                Place = place,
                Steel = steel,
                Start = start,
            },
            null,
            null,
            size?.Length ?? Length.Zero,
            scrap,
            start.As == StartedAs.New ? size?.Length : null,
            on
        );
        GaugeMark gauge = said.GaugeMark();
        ToolAdded added = new(said.Tool with { GaugeMarks = [gauge] });
        return new(
            start.As == StartedAs.InUse && size is { } now
                ? [added, said.Reading(on) with { Resolution = now.Resolution }]
                : [added],
            gauge.Refusal()
        );
    }
}
