using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of an eye.</summary>
public static class EyeFields
{
    private const string Tolerance =
        "still takes the handle; all four of least and greatest, or none. A grade such as IT14 in the first does for all";

    private const string Taper =
        "mm of size a mm of depth, over the whole width and not per side; 0.03 is about 1.7 degrees; 0 where parallel";

    private static readonly EyeDescribed Blank = new(
        "",
        SectionKind.Other,
        Length.Zero,
        Length.Zero,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null
    );

    /// <summary>The table.</summary>
    public static FieldTable<EyeDescribed> Table { get; } =
        new FieldTable<EyeDescribed>("eyes.csv", Blank) { Check = Check, Rule = Rule }
            .Key("eye", Name, e => e.Name, (e, v) => e with { Name = v! })
            .Means("what you call the eye: a letter or a few", "Name")
            .Needs("section", Word(SectionKinds.Words), e => e.Section, (e, v) => e with { Section = v!.Value })
            .Means("its shape", "Section")
            .Needs("length_mm", Size, e => e.Length, (e, v) => e with { Length = v!.Value })
            .Means("eye length, cold, at the face: along the head. Of a round, its diameter", "Length")
            .Needs("width_mm", Size, e => e.Width, (e, v) => e with { Width = v!.Value })
            .Means("eye width, cold, at its widest. Of a round, its diameter again", "Width")
            .Maybe("nose_radius_mm", Distance, e => e.NoseRadius, (e, v) => e with { NoseRadius = v })
            .Means("nose radius of a teardrop, edge radius of a rectangle; empty for the others", "Nose or edge r")
            .Maybe("depth_mm", Size, e => e.Depth, (e, v) => e with { Depth = v })
            .Means("how deep it goes through the head", "Depth")
            .Maybe("taper_length", FieldKinds.Taper, e => e.TaperLength, (e, v) => e with { TaperLength = v })
            .Means(Taper, "Taper length")
            .Maybe("taper_width", FieldKinds.Taper, e => e.TaperWidth, (e, v) => e with { TaperWidth = v })
            .Means(Taper, "Taper width")
            .Maybe("fit", Word(EyeDescribed.FitWords), e => e.Fit, (e, v) => e with { Fit = v })
            .Means("how the handle sits, driven from both faces or tapering one way", "Fit")
            .Maybe("driven", Word(EyeDescribed.DrivenWords), e => e.Driven, (e, v) => e with { Driven = v })
            .Means("how the drift is driven", "Driven from")
            .Maybe("least_length_mm", Distance, e => e.LeastLength, (e, v) => e with { LeastLength = v })
            .Means($"the least eye length that {Tolerance}", "Least length")
            .Maybe("greatest_length_mm", Size, e => e.GreatestLength, (e, v) => e with { GreatestLength = v })
            .Means($"the greatest eye length that {Tolerance}", "Greatest length")
            .Maybe("least_width_mm", Distance, e => e.LeastWidth, (e, v) => e with { LeastWidth = v })
            .Means($"the least eye width that {Tolerance}", "Least width")
            .Maybe("greatest_width_mm", Size, e => e.GreatestWidth, (e, v) => e with { GreatestWidth = v })
            .Means($"the greatest eye width that {Tolerance}", "Greatest width")
            .Maybe("handle", Text, e => e.Handle, (e, v) => e with { Handle = v })
            .Means("the handle that goes in, as it is called here; empty for none yet", "Handle", Kept.Handles);

    private static FieldFault? Rule(EyeDescribed eye) =>
        eye.LeastLength > eye.GreatestLength
            ? new("least_length_mm", $"the least {eye.LeastLength} lies over the greatest {eye.GreatestLength}")
        : eye.LeastWidth > eye.GreatestWidth
            ? new("least_width_mm", $"the least {eye.LeastWidth} lies over the greatest {eye.GreatestWidth}")
        : null;

    private static FieldFault? Check(EyeDescribed eye)
    {
        if (Section.FaultOf(eye.Section, eye.Length, eye.Width, eye.NoseRadius ?? Length.Zero) is { } fault)
        {
            return new("length_mm", fault);
        }

        if (eye.Section == SectionKind.Round && eye.Length != eye.Width)
        {
            return new("width_mm", "a round eye has one size: its length and its width are the same");
        }

        (string Field, Length? Size)[] tolerance =
        [
            ("least_length_mm", eye.LeastLength),
            ("greatest_length_mm", eye.GreatestLength),
            ("least_width_mm", eye.LeastWidth),
            ("greatest_width_mm", eye.GreatestWidth),
        ];
        if (tolerance.All(each => each.Size is null))
        {
            return null;
        }

        if (Array.Find(tolerance, each => each.Size is null) is { Field: { } missing })
        {
            return new(
                missing,
                "Give all four tolerances (least and greatest length and width), or leave all four empty; or a grade such as IT14."
            );
        }

        return EyeTolerance.TryMake(
            eye.LeastLength!.Value,
            eye.GreatestLength!.Value,
            eye.LeastWidth!.Value,
            eye.GreatestWidth!.Value,
            out _,
            out string? refusal
        )
            ? null
            : new("least_length_mm", refusal);
    }
}
