using CsCheck;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Tests.Csv;

/// <summary>
/// Random shops: random entries are offered to a shop, which takes those that can be. Few marks, few days and few
/// sessions, so that late entries, marks used again, reworks between heats and crossings out meet often.
/// </summary>
internal static class RandomShop
{
    private static readonly string[] Marks = ["A", "B", "C", "=D", "Ö"];
    private static readonly string[] Notes =
    [
        "",
        "plain",
        "'",
        "=1+1",
        "a,b",
        "say \"so\"",
        "two\r\nlines",
        "-5",
        "\t",
        "é\u0301",
    ];

    public static readonly Gen<ShopInHand> Gen =
        from steps in CsCheck.Gen.Select(CsCheck.Gen.Int[0, 29], CsCheck.Gen.Int[0, 999], CsCheck.Gen.Int[0, 999]).List[
            0,
            120
        ]
        select Made(steps);

    private static ShopInHand Made(List<(int Kind, int A, int B)> steps)
    {
        ShopInHand shop = new() { Today = ShopInHand.Day("2026-05-01") };
        shop.TryEnter(new PatternDescribed("axe", [new("open", null, null, Place.Rough, null, null, null)]));
        foreach ((int kind, int a, int b) in steps)
        {
            shop.TryEnter(Entry(shop, kind, a, b));
            shop.Today = shop.Today.AddDays(a % 3 == 0 ? 1 : 0);
        }

        return shop;
    }

    private static LedgerEntry Entry(ShopInHand shop, int kind, int a, int b)
    {
        ToolMark tool = ShopInHand.Mark(Marks[a % Marks.Length]);
        DateOnly on = shop.Today.AddDays(-(b % 5));
        string note = Notes[b % Notes.Length];
        string[] sessions = [.. shop.Shop.Sessions.Keys];
        string session = sessions.Length == 0 ? "none" : sessions[b % sessions.Length];
        return kind switch
        {
            0 or 1 or 2 => new ToolAdded(Tool(tool, a, b)),
            3 => new ToolRemarked(tool, ShopInHand.Mark(Marks[b % Marks.Length])),
            4 => new ToolStartedHere(tool, note),
            9 => new ToolScrapped(tool, on, (ScrapCause)(b % 7), null, note),
            10 => new ToolScrapped(tool, on, ScrapCause.MadeInto, ShopInHand.Mark(Marks[b % Marks.Length]), null),
            11 or 12 => new SessionOpened($"s{a}", on, a % 2 == 0 ? null : "axe", Care.Usual, note, null),
            13 or 14 => new SessionClosed(shop.Shop.OpenSession?.Name ?? session, b % 4),
            15 or 16 or 17 => new HeatsWorked(
                session,
                tool,
                (Work)(a % 2 + 2),
                Heats.OfHalves((b % 9) * (b % 9) * 30 + 1),
                (HeatsHow)(b % 2)
            ),
            18 => new ToolMeasured(
                tool,
                "width",
                on,
                b % 2 == 0 ? null : session,
                new(14_000_000 + b),
                null,
                null,
                note
            ),
            19 or 20 => new ToolReworked(
                tool,
                on,
                (Rework)(a % 5),
                b % 2 == 0 ? "width" : null,
                null,
                null,
                b / 10m,
                null,
                note
            ),
            21 => new ToolLookedOver(tool, on, (Finding)(b % 14), null, note),
            22 => new EyeMeasured(
                "H",
                on,
                b % 2 == 0 ? null : session,
                a % 2 == 0 ? null : tool,
                null,
                new(b + 1),
                null,
                null
            ),
            23 => new HeadsDone(session, "open", (b % 4) + 1),
            5 or 6 or 7 or 8 or 24 or 25 or 26 or 27 or 28 => Moved(kind, tool, on, note),
            _ => OfAnEntry(shop, kind, b),
        };
    }

    private static LedgerEntry Moved(int kind, ToolMark tool, DateOnly on, string note) =>
        kind switch
        {
            5 or 6 => new ToolSetAside(tool, on, note),
            7 or 8 => new ToolBroughtBack(tool, on, null),
            24 or 25 => new ToolLent(tool, on, "a smith near by", note),
            26 or 27 => new ToolTakenBack(tool, on, note),
            _ => new ToolLookedFor(tool, on, note.Length % 2 == 0, null),
        };

    private static LedgerEntry OfAnEntry(ShopInHand shop, int kind, int b)
    {
        long[] crossed = [.. shop.Shop.CrossedOut.Keys.Order()];
        return kind == 29 && b % 2 == 0 && crossed.Length > 0
            ? new EntryCountsAgain(crossed[b % crossed.Length], "right after all")
            : new EntryCrossedOut((b % Math.Max(1, shop.Shop.NextNumber)) + 1, "wrong");
    }

    private static Tool Tool(ToolMark mark, int a, int b) =>
        ShopInHand.Drift(mark.Text, (Place)(a % 5)) with
        {
            Start = (b % 3) switch
            {
                0 => ToolStart.New,
                1 => ToolStart.Unknown,
                _ => new(StartedAs.InUse, Heats.OfHalves(b), HeatsBeforeHow.Counted),
            },
            GuessHeats = b % 2 == 0 ? null : b / 3.0,
            Note = Notes[a % Notes.Length],
        };
}
