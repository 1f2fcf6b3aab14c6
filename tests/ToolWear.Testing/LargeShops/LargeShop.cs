using System.Collections.Immutable;
using Bogus;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Testing.LargeShops;

/// <summary>The ledger of a shop of any size, the same for the same seed: rough drifts that wear, are read and scrapped.</summary>
/// <remarks>
/// Each session works three drifts of one eye for four heats each, one tally after the other, and the next morning all
/// three are read and looked over. A drift that is past its limit is scrapped and another hung in its place. The
/// figures are invented.
/// </remarks>
public sealed class LargeShop
{
    private const int Together = 3;
    private const int HeatsADay = 4;
    private const decimal StartMm = 14;
    private const decimal LimitMm = 1.2m;
    private static readonly DateOnly Usual = new(1950, 1, 2);

    private readonly Randomizer chance;
    private readonly Hanging[][] eyes;
    private readonly Func<string, string> named;
    private readonly DateOnly firstDay;
    private int made;

    private LargeShop(int eyes, int tools, int seed, Func<string, string> named, DateOnly firstDay)
    {
        (this.named, this.firstDay) = (named, firstDay);
        chance = new Randomizer(seed);
        this.eyes = [.. Enumerable.Range(0, eyes).Select(eye => new Hanging[(tools + eyes - 1 - eye) / eyes])];
    }

    /// <summary>The ledger.</summary>
    /// <param name="eyes">Eyes, each with drifts of a kind of its own (their gauge marks have other names): 1 or more.</param>
    /// <param name="tools">Drifts in service at any time: three or more for each eye.</param>
    /// <param name="entries">About how many entries; the last session is written to its end.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="named">Makes marks and names of eyes of "D1" and "E1"; null leaves them so.</param>
    /// <param name="firstDay">The first day; null for one of 1950.</param>
    /// <returns>Each entry with the day it is written down, in order.</returns>
    public static IEnumerable<(DateOnly Day, LedgerEntry Entry)> Ledger(
        int eyes,
        int tools,
        int entries,
        int seed,
        Func<string, string>? named = null,
        DateOnly? firstDay = null
    )
    {
        LargeShop shop = new(eyes, tools, seed, named ?? (name => name), firstDay ?? Usual);
        int count = 0;
        foreach ((DateOnly, LedgerEntry) each in shop.Lived())
        {
            // a session is never left half written
            if (count >= entries && each.Item2 is SessionOpened)
            {
                yield break;
            }

            count++;
            yield return each;
        }
    }

    private IEnumerable<(DateOnly Day, LedgerEntry Entry)> Lived()
    {
        foreach (Hanging[] rail in eyes)
        {
            for (int peg = 0; peg < rail.Length; peg++)
            {
                yield return (firstDay, Hang(rail, peg, Array.IndexOf(eyes, rail), firstDay));
            }
        }

        for (int session = 0; ; session++)
        {
            DateOnly day = firstDay.AddDays(session / 2);
            foreach (LedgerEntry entry in Session($"day {session + 1}", day, session % eyes.Length))
            {
                yield return (entry is HeatsWorked or SessionOpened ? day : day.AddDays(1), entry);
            }
        }
    }

    private IEnumerable<LedgerEntry> Session(string name, DateOnly day, int eye)
    {
        Hanging[] rail = eyes[eye];
        int first = chance.Int(0, rail.Length - 1);
        int[] pegs = [.. Enumerable.Range(first, Together).Select(peg => peg % rail.Length)];
        yield return new SessionOpened(name, day, null, Care.Usual, null, null);
        for (int heat = 0; heat < HeatsADay; heat++)
        {
            foreach (int peg in pegs)
            {
                rail[peg] = rail[peg].Worked(chance);
                yield return new HeatsWorked(name, rail[peg].Mark, Work.Cheeks, Heats.Of(1), HeatsHow.Counted);
            }
        }

        yield return new SessionClosed(name, null);
        DateOnly morning = day.AddDays(1);
        foreach (int peg in pegs)
        {
            Hanging tool = rail[peg];
            Length size = Length.FromMm(Read(tool));
            yield return new ToolMeasured(tool.Mark, $"width {eye + 1}", morning, name, size, null, null, null);
            yield return new ToolLookedOver(tool.Mark, morning, Finding.Sound, null, null);
            if (tool.WearMm > (double)LimitMm)
            {
                yield return new ToolScrapped(tool.Mark, morning, ScrapCause.Worn, null, null);
                yield return Hang(rail, peg, eye, morning);
            }
        }
    }

    private decimal Read(Hanging tool) =>
        decimal.Round((StartMm - (decimal)(tool.WearMm + chance.Double(-0.05, 0.05))) / 0.05m) * 0.05m;

    private ToolAdded Hang(Hanging[] rail, int peg, int eye, DateOnly day)
    {
        made++;
        ToolMark mark = ToolMark.TryParse(named($"D{made}"), out ToolMark parsed, out string refusal)
            ? parsed
            : throw new InvalidOperationException(refusal);
        // lives from 30 to 100 heats, most near 60
        rail[peg] = new(
            mark,
            0,
            (double)LimitMm / (60 * Math.Exp(chance.Double(-0.35, 0.35) + chance.Double(-0.2, 0.2)))
        );
        return new(
            new(
                mark,
                ToolForms.All.Single(form => form.Name == "drift"),
                named($"E{eye + 1}"),
                Place.Rough,
                SectionKind.Rectangle,
                chance.Bool() ? "4140" : "mild",
                null,
                day,
                ToolStart.New,
                60,
                ToolCost.Unknown,
                null,
                null,
                [
                    new(
                        $"width {eye + 1}",
                        Wears.Smaller,
                        Measures.Width,
                        null,
                        Length.FromMm(StartMm),
                        Length.FromMm(StartMm - LimitMm),
                        null,
                        Length.FromMm(0.05m)
                    ),
                ],
                []
            )
        );
    }

    private readonly record struct Hanging(ToolMark Mark, double WearMm, double RateMmPerHeat)
    {
        public Hanging Worked(Randomizer chance) =>
            this with
            {
                WearMm = WearMm + (RateMmPerHeat * chance.Double(0.6, 1.4)),
            };
    }
}
