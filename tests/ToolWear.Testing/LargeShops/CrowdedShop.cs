using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Testing.LargeShops;

/// <summary>The ledger of a shop of any size in which every screen has much to show: eyes, handles, series, patterns, bars
/// and orders beside the tools, and findings with long notes.</summary>
/// <remarks>The figures are invented.</remarks>
public static class CrowdedShop
{
    private const int ToolsAnEye = 40;
    private const int MostName = 40;
    private const int Bars = 30;
    private const int Orders = 24;
    private const int Lent = 6;

    private const string LongNote =
        "found at the end of a long evening, and written down as it was seen: the edge is rounded over at the nose, the "
        + "width is less in the middle than at the ends, and the mark on the shank can hardly be read any more";

    /// <summary>The ledger.</summary>
    /// <param name="tools">Drifts in service at any time: 12 or more.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="today">The last day.</param>
    /// <param name="areLong">Whether marks and names are as long as they may be, 40 characters.</param>
    /// <returns>Each entry with the day it is written down, in order.</returns>
    public static IEnumerable<(DateOnly Day, LedgerEntry Entry)> Ledger(
        int tools,
        int entries,
        int seed,
        DateOnly today,
        bool areLong
    )
    {
        int eyes = Math.Max(4, tools / ToolsAnEye);
        Func<string, string> named = areLong ? Long : name => name;
        DateOnly first = today.AddDays(-1 - Days(eyes, tools, entries, seed));
        foreach (LedgerEntry entry in Descriptions(eyes, named))
        {
            yield return (first, entry);
        }

        List<ToolMark> hanging = [];
        foreach ((DateOnly, LedgerEntry Entry) each in LargeShop.Ledger(eyes, tools, entries, seed, named, first))
        {
            if (each.Entry is ToolAdded added)
            {
                hanging.Add(added.Tool.Mark);
            }
            else if (each.Entry is ToolScrapped scrapped)
            {
                hanging.Remove(scrapped.Tool);
            }

            yield return each;
        }

        for (int i = 0; i < Orders; i++)
        {
            DateOnly due = today.AddDays(20 + (9 * i));
            string name = named(Invariant($"heads {i + 1}"));
            yield return (today, new OrderDescribed(name, Pattern(i % eyes, named), 4 + i, due, OrderState.Open));
        }

        foreach (LedgerEntry entry in Ending(hanging, today, named))
        {
            yield return (today, entry);
        }
    }

    // 40 characters of whole words, filled up with nines
    private static string Long(string name)
    {
        string cut = (name + " of the long rail by the hammer in the second shop")[..MostName];
        return cut[..cut.LastIndexOf(' ')].PadRight(MostName, '9');
    }

    private static int Days(int eyes, int tools, int entries, int seed) =>
        LargeShop.Ledger(eyes, tools, entries, seed).Max(each => each.Day).DayNumber
        - LargeShop.Ledger(eyes, tools, entries, seed).First().Day.DayNumber;

    private static string Pattern(int eye, Func<string, string> named) => named(Invariant($"pattern {eye + 1}"));

    private static IEnumerable<LedgerEntry> Descriptions(int eyes, Func<string, string> named)
    {
        yield return new SettingChanged("hands", "Orla, Bram");
        for (int eye = 0; eye < eyes; eye++)
        {
            string name = named(Invariant($"E{eye + 1}"));
            string handle = named(Invariant($"handle {eye + 1}"));
            yield return new HandleDescribed(handle, Mm(36), Mm(17), 0.02, Mm(6), LongNote);
            yield return new EyeDescribed(
                name,
                SectionKind.Oval,
                Mm(36 + eye),
                Mm(17 + (eye / 2m)),
                null,
                Mm(40),
                0.03,
                0.03,
                Fit.Wedged,
                Driving.BothFaces,
                Mm(35 + eye),
                Mm(37 + eye),
                Mm(16 + (eye / 2m)),
                Mm(18 + (eye / 2m)),
                handle
            );
            foreach (LedgerEntry entry in SeriesOf(name, eye))
            {
                yield return entry;
            }

            yield return new PatternDescribed(Pattern(eye, named), Stages(name));
        }

        for (int bar = 0; bar < Bars; bar++)
        {
            yield return new BarDescribed(
                named(Invariant($"bar {bar + 1}")),
                bar % 3 == 0 ? "mild" : "4140",
                SectionKind.Round,
                Mm(30 + bar),
                null,
                Mm(600 + (100 * bar)),
                Invariant($"K{bar}"),
                4
            );
        }
    }

    private static IEnumerable<LedgerEntry> SeriesOf(string name, int eye)
    {
        foreach ((Place place, decimal less) in new[] { (Place.Rough, 3m), (Place.Second, 1.2m), (Place.Finish, 0m) })
        {
            yield return new SeriesDescribed(
                new Series(
                    name,
                    place,
                    Form("drift"),
                    SectionKind.Oval,
                    Mm(36 + eye - less),
                    Mm(17 + (eye / 2m) - less),
                    null,
                    0.03,
                    0.03,
                    60,
                    "4140",
                    false,
                    1,
                    LongNote
                )
            );
        }
    }

    private static ImmutableArray<PatternStage> Stages(string eye) =>
        [
            new("slit", eye, Form("slitter"), Place.None, Work.Slitting, 2, null),
            new("open", eye, Form("drift"), Place.Rough, Work.Opening, 1, null),
            new("cheeks", eye, Form("drift"), Place.Rough, Work.Cheeks, 3, null),
            new("second", eye, Form("drift"), Place.Second, Work.Cheeks, 1, null),
            new("finish", eye, Form("drift"), Place.Finish, Work.Sizing, 1.5, null),
        ];

    // what stands behind the sessions: loans, a stock-take half done, findings with long notes
    private static IEnumerable<LedgerEntry> Ending(
        IEnumerable<ToolMark> tools,
        DateOnly today,
        Func<string, string> named
    )
    {
        foreach ((int i, ToolMark mark) in tools.Take(Lent).Index())
        {
            yield return new ToolLookedFor(mark, today, i % 2 == 0, "Orla");
            yield return new ToolLookedOver(mark, today, Finding.HeatChecked, "Orla", LongNote);
            if (i % 2 == 1)
            {
                yield return new ToolLent(mark, today, named(Invariant($"smith {i}")), LongNote);
            }
        }
    }

    private static ToolForm Form(string name) => ToolForms.All.Single(form => form.Name == name);

    private static Length Mm(decimal mm) => Length.FromMm(mm);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
