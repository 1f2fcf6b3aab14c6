using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>What the invented shop forges, stage by stage, and for whom it must be done by when.</summary>
internal static class PatternsAndOrders
{
    /// <summary>The hatchet.</summary>
    public const string Hatchet = "hatchet";

    /// <summary>The tomahawk.</summary>
    public const string Tomahawk = "tomahawk";

    /// <summary>The cross-peen hammer.</summary>
    public const string CrossPeen = "cross-peen";

    /// <summary>The adze.</summary>
    public const string Adze = "adze";

    /// <summary>A commission for an eye that the shop has no tools for yet.</summary>
    public const string OddHawk = "odd hawk";

    /// <summary>The patterns with the heats that a head takes. Common practice or invented, no source.</summary>
    public static IEnumerable<LedgerEntry> Patterns =>
        [
            new PatternDescribed(
                Hatchet,
                [
                    Stage("slit", "H", "slitter", Place.None, Work.Slitting, 2),
                    Drift("open", "H", Place.Rough, Work.Opening, 1),
                    Drift("cheeks", "H", Place.Rough, Work.Cheeks, 3),
                    Drift("second", "H", Place.Second, Work.Cheeks, 1),
                    Drift("finish", "H", Place.Finish, Work.Sizing, 1.5),
                    Stage("draw the bit", null, "fuller", Place.None, Work.Fullering, 2),
                ]
            ),
            new PatternDescribed(
                Tomahawk,
                [
                    Stage("punch", "T", "slot punch", Place.None, Work.Slitting, 2),
                    Drift("open", "T", Place.Opener, Work.Opening, 1.5),
                    Drift("cheeks", "T", Place.Rough, Work.Cheeks, 2),
                    Drift("finish", "T", Place.Finish, Work.Sizing, 2),
                    Stage("draw the bit", null, "fuller", Place.None, Work.Fullering, 1),
                ]
            ),
            new PatternDescribed(
                CrossPeen,
                [
                    Stage("punch", "X", "slot punch", Place.None, Work.Slitting, 2),
                    Drift("open", "X", Place.Rough, Work.Opening, 1),
                    Drift("cheeks", "X", Place.Rough, Work.Cheeks, 3),
                    Drift("second", "X", Place.Second, Work.Cheeks, 1),
                    Drift("finish", "X", Place.Finish, Work.Sizing, 2),
                    Stage("peen", null, "fuller", Place.None, Work.Fullering, 2),
                ]
            ),
            new PatternDescribed(
                Adze,
                [
                    Stage("punch", "A", "slot punch", Place.None, Work.Slitting, 3),
                    Drift("open", "A", Place.Rough, Work.Opening, 1),
                    Drift("cheeks", "A", Place.Rough, Work.Cheeks, 4),
                    Drift("second", "A", Place.Second, Work.Cheeks, 2),
                    Drift("finish", "A", Place.Finish, Work.Sizing, 1),
                    Stage("draw the blade", null, "fuller", Place.None, Work.Fullering, 2),
                ]
            ),
            new PatternDescribed(
                OddHawk,
                [
                    Stage("punch", "C", "slot punch", Place.None, Work.Slitting, 2),
                    Drift("open", "C", Place.Rough, Work.Opening, 1),
                    Drift("cheeks", "C", Place.Rough, Work.Cheeks, 2),
                    Drift("finish", "C", Place.Finish, Work.Sizing, 2),
                ]
            ),
        ];

    /// <summary>The order book: what is open on the last day, and what was done or dropped before.</summary>
    public static IEnumerable<LedgerEntry> Orders =>
        [
            new OrderDescribed("hatchets, summer", Hatchet, 30, Day(8, 7), OrderState.Done),
            new OrderDescribed("hammers, fair", CrossPeen, 20, Day(7, 24), OrderState.Done),
            new OrderDescribed("hawks, meet", Tomahawk, 24, Day(9, 4), OrderState.Dropped),
            new OrderDescribed("hatchets", Hatchet, 18, Day(12, 4), OrderState.Open),
            new OrderDescribed("hammers", CrossPeen, 24, new(2027, 1, 1), OrderState.Open),
            new OrderDescribed("hawks", Tomahawk, 16, new(2027, 1, 15), OrderState.Open),
            new OrderDescribed("commission", OddHawk, 3, new(2027, 1, 29), OrderState.Open),
            new OrderDescribed("adzes", Adze, 10, new(2027, 1, 15), OrderState.Open),
        ];

    private static PatternStage Drift(string name, string eye, Place place, Work work, double heats) =>
        Stage(name, eye, "drift", place, work, heats);

    private static PatternStage Stage(string name, string? eye, string form, Place place, Work work, double heats) =>
        new(name, eye, Form(form), place, work, heats, null);
}
