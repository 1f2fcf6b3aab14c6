using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>A station of a body as it is written down.</summary>
/// <param name="Part">The part of the tool.</param>
/// <param name="FromMark">How far from the shank mark.</param>
/// <param name="Section">The shape there.</param>
/// <param name="A">The diameter, or the long way.</param>
/// <param name="B">The greatest width; null for a round.</param>
/// <param name="Radius">The edge or nose radius; null for none.</param>
/// <param name="LargeRadius">The large radius of a teardrop, which says its width once more; null where left out.</param>
public sealed record StationSaid(
    BodyPart Part,
    Length FromMark,
    SectionKind Section,
    Length A,
    Length? B,
    Length? Radius,
    Length? LargeRadius
)
{
    /// <summary>A station as it is written down.</summary>
    /// <param name="station">The station.</param>
    /// <returns>What is written.</returns>
    public static StationSaid Of(Station station)
    {
        Section section = station.Section;
        StationSaid round = new(station.Part, station.FromMark, section.Kind, section.EyeLength, null, null, null);
        return section switch
        {
            RectangleSection r => round with { B = r.B, Radius = r.EdgeRadius },
            OvalSection o => round with { B = o.B },
            TeardropSection t => round with { B = t.EyeWidth, Radius = t.NoseRadius, LargeRadius = t.LargeRadius },
            _ => round,
        };
    }

    /// <summary>The station.</summary>
    /// <param name="fault">Why there is none; null where there is one.</param>
    /// <returns>The station; null where its section cannot be.</returns>
    public Station? Made(out FieldFault? fault)
    {
        Length? width = B ?? LargeRadius + LargeRadius;
        fault =
            Section != SectionKind.Round && width is null
                ? new("b_mm", $"a {SectionKinds.Words.Word(Section)} has a width as well; write it here")
            : LargeRadius is { } large && (width!.Value - large - large).Abs().Nanometres > 1
                ? new("large_radius_mm", $"twice {large} is not the width {width}; leave one of them empty")
            : null;
        if (fault is not null)
        {
            return null;
        }

        if (
            Sections.Section.TryMake(
                Section,
                A,
                width ?? A,
                Radius ?? Length.Zero,
                out Section? made,
                out string? refusal
            )
        )
        {
            return new(Part, FromMark, made);
        }

        fault = new("section", refusal);
        return null;
    }
}

/// <summary>The fields of a station of a tool's body.</summary>
public static class StationFields
{
    private static readonly StationSaid Blank = new(
        BodyPart.Body,
        Length.Zero,
        SectionKind.Round,
        Length.Zero,
        null,
        null,
        null
    );

    /// <summary>A station of a body alone, as <c>stock</c> reads it.</summary>
    public static FieldTable<StationSaid> Alone { get; } =
        new FieldTable<StationSaid>("stations.csv", Blank)
            .Needs("from_mark_mm", Distance, s => s.FromMark, (s, v) => s with { FromMark = v!.Value })
            .Means("how far from the shank mark towards the nose", "From the mark")
            .Needs("section", Word(SectionKinds.Words), s => s.Section, (s, v) => s with { Section = v!.Value })
            .Means("its shape", "Section")
            .Needs("a_mm", Size, s => s.A, (s, v) => s with { A = v!.Value })
            .Means("its diameter, or its long way", "Size")
            .Maybe("b_mm", Size, s => s.B, (s, v) => s with { B = v })
            .Means("its greatest width; empty for a round", "Width")
            .Maybe("radius_mm", Distance, s => s.Radius, (s, v) => s with { Radius = v })
            .Means("nose radius of a teardrop, edge radius of a rectangle; empty for the others", "Radius")
            .Maybe("large_radius_mm", Size, s => s.LargeRadius, (s, v) => s with { LargeRadius = v })
            .Means("the large radius of a teardrop, half of its width", "Large radius");

    /// <summary>The table.</summary>
    public static FieldTable<OfTool<StationSaid>> Table { get; } =
        new FieldTable<OfTool<StationSaid>>("stations.csv", new(default, Blank))
            .Key("tool", Mark, s => s.Tool, (s, v) => s with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs(
                "part",
                Word(BodyParts.Words),
                s => s.What.Part,
                (s, v) => s with { What = s.What with { Part = v!.Value } }
            )
            .Means("the part of a tool", "Part")
            .Of(Alone, s => s.What, (s, v) => s with { What = v });
}
