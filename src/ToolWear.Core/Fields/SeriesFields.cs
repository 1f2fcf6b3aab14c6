using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of a place in the series for an eye.</summary>
public static class SeriesFields
{
    private const string Tapers = "mm of size a mm of depth, over the whole width and not per side; 0 where parallel";

    private static readonly Series Blank = new(
        "",
        Place.None,
        ToolForms.All[^1],
        SectionKind.Other,
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
    public static FieldTable<SeriesDescribed> Table { get; } =
        new FieldTable<SeriesDescribed>("series.csv", new(Blank)) { Check = Check }.Of(
            new FieldTable<Series>("series.csv", Blank)
                .Key("eye", Name, s => s.Eye, (s, v) => s with { Eye = v! })
                .Key("place", InSeries, s => OrNone(s.Place), (s, v) => s with { Place = v ?? Place.None }, Need.Column)
                .Means("its place in the series", "Place")
                .Key("form", Form, s => s.Form, (s, v) => s with { Form = v! })
                .Means("what form of tool it is", "Form")
                .Needs("section", Word(SectionKinds.Words), s => s.Section, (s, v) => s with { Section = v!.Value })
                .Means("its shape", "Section")
                .Maybe("length_mm", Size, s => s.Length, (s, v) => s with { Length = v })
                .Means("the long way at the mark, cold. Of a slitter or punch, the slit it opens", "Length")
                .Maybe("width_mm", Size, s => s.Width, (s, v) => s with { Width = v })
                .Means("the short way at the mark, cold. Of a slitter or punch, how thick it is", "Width")
                .Maybe("radius_mm", Distance, s => s.Radius, (s, v) => s with { Radius = v })
                .Means("nose radius of a teardrop, edge radius of a rectangle; empty for the others", "Radius")
                .Maybe("taper_length", Taper, s => s.TaperLength, (s, v) => s with { TaperLength = v })
                .Means(Tapers, "Taper length")
                .Maybe("taper_width", Taper, s => s.TaperWidth, (s, v) => s with { TaperWidth = v })
                .Means(Tapers, "Taper width")
                .Maybe("guess_heats", GuessHeats, s => s.GuessHeats, (s, v) => s with { GuessHeats = v })
                .Means("how many heats one of these usually lasts, roughly; empty where nobody knows", "Usually lasts")
                .Maybe("steel", Text, s => s.Steel, (s, v) => s with { Steel = v })
                .Means("its steel, by number where it has one", "Steel")
                .Maybe("treated", YesNo, s => s.Treated, (s, v) => s with { Treated = v })
                .Means("whether it is hardened", "Hardened")
                .Maybe("ready_days", Whole(0, 3650), s => s.ReadyDays, (s, v) => s with { ReadyDays = v })
                .Means(
                    "days from the forging to the first use: 0 for one that is used the same day",
                    "Days till ready",
                    unit: "days"
                )
                .Maybe("note", Note, s => s.Note, (s, v) => s with { Note = v }),
            described => described.Series,
            (described, series) => new(series)
        );

    /// <summary>A place as a field holds it: no place is not known.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The place; null for none.</returns>
    internal static Place? OrNone(Place place) => place == Place.None ? null : place;

    private static FieldFault? Check(SeriesDescribed described)
    {
        Series series = described.Series;
        return
            (series.Length ?? series.Width) is { } a
            && Section.FaultOf(series.Section, a, series.Width ?? a, series.Radius ?? Length.Zero) is { } fault
            ? new("length_mm", fault)
            : null;
    }
}
