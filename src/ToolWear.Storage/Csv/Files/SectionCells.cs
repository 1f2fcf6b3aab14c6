using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Storage.Csv.Files;

/// <summary>A section as the cells section, a_mm, b_mm, radius_mm, large_radius_mm.</summary>
internal static class SectionCells
{
    /// <summary>The five cells of a section; a teardrop has its width and, said twice, its large radius.</summary>
    /// <param name="section">The section.</param>
    /// <returns>The cells.</returns>
    public static IReadOnlyList<CsvCell> Of(Section section)
    {
        (Length? b, Length? radius, Length? largeRadius) = section switch
        {
            RectangleSection r => (r.B, r.EdgeRadius, (Length?)null),
            OvalSection o => (o.B, null, null),
            TeardropSection t => (t.EyeWidth, t.NoseRadius, t.LargeRadius),
            _ => ((Length?)null, (Length?)null, (Length?)null),
        };
        return
        [
            CsvCell.Word(SectionKinds.Words, (SectionKind?)section.Kind),
            CsvCell.Mm(section.EyeLength),
            CsvCell.Mm(b),
            CsvCell.Mm(radius),
            CsvCell.Mm(largeRadius),
        ];
    }

    /// <summary>Reads a section; a teardrop's width is b_mm or twice large_radius_mm.</summary>
    /// <param name="row">The row.</param>
    /// <returns>The section, null where the row says none that can be.</returns>
    public static Section? Read(CsvRow row)
    {
        SectionKind kind = row.NeedWord("section", SectionKinds.Words);
        Length a = row.NeedSize("a_mm");
        Length? largeRadius = row.Size("large_radius_mm");
        Length? width = row.Size("b_mm") ?? largeRadius + largeRadius;
        Length radius = row.Distance("radius_mm") ?? Length.Zero;
        if (row.IsFaulty)
        {
            return null;
        }

        if (kind != SectionKind.Round && width is null)
        {
            row.Fault("b_mm", $"a {SectionKinds.Words.Word(kind)} has a width as well; write it here");
            return null;
        }

        if (largeRadius is { } large && (width!.Value - large - large).Abs().Nanometres > 1)
        {
            row.Fault("large_radius_mm", $"twice {large} is not the width {width}; leave one of them empty");
            return null;
        }

        if (!Section.TryMake(kind, a, width ?? a, radius, out Section? section, out string? refusal))
        {
            row.Fault("section", refusal);
        }

        return section;
    }
}
