using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Tools;

/// <summary>What tools of one place in the series for an eye are made like.</summary>
/// <param name="Eye">The eye's name.</param>
/// <param name="Place">The place.</param>
/// <param name="Form">The form of tool.</param>
/// <param name="Section">The shape of the section.</param>
/// <param name="Length">The long way of the section as made, null where not set.</param>
/// <param name="Width">The short way as made, null where not set.</param>
/// <param name="Radius">The edge or nose radius as made, null where not set.</param>
/// <param name="TaperLength">Taper of the length, mm per mm over the whole width, null where not set.</param>
/// <param name="TaperWidth">Taper of the width, mm per mm over the whole width, null where not set.</param>
/// <param name="GuessHeats">How many heats one usually lasts, null where nobody said.</param>
/// <param name="Steel">The usual steel, null where nobody said.</param>
/// <param name="Treated">Whether it is hardened, null where nobody said.</param>
/// <param name="ReadyDays">Days from the forging to the first use, zero or more, null where nobody said.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record Series(
    string Eye,
    Place Place,
    ToolForm Form,
    SectionKind Section,
    Length? Length,
    Length? Width,
    Length? Radius,
    double? TaperLength,
    double? TaperWidth,
    double? GuessHeats,
    string? Steel,
    bool? Treated,
    int? ReadyDays,
    string? Note
)
{
    /// <summary>The size that such a tool is made to at a gauge mark.</summary>
    /// <param name="measures">What is measured there.</param>
    /// <returns>The size; null where the series says none.</returns>
    public Length? MadeSize(Measures? measures) =>
        measures switch
        {
            // the edge of a slitter or punch lies along the slit: its width is the long way of its section
            Measures.Width or Measures.Edge when Form.OpensASlit => Length ?? Width,
            Measures.Width => Width ?? (Section == SectionKind.Round ? Length : null),
            Measures.Length => Length,
            _ => null,
        };

    /// <summary>The section that such a tool is made to at its mark.</summary>
    /// <returns>The section; null where the series says too little of it.</returns>
    public Section? AtMark() =>
        (Length ?? Width) is { } a
        && Sections.Section.TryMake(
            Section,
            a,
            Width ?? a,
            Radius ?? Measure.Length.Zero,
            out Section? section,
            out string? _
        )
            ? section
            : null;
}
