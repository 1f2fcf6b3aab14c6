using System.Collections.Immutable;
using System.Text;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;

namespace ToolWear.Results;

/// <summary>What a card says of the eye, the slit, and of making the tool into another, from the card's cells.</summary>
internal static class EyeText
{
    // the rest is a matter for make-into
    private const int MostOffers = 4;

    /// <summary>Writes what it makes of its eye, at most 80 columns wide.</summary>
    /// <param name="card">The card.</param>
    /// <returns>Lines with their ends; none for a tool that neither makes an eye nor opens a slit.</returns>
    public static string Of(Card card)
    {
        StringBuilder text = new();
        if (card.Drift is { } drift)
        {
            text.Append('\n').Append(Words.EyeHeading).Append('\n');
            foreach (string line in Drift(card, drift))
            {
                text.Append(Wrapped.Of(line, "  ", "    "));
            }

            text.Append(Wrapped.Of(Words.EyeCaution, "  ", "  "));
        }

        if (card.Slit is { } slit)
        {
            text.Append('\n').Append(Words.SlitHeading).Append('\n');
            foreach (string line in Slit(card, slit))
            {
                text.Append(Wrapped.Of(line, "  ", "    "));
            }
        }

        return text.ToString();
    }

    /// <summary>The eye in the fewest words: what it is, its seat, how deep to drive it or that no depth serves.</summary>
    /// <param name="card">The card.</param>
    /// <returns>A sentence or two; empty where the tool makes no eye.</returns>
    public static string Short(Card card)
    {
        if (card.Drift is not { } drift)
        {
            return "";
        }

        Calculated eye = card.Eye;
        string unit = SizeShown.Mark(card.Units);
        string seat = eye["seat_mm"].Number is { } movement
            ? Words.SeatShort(movement, Shown(eye, "seat_mm"), Shown(eye, "seat_tolerance_mm"))
            : "";
        string depth = drift.Drive switch
        {
            DriveTo to => Words.DriveShort(
                to.DeeperMm,
                Shown(eye, "deeper_mm"),
                Shown(eye, "new_mark_mm"),
                $"{Shown(eye, "length_there_mm")} x {Shown(eye, "width_there_mm")}"
            ),
            NoDepth => " " + Words.NoDepthLine(Shown(eye, "no_depth")),
            _ => "",
        };
        string judged = eye["eye_judged"].Text is { } word ? $", {word}" : "";
        return $"{Words.EyeShort(Shown(eye, "eye_length_mm"), Shown(eye, "eye_width_mm"), unit)}{(seat.Length > 0 ? seat : judged)}{(drift.Drive is NoDepth ? "." : "")}{depth}{(drift.Drive is NoDepth ? "" : ".")}";
    }

    private static IEnumerable<string> Drift(Card card, DriftOutlook drift)
    {
        Calculated eye = card.Eye;
        string unit = SizeShown.Mark(card.Units);
        yield return Now(card);
        yield return Words.EyeFrom(drift.Eye.LengthInWords(card.Units), drift.Eye.WidthInWords(card.Units));
        if (drift is { IsInside: not null, Seat: null })
        {
            yield return Words.ToleranceLine(
                $"{Shown(eye, "least_length_mm")} to {Shown(eye, "greatest_length_mm")}",
                $"{Shown(eye, "least_width_mm")} to {Shown(eye, "greatest_width_mm")}",
                unit
            );
        }

        if (eye["waist_length_mm"].IsNumber)
        {
            yield return Words.WaistLine(Shown(eye, "waist_length_mm"), Shown(eye, "waist_width_mm"), unit);
        }

        if (eye["far_length_mm"].IsNumber)
        {
            yield return Words.FarFaceLine(Shown(eye, "far_length_mm"), Shown(eye, "far_width_mm"), unit);
        }

        foreach (string line in Driving(card, drift).Concat(Scrap(card)))
        {
            yield return line;
        }
    }

    private static string Now(Card card) =>
        Words.EyeNowLine(
            Shown(card.Eye, "eye_length_mm"),
            Shown(card.Eye, "eye_width_mm"),
            SizeShown.Mark(card.Units),
            card.Eye["eye_judged"].Text
        );

    private static IEnumerable<string> Driving(Card card, DriftOutlook drift)
    {
        Calculated eye = card.Eye;
        string unit = SizeShown.Mark(card.Units);
        if (eye["seat_mm"].Number is { } seat)
        {
            yield return Words.SeatLine(seat, Shown(eye, "seat_mm"), Shown(eye, "seat_tolerance_mm"), unit);
        }

        if (drift.Drive is DriveTo to)
        {
            string there = $"{Shown(eye, "length_there_mm")} x {Shown(eye, "width_there_mm")}";
            yield return Words.DriveLine(to.DeeperMm, Shown(eye, "deeper_mm"), Shown(eye, "new_mark_mm"), there, unit);
        }
        else if (drift.Drive is NoDepth)
        {
            yield return Words.NoDepthLine(Shown(eye, "no_depth"));
        }
    }

    private static IEnumerable<string> Scrap(Card card)
    {
        (Measures, string)[] ways = [(Measures.Length, "scrap_length_mm"), (Measures.Width, "scrap_width_mm")];
        foreach ((Measures measures, string figure) in ways)
        {
            GaugeMark? gauge = ToolNow.Gauge(card.Forecast, measures)?.History.Gauge;
            if (gauge is { ScrapSize: null } && card.Eye[figure].IsNumber)
            {
                yield return Words.ScrapProposed(gauge.Name, Shown(card.Eye, figure), SizeShown.Mark(card.Units));
            }
        }
    }

    private static IEnumerable<string> Slit(Card card, SlitOutlook slit)
    {
        Calculated figures = card.SlitFigures;
        string unit = SizeShown.Mark(card.Units);
        if (figures["slit_stretch"].IsNumber)
        {
            yield return Words.SlitLine(Shown(figures, "slit_mm"), Shown(figures, "slit_stretch"), unit);
        }

        if (figures["slit_warning"].Text is { } warning)
        {
            yield return warning;
        }

        if (slit.IsAtItsLimit)
        {
            yield return Words.SlitAtItsLimit;
        }

        yield return slit switch
        {
            { History: null } => Words.NoDressing,
            { Dressings: null } => Words.NoLeastLength,
            _ => Words.DressingsLine(
                Shown(figures, "dressings_left"),
                Shown(figures, "loss_a_dressing_mm"),
                unit,
                Shown(figures, "heats_by_length")
            ),
        };
    }

    /// <summary>Writes what it can be made into, cautions first, at most 80 columns wide but for names.</summary>
    /// <param name="card">The card.</param>
    /// <returns>Lines with their ends; none where nothing can be said.</returns>
    public static string Into(Card card)
    {
        if (card.Into is not { } into)
        {
            return "";
        }

        StringBuilder text = new("\n");
        foreach (string line in Cautions(into))
        {
            text.Append(Wrapped.Of(line));
        }

        if (into.Never is not null)
        {
            return text.ToString();
        }

        if (into.Offers.IsEmpty)
        {
            return text.Append(Wrapped.Of(Words.HoldsNothing)).ToString();
        }

        Table table = card.MadeInto;
        text.Append(Words.CouldBecome)
            .Append('\n')
            .Append((table with { Rows = [.. table.Rows.Take(MostOffers)] }).ToText());
        return table.Rows.Length > MostOffers
            ? text.Append(Wrapped.Of(Words.MoreOffers(table.Rows.Length - MostOffers, card.Forecast.Tool.Mark)))
                .ToString()
            : text.ToString();
    }

    /// <summary>What has to be thought of before a tool is made into another.</summary>
    /// <param name="into">What it could become.</param>
    /// <returns>Sentences, the gravest first.</returns>
    public static ImmutableArray<string> Cautions(MadeInto into) =>
        into.Never is { } never
            ? [Words.NotMadeInto(never)]
            :
            [
                .. into.Doubt is { } doubt ? [Words.ThinkFirst(doubt)] : Array.Empty<string>(),
                .. into.SteelIsUnknown ? [Words.TrialFirst] : Array.Empty<string>(),
                .. into.Offers.IsEmpty ? Array.Empty<string>() : [Words.MakeIntoCaution, Words.GrindingCaution],
            ];

    private static string Shown(Calculated figures, string name) => figures[name].Shown;
}
