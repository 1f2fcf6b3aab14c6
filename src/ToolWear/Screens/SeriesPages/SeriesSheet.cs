using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.SeriesPages;

/// <summary>A place of a series that is being changed or added. It is recorded with the series, not by itself.</summary>
public sealed class SeriesSheet : GuidedEntry
{
    private const int SectionAsked = 0;
    private const int Long = 1;
    private const int Wide = 2;
    private const int RadiusAsked = 3;
    private const int TaperLong = 4;
    private const int TaperWide = 5;
    private const int SteelAsked = 6;
    private const int Lasts = 7;
    private const int Hardened = 8;
    private const int Days = 9;
    private const int FormAsked = 10;
    private const int PlaceAsked = 11;
    private const string Yes = "yes";
    private const string No = "no";

    private readonly string eye;
    private readonly Series? before;

    private SeriesSheet(string eye, Series? before)
        : base(new GuidedLine(before is null ? Questions : Questions[..FormAsked])) =>
        (this.eye, this.before) = (eye, before);

    /// <inheritdoc />
    public override string Heading =>
        before is null
            ? Words.NewPlaceHeading(eye)
            : Words.ChangePlaceHeading(Words.SeriesName(eye, before.Place, before.Form.Name));

    /// <summary>The place as answered; null before.</summary>
    public Series? Series { get; private set; }

    /// <summary>Another place of the series.</summary>
    /// <param name="eye">The eye's name.</param>
    /// <returns>The sheet.</returns>
    public static SeriesSheet New(string eye)
    {
        SeriesSheet sheet = new(eye, null);
        sheet.Guided.Offer(FormAsked, ToolForms.Drift);
        return sheet;
    }

    /// <summary>A change of a place.</summary>
    /// <param name="units">The unit of sizes offered.</param>
    /// <param name="series">The place as it is.</param>
    /// <returns>The sheet.</returns>
    public static SeriesSheet Change(LengthUnit units, Series series)
    {
        SeriesSheet sheet = new(series.Eye, series);
        sheet.Guided.Offer(SectionAsked, SectionKinds.Words.Word(series.Section));
        sheet.Guided.Offer(Long, AnswersRead.Offer(series.Length, units));
        sheet.Guided.Offer(Wide, AnswersRead.Offer(series.Width, units));
        sheet.Guided.Offer(RadiusAsked, AnswersRead.Offer(series.Radius, units));
        sheet.Guided.Offer(TaperLong, AnswersRead.Offer(series.TaperLength));
        sheet.Guided.Offer(TaperWide, AnswersRead.Offer(series.TaperWidth));
        sheet.Guided.Offer(SteelAsked, series.Steel ?? "");
        sheet.Guided.Offer(Lasts, AnswersRead.Offer(series.GuessHeats));
        sheet.Guided.Offer(
            Hardened,
            series.Treated switch
            {
                true => Yes,
                false => No,
                _ => "",
            }
        );
        sheet.Guided.Offer(Days, series.ReadyDays?.ToString(CultureInfo.InvariantCulture) ?? "");
        return sheet;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        (ToolForm form, Place place) = before is null ? Where(read) : (before.Form, before.Place);
        Series series = new(
            eye,
            place,
            form,
            read.Word(SectionAsked, SectionKinds.Words) ?? SectionKind.Other,
            read.Size(Long),
            read.Size(Wide),
            read.Size(RadiusAsked),
            read.Taper(TaperLong),
            read.Taper(TaperWide),
            (double?)read.Number(Lasts, 0.5m, 100_000),
            read.Text(SteelAsked),
            read.Text(Hardened) is { } hardened ? hardened == Yes : null,
            (int?)read.Number(Days, 0, 3650),
            before?.Note
        );
        if (
            series.Section != SectionKind.Other
            && (series.Length ?? series.Width) is { } a
            && !Section.TryMake(
                series.Section,
                a,
                series.Width ?? a,
                series.Radius ?? Length.Zero,
                out Section? _,
                out string? fault
            )
        )
        {
            read.Refuse(Long, fault);
        }

        Series = read.Refusal is null ? series : null;
        return Series is not null;
    }

    private static (ToolForm Form, Place Place) Where(AnswersRead read)
    {
        if (!ToolForms.TryFind(read.Text(FormAsked) ?? "", out ToolForm form, out string why))
        {
            read.Refuse(FormAsked, why);
        }

        return (form, read.Word(PlaceAsked, Places.Words) ?? Place.None);
    }

    private static ImmutableArray<Question> Questions { get; } =
    [
        new("Section", Words.AskSection, [.. SectionKinds.Words.All]),
        new("Length", Words.AskPlaceLength, []),
        new("Width", Words.AskPlaceWidth, []),
        new("Radius", Words.AskRadius, []),
        new("Taper length", Words.AskTaper, []),
        new("Taper width", Words.AskTaper, []),
        new("Steel", Words.AskPlaceSteel, []),
        new("Usually lasts", Words.AskLasts, []),
        new("Hardened", Words.AskHardened, [Yes, No]),
        new("Days till ready", Words.AskDays, []),
        new("Form", Words.AskForm, [.. ToolForms.All.Select(form => form.Name)]),
        new("Place", Words.AskPlace, Places.Words.All),
    ];
}
