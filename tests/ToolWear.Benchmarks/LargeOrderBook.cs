using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Benchmarks;

/// <summary>An invented shop with a very long order book: 40 patterns, 10 tools each, 1000 orders.</summary>
internal static class LargeOrderBook
{
    private const int Patterns = 40;
    private const int Orders = 1000;
    private static readonly DateOnly First = new(2026, 1, 5);

    // form, place, how many hang there, heats a head, life in heats, mm of limit
    private static readonly (string Form, Place Place, int Tools, double Heats, double Life, decimal Limit)[] Places =
    [
        ("slitter", Place.None, 1, 2, 200, 2.0m),
        ("drift", Place.Rough, 5, 3, 60, 1.2m),
        ("drift", Place.Second, 2, 1, 100, 0.8m),
        ("drift", Place.Finish, 2, 1.5, 290, 0.35m),
    ];

    /// <summary>The day after all sessions.</summary>
    public static DateOnly Today { get; } = First.AddDays(200);

    /// <summary>Makes the shop.</summary>
    public static Shop Make()
    {
        Random chance = new(5);
        Shop shop = Shop.Empty;
        void Enter(LedgerEntry what) =>
            shop =
                shop.After(new Entered(shop.NextNumber, DateTimeOffset.UnixEpoch, Today, what)).After
                ?? throw new InvalidOperationException(what.ToString());
        for (int p = 0; p < Patterns; p++)
        {
            Enter(Pattern(p));
            foreach (LedgerEntry entry in Places.SelectMany(place => Hung(p, place)))
            {
                Enter(entry);
            }

            for (int session = 0; session < 4; session++)
            {
                foreach (LedgerEntry entry in Session(p, session, chance))
                {
                    Enter(entry);
                }
            }
        }

        Enter(
            new BarDescribed(
                "4140 32",
                "4140",
                SectionKind.Round,
                Length.FromMm(32m),
                null,
                Length.FromMm(3000m),
                null,
                5
            )
        );
        for (int i = 0; i < Orders; i++)
        {
            DateOnly due = Today.AddDays(10 + chance.Next(2000));
            Enter(
                new OrderDescribed(
                    Named("order", i),
                    Named("P", i % Patterns),
                    4 + chance.Next(16),
                    due,
                    OrderState.Open
                )
            );
        }

        return shop;
    }

    private static PatternDescribed Pattern(int p) =>
        new(
            Named("P", p),
            [
                .. Places.Select(place => new PatternStage(
                    $"{place.Form} {place.Place}",
                    Named("E", p),
                    Form(place.Form),
                    place.Place,
                    Form(place.Form).MainWork(place.Place),
                    place.Heats,
                    null
                )),
            ]
        );

    private static IEnumerable<LedgerEntry> Hung(
        int p,
        (string Form, Place Place, int Tools, double Heats, double Life, decimal Limit) place
    ) =>
        Enumerable
            .Range(0, place.Tools)
            .Select(i => new ToolAdded(
                new Tool(
                    Mark(p, place, i),
                    Form(place.Form),
                    Named("E", p),
                    place.Place,
                    SectionKind.Rectangle,
                    p % 3 == 0 ? "mild" : "4140",
                    null,
                    First,
                    ToolStart.New,
                    place.Life,
                    new ToolCost(3, 0.7m, 0.2m, 0),
                    null,
                    null,
                    [
                        new(
                            "width",
                            Wears.Smaller,
                            Measures.Width,
                            null,
                            Length.FromMm(16m),
                            Length.FromMm(16 - place.Limit),
                            null,
                            Length.FromMm(0.05m)
                        ),
                    ],
                    [
                        new Station(BodyPart.Shank, Length.FromMm(0m), Round(22)),
                        new Station(BodyPart.FullSize, Length.FromMm(70m), Round(20)),
                        new Station(BodyPart.Nose, Length.FromMm(150m), Round(8)),
                    ]
                )
            ));

    private static IEnumerable<LedgerEntry> Session(int p, int session, Random chance)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"P{p} session {session}");
        DateOnly day = First.AddDays((session * 40) + p);
        yield return new SessionOpened(name, day, Named("P", p), Care.Usual, null, null);
        foreach (var place in Places)
        {
            ToolMark mark = Mark(p, place, session % place.Tools);
            yield return new HeatsWorked(
                name,
                mark,
                Form(place.Form).MainWork(place.Place),
                Heats.Of((int)(6 * place.Heats)),
                HeatsHow.Counted
            );
        }

        yield return new SessionClosed(name, 6);
        foreach (var place in Places)
        {
            int worked = 1 + (session / place.Tools);
            double worn =
                (double)place.Limit * worked * 6 * place.Heats / place.Life * (0.8 + (0.4 * chance.NextDouble()));
            Length size = Length.FromMm(Math.Round(16 - worn, 2));
            yield return new ToolMeasured(
                Mark(p, place, session % place.Tools),
                "width",
                day,
                name,
                size,
                null,
                null,
                null
            );
        }
    }

    private static RoundSection Round(double mm) =>
        RoundSection.TryMake(Length.FromMm(mm), out RoundSection? round, out string? refusal)
            ? round
            : throw new InvalidOperationException(refusal);

    private static ToolMark Mark(
        int p,
        (string Form, Place Place, int Tools, double Heats, double Life, decimal Limit) place,
        int i
    ) =>
        ToolMark.TryParse(
            string.Create(CultureInfo.InvariantCulture, $"{p}-{place.Form[0]}{(int)place.Place}-{i}"),
            out ToolMark mark,
            out string refusal
        )
            ? mark
            : throw new InvalidOperationException(refusal);

    private static ToolForm Form(string name) => ToolForms.All.Single(form => form.Name == name);

    private static string Named(string what, int i) => string.Create(CultureInfo.InvariantCulture, $"{what} {i}");
}
