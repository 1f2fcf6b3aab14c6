using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The thirty sessions of the half year: 10 of hatchets, 7 of tomahawks, 8 of hammers, 5 of adzes.</summary>
/// <remarks>
/// No two sessions lie on following days, so the tools are cold and read the morning after. Weighted heats of the rough
/// drifts: H1 to H3 27 each, H4 65, H5 38, H6 11; T1 66, T2 31, T3 15; X1 60, X2 50, X3 20; A1 65, A2 20.
/// </remarks>
internal static class SessionPlan
{
    /// <summary>Every session, by day.</summary>
    public static ImmutableArray<DaysWork> All { get; } =
    [.. Hatchets.Concat(Tomahawks).Concat(Hammers).Concat(Adzes).OrderBy(session => session.On)];

    private static IEnumerable<DaysWork> Hatchets =>
        [
            Hatchet(1, Day(5, 8), Fire.Orange, [("H1", 18, 6)]),
            Hatchet(2, Day(5, 29), Fire.Orange, [("H1", 6, 6), ("H2", 12, 0)]),
            Hatchet(3, Day(6, 19), Fire.Orange, [("H2", 7, 0), ("H2", 8, 0), ("H3", 3, 6)]),
            Hatchet(4, Day(7, 10), Fire.Yellow, [("H3", 10, 0), ("H4", 8, 6)]),
            Hatchet(5, Day(7, 31), Fire.Yellow, [("H3", 12.5, 0), ("H4", 5.5, 6)]) with
            {
                Note = "slitter dipped in water while it still showed red",
                Care = new(null, Cooling.Other, 10),
            },
            Hatchet(6, Day(8, 21), Fire.Red, [("H4", 18, 6)]),
            Hatchet(7, Day(9, 11), Fire.Orange, [("H4", 12, 6), ("H5", 6, 0)]),
            Hatchet(8, Day(9, 25), Fire.Red, [("H4", 14, 6), ("H5", 4, 0)]),
            Hatchet(9, Day(10, 16), Fire.Orange, [("H5", 18, 6)]) with
            {
                Care = new(null, Cooling.DipWhenBlack, 8),
            },
            Hatchet(10, Day(11, 6), Fire.Orange, [("H5", 7, 6), ("H6", 11, 0)]),
        ];

    private static IEnumerable<DaysWork> Tomahawks =>
        [
            Tomahawk(1, Day(5, 20), Fire.Orange, [("T1", 16)]),
            Tomahawk(2, Day(6, 12), Fire.Orange, [("T1", 16)]),
            Tomahawk(3, Day(7, 3), Fire.Yellow, [("T1", 16)]),
            Tomahawk(4, Day(8, 5), Fire.Red, [("T1", 10), ("T2", 6)]) with
            {
                Care = new(ShopWays.Soapstone, null, null),
            },
            Tomahawk(5, Day(9, 4), Fire.Orange, [("T1", 8), ("T2", 8)]),
            Tomahawk(6, Day(9, 30), Fire.Orange, [("T2", 10), ("T3", 6)]),
            Tomahawk(7, Day(10, 23), Fire.Red, [("T2", 7), ("T3", 9)]),
        ];

    private static IEnumerable<DaysWork> Hammers =>
        [
            Hammer(1, Day(5, 12), Fire.Orange, [("X1", 15, 5)]),
            Hammer(2, Day(6, 5), Fire.Orange, [("X1", 15, 5)]),
            Hammer(3, Day(6, 26), Fire.Red, [("X1", 15, 5)]) with
            {
                Care = new(ShopWays.Soapstone, null, null),
            },
            Hammer(4, Day(7, 21), Fire.Orange, [("X1", 10, 5), ("X2", 5, 0)]),
            Hammer(5, Day(8, 14), Fire.Orange, [("X2", 5, 5), ("X3", 10, 0)]),
            Hammer(6, Day(9, 8), Fire.Yellow, [("X2", 12, 5), ("X3", 3, 0)]) with
            {
                Care = new(null, Cooling.CompressedAir, 6),
            },
            Hammer(7, Day(10, 6), Fire.Orange, [("X2", 12, 5), ("X3", 3, 0)]),
            Hammer(8, Day(10, 27), Fire.Red, [("X2", 11, 5), ("X3", 4, 0)]),
        ];

    private static IEnumerable<DaysWork> Adzes =>
        [
            Adze(1, Day(5, 26), Fire.Orange, [("A1", 16, 4)]),
            Adze(2, Day(7, 15), Fire.Red, [("A1", 16, 4)]),
            Adze(3, Day(8, 26), Fire.Orange, [("A1", 16, 4)]) with
            {
                Care = new(ShopWays.Soapstone, null, null),
            },
            Adze(4, Day(9, 18), Fire.Orange, [("A1", 13, 4), ("A2", 3, 0)]),
            Adze(5, Day(10, 13), Fire.Orange, [("A2", 16, 4)]),
        ];

    /// <summary>Six hatchets: slit 2, open 1, cheeks 3, second 1, finish 1 to 2 heats a head.</summary>
    private static DaysWork Hatchet(
        int number,
        DateOnly on,
        Fire fire,
        ImmutableArray<(string Tool, double Cheeks, int Opening)> roughs
    ) =>
        Session(
            $"hatchets {number}",
            on,
            PatternsAndOrders.Hatchet,
            6,
            fire,
            [
                Worked(number <= 5 ? "HS1" : "HS2", Work.Slitting, 12),
                .. RoughWork(roughs),
                Worked("H2ND", Work.Cheeks, 6),
                Worked("HF1", Work.Sizing, 9),
                Worked("FU1", Work.Fullering, 12),
                Worked("SF1", Work.Fullering, 4),
                Worked("HC1", Work.Other, 6),
                Worked("FL1", Work.Other, 6),
                .. Counted(6),
            ]
        );

    /// <summary>Eight tomahawks: punch 2, opener 1 to 2, rough 2, finish 2 heats a head.</summary>
    private static DaysWork Tomahawk(
        int number,
        DateOnly on,
        Fire fire,
        ImmutableArray<(string Tool, double Cheeks)> roughs
    ) =>
        Session(
            $"tomahawks {number}",
            on,
            PatternsAndOrders.Tomahawk,
            8,
            fire,
            [
                Worked("TP1", Work.Slitting, 16),
                Worked("TO1", Work.Opening, 12),
                .. RoughWork([.. roughs.Select(rough => (rough.Tool, rough.Cheeks, 0))]),
                Worked("TF1", Work.Sizing, 16),
                Worked("FU2", Work.Fullering, 8),
                Worked("FL1", Work.Other, 8),
                .. Counted(8),
            ]
        );

    /// <summary>Five hammers: punch 2, open 1, cheeks 3, second 1, finish 2 heats a head, a face each.</summary>
    private static DaysWork Hammer(
        int number,
        DateOnly on,
        Fire fire,
        ImmutableArray<(string Tool, double Cheeks, int Opening)> roughs
    ) =>
        Session(
            $"hammers {number}",
            on,
            PatternsAndOrders.CrossPeen,
            5,
            fire,
            [
                Worked("XP1", Work.Slitting, 10),
                .. RoughWork(roughs),
                Worked("X2ND", Work.Cheeks, 5),
                Worked("XF1", Work.Sizing, 10),
                Worked("FU2", Work.Fullering, 10),
                Worked("FL1", Work.Other, 5),
                .. Counted(5),
            ]
        );

    /// <summary>Four adzes: punch 3, open 1, cheeks 4, second 2, finish 1 heat a head.</summary>
    private static DaysWork Adze(
        int number,
        DateOnly on,
        Fire fire,
        ImmutableArray<(string Tool, double Cheeks, int Opening)> roughs
    ) =>
        Session(
            $"adzes {number}",
            on,
            PatternsAndOrders.Adze,
            4,
            fire,
            [
                Worked("AP1", Work.Slitting, 12),
                .. RoughWork(roughs),
                Worked("A2ND", Work.Cheeks, 8),
                Worked("AF1", Work.Sizing, 4),
                Worked("FU1", Work.Fullering, 8),
                Worked("HC1", Work.Other, 4),
                .. Counted(4),
            ]
        );

    /// <summary>The elder hand forges hatchets and adzes, the younger the rest.</summary>
    private static DaysWork Session(
        string name,
        DateOnly on,
        string pattern,
        int heads,
        Fire fire,
        ImmutableArray<Share> shares
    )
    {
        bool isElder = pattern is PatternsAndOrders.Hatchet or PatternsAndOrders.Adze;
        string? note = fire == Fire.Yellow ? "fire run hot" : null;
        return new(name, on, pattern, heads, fire, isElder ? ShopWays.Orla : ShopWays.Bram, Care.Usual, note, shares);
    }

    /// <summary>Opening heats of a drift come before its cheeks; a drift named twice was straightened in between.</summary>
    private static IEnumerable<Share> RoughWork(ImmutableArray<(string Tool, double Cheeks, int Opening)> roughs)
    {
        HashSet<string> seen = [];
        foreach ((string tool, double cheeks, int opening) in roughs)
        {
            if (opening > 0)
            {
                yield return Worked(tool, Work.Opening, opening);
            }

            yield return Worked(tool, Work.Cheeks, cheeks) with
            {
                BentBefore = !seen.Add(tool),
            };
        }
    }

    /// <summary>The dies and the bolster work at every head; nobody tallies them.</summary>
    private static IEnumerable<Share> Counted(int heads) =>
        [
            Worked("D1", Work.Other, heads * 3) with
            {
                How = HeatsHow.Estimated,
            },
            Worked("B1", Work.Other, heads * 2) with
            {
                How = HeatsHow.Estimated,
            },
        ];

    private static Share Worked(string tool, Work work, double heats) =>
        new(tool, work, Heats.OfHalves((int)(heats * 2)));
}
