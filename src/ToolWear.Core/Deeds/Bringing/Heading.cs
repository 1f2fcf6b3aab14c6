using System.Text.RegularExpressions;
using ToolWear.Core.Fields;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Deeds.Bringing;

/// <summary>A heading as a person writes it: "Scrap size (mm)", "scrap_mm", "SCRAP".</summary>
/// <param name="Typed">As it stands there.</param>
/// <param name="Bare">Its letters and digits without the unit, small.</param>
/// <param name="Unit">The unit it names; null for none.</param>
internal sealed partial record Heading(string Typed, string Bare, LengthUnit? Unit)
{
    /// <summary>Reads a heading.</summary>
    public static Heading Of(string typed)
    {
        Match unit = UnitBehind().Match(typed);
        return unit.Success
            ? new(
                typed.Trim(),
                FreeText.Bare(typed[..unit.Index]),
                unit.Groups["mm"].Success ? LengthUnit.Mm : LengthUnit.Inch
            )
            : new(typed.Trim(), FreeText.Bare(typed), null);
    }

    /// <summary>Whether it names a field.</summary>
    public bool Names<T>(Field<T> field) =>
        Bare.Length > 0
        && field
            .Called.Add(field.Name)
            .Add(field.Asked)
            .Add(Of(field.Name).Bare)
            .Any(name => Bare == FreeText.Bare(name));

    [GeneratedRegex(
        """(?<=\w.*)[\s_,(\[/]+(?:(?<mm>mm)|in|inch|inches|")\s*[)\]]?\s*$""",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex UnitBehind();
}
