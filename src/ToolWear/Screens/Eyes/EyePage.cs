using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Results;
using ToolWear.Results.Eyes;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Eyes;

/// <summary>A row of the list: an eye or a handle.</summary>
/// <param name="Eye">The eye; null for a handle.</param>
/// <param name="Handle">The handle; null for an eye.</param>
internal sealed record EyeOrHandle(EyeDescribed? Eye, HandleDescribed? Handle)
{
    /// <summary>What tells it from all others.</summary>
    public string Key => Eye is { } eye ? "e" + eye.Name : "h" + Handle!.Name;

    /// <summary>Its name.</summary>
    public string Name => Eye?.Name ?? Handle!.Name;
}

/// <summary>What is told of one eye or handle: short facts, sections to draw, then sentences.</summary>
/// <param name="Facts">Short lines that stand beside the drawing.</param>
/// <param name="Outlines">The sections, the eye's first, each with how far it lies towards the nose.</param>
/// <param name="Told">Lines below, each with its ink.</param>
internal sealed record EyePage(
    ImmutableArray<string> Facts,
    ImmutableArray<(Section Section, double ShiftMm)> Outlines,
    ImmutableArray<(string Line, Ink Ink)> Told
)
{
    /// <summary>Makes the page.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecasts">The forecasts; null while they are being worked out.</param>
    /// <param name="row">The eye or handle.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The page.</returns>
    public static EyePage Of(Shop shop, ShopForecasts? forecasts, EyeOrHandle row, LengthUnit units) =>
        row.Eye is { } eye
            ? OfEye(shop, forecasts, eye, units)
            : new([.. Words.HandleFacts(row.Handle!, units)], [], [.. OfHandle(shop, row.Handle!, units)]);

    private static EyePage OfEye(Shop shop, ShopForecasts? forecasts, EyeDescribed eye, LengthUnit units)
    {
        SeriesPlan? plan = shop.Series.Keys.Any(key => key.Eye == eye.Name)
            ? SeriesPlan.Of(shop, eye, [.. shop.Series.Values.Where(series => series.Eye == eye.Name)])
            : null;
        List<(string, Ink)> told = [];
        told.AddRange(SeriesOf(plan, units));
        told.AddRange(DriftsOf(forecasts, eye, units));
        told.AddRange(FitOf(shop, eye, units));
        return new(
            [.. Words.EyeFacts(eye, units)],
            SlitOutlooks.SectionOf(eye) is { } section ? Outline(section, plan) : [],
            [.. told]
        );
    }

    // the eye, and in it the drift used first: where it would burst the eye one sees it
    private static ImmutableArray<(Section, double)> Outline(Section section, SeriesPlan? plan)
    {
        Section? firstDrift = plan
            ?.Tools.Where(tool => tool.Series.Form.Name == ToolForms.Drift && tool.Series.Place != Place.Opener)
            .Select(tool => tool.Series.AtMark())
            .FirstOrDefault(drift => drift is not null);
        return firstDrift is null
            ? [(section, 0)]
            : [(section, 0), (firstDrift, Inside.Of(section, firstDrift).ShiftMm)];
    }

    private static IEnumerable<(string, Ink)> SeriesOf(SeriesPlan? plan, LengthUnit units)
    {
        if (plan is null)
        {
            yield return (Words.NoSeriesYet, Ink.Warn);
            yield break;
        }

        yield return (Words.SeriesOfIt, Ink.Strong);
        foreach (PlannedTool tool in plan.Tools)
        {
            yield return ("  " + Words.SeriesLine(tool.Series, units), Ink.Plain);
        }

        foreach (NestingStep step in plan.Nesting)
        {
            yield return ("  " + step.Sentence(units), step.Spoils ? Ink.Warn : Ink.Plain);
        }

        foreach ((string sentence, Ink ink) in Words.SlitSentences(plan, units))
        {
            yield return ("  " + sentence, ink);
        }
    }

    private static IEnumerable<(string, Ink)> DriftsOf(ShopForecasts? forecasts, EyeDescribed eye, LengthUnit units)
    {
        yield return (Words.DriftsNow, Ink.Strong);
        if (forecasts is null)
        {
            yield return ("  " + Words.WorkingOut, Ink.Quiet);
            yield break;
        }

        bool isAny = false;
        foreach (ToolForecast tool in forecasts.InService.Where(each => each.Tool.Tool.Eye == eye.Name))
        {
            if (DriftOutlooks.Of(forecasts, tool) is { } outlook)
            {
                isAny = true;
                yield return (
                    "  "
                        + Words.DriftLine(
                            tool.Tool.Mark.Text,
                            RackTable.PlaceOrForm(tool.Tool.Tool),
                            $"{Quantity.Gap.Show(outlook.Eye.Eye.LengthMm, units)} x {Quantity.Gap.Show(outlook.Eye.Eye.WidthMm, units)}",
                            EyeFigures.Judged(outlook)
                        ),
                    outlook.IsInside == false ? Ink.Warn : Ink.Plain
                );
            }
        }

        if (!isAny)
        {
            yield return ("  " + Words.NoDrifts, Ink.Quiet);
        }
    }

    private static IEnumerable<(string, Ink)> FitOf(Shop shop, EyeDescribed eye, LengthUnit units)
    {
        yield return (Words.HandleFit, Ink.Strong);
        if (eye.Handle is { } name && shop.Handles.GetValueOrDefault(name) is { } handle)
        {
            foreach (string line in Words.HandleInEye(handle, eye, DriftOutlooks.WantedOf(shop, eye), units))
            {
                yield return ("  " + line, Ink.Plain);
            }
        }
        else
        {
            yield return ("  " + Words.NoHandleNamed, Ink.Quiet);
        }

        EyeMeasured[] tried =
        [
            .. shop
                .EyesMeasured.Select(each => each.What)
                .OfType<EyeMeasured>()
                .Where(each => each.Eye == eye.Name && each.HandleFits is not null),
        ];
        yield return ("  " + Words.HandlesTried(tried), Ink.Plain);
    }

    private static IEnumerable<(string, Ink)> OfHandle(Shop shop, HandleDescribed handle, LengthUnit units)
    {
        EyeDescribed[] eyes = [.. shop.Eyes.Values.Where(eye => eye.Handle == handle.Name)];
        if (eyes.Length == 0)
        {
            yield return (Words.NoEyeForHandle, Ink.Warn);
        }

        foreach (EyeDescribed eye in eyes)
        {
            yield return (Words.EyeOfHandle(eye, units), Ink.Strong);
            foreach (string line in Words.HandleInEye(handle, eye, DriftOutlooks.WantedOf(shop, eye), units))
            {
                yield return ("  " + line, Ink.Plain);
            }
        }
    }
}
