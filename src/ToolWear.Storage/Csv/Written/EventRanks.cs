using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Written;

/// <summary>Puts everything that happened into the one order in which entering it again gives the same histories.</summary>
/// <remarks>
/// That is the order of the histories, with two exceptions, since an entry is judged by what was entered before it: a
/// session that is still open comes after all others, and a tool is brought back before its next heats.
/// </remarks>
internal sealed class EventRanks(Shop shop, ImmutableDictionary<long, ToolMark> marks)
{
    private readonly ImmutableDictionary<long, long> named = ToolsNamed.In(shop);

    /// <summary>The entries in their order, under the marks given.</summary>
    /// <returns>The entries.</returns>
    public ImmutableArray<LedgerEntry> Ranked()
    {
        List<RankedEvent> events =
        [
            .. shop.Sessions.Values.Select(session => Event(new(session.Opening, default, default, session.Opened))),
            .. shop.EyesMeasured.Select(Event),
            .. shop.Tools.Values.SelectMany(Rows),
        ];
        events.Sort(
            (left, right) => (left.IsOfOpenSession, left.Place).CompareTo((right.IsOfOpenSession, right.Place))
        );
        StatesInOrder.Arrange(shop, events);
        return [.. events.Select(each => each.What)];
    }

    /// <summary>A tool's history with heats of one session and work that follow each other as one row.</summary>
    private List<RankedEvent> Rows(ToolInShop tool)
    {
        List<RankedEvent> rows = [];
        foreach ((HistoryPlace place, Entered entered) in shop.HistoryOf(tool))
        {
            if (
                entered.What is HeatsWorked more
                && rows.Count > 0
                && rows[^1].What is HeatsWorked last
                && Joins(last, more)
            )
            {
                rows[^1] = rows[^1] with { What = last with { Heats = last.Heats + more.Heats } };
            }
            else if (entered.What is not ToolStartedHere)
            {
                rows.Add(Event(tool, entered, place));
            }
        }

        return rows;
    }

    private static bool Joins(HeatsWorked last, HeatsWorked more) =>
        (last.Session, last.Work, last.How) == (more.Session, more.Work, more.How)
        && last.Heats + more.Heats <= Heats.MostAtOnce;

    private RankedEvent Event(Entered entered) => Event(null, entered, shop.PlaceOf(null, entered));

    private RankedEvent Event(ToolInShop? tool, Entered entered, HistoryPlace place) =>
        new(tool?.Id ?? 0, place, IsOfOpenSession(place, entered.What), Renamed(tool, entered));

    /// <summary>An open session of an earlier day than others cannot be opened among them again: it would still be open.</summary>
    private bool IsOfOpenSession(HistoryPlace place, LedgerEntry what) =>
        shop.OpenSession is { } open
        && place.Day == open.On
        && place.Opening >= open.Opening
        && place.Stage != HistoryStage.Before
        && what is not (ToolSetAside or ToolBroughtBack or ToolLent or ToolTakenBack or ToolScrapped)
        && shop.Sessions.Values.Any(session => session.On > open.On);

    private LedgerEntry Renamed(ToolInShop? tool, Entered entered)
    {
        ToolMark mark = tool is null ? default : marks[tool.Id];
        return entered.What switch
        {
            HeatsWorked e => e with { Tool = mark },
            ToolMeasured e => e with { Tool = mark },
            ToolReworked e => e with { Tool = mark },
            ToolLookedOver e => e with { Tool = mark },
            ToolSetAside e => e with { Tool = mark },
            ToolBroughtBack e => e with { Tool = mark },
            ToolLent e => e with { Tool = mark },
            ToolTakenBack e => e with { Tool = mark },
            ToolLookedFor e => e with { Tool = mark },
            ToolScrapped { Into: not null } e => e with { Tool = mark, Into = marks[named[entered.Number]] },
            ToolScrapped e => e with { Tool = mark },
            EyeMeasured { Tool: not null } e => e with { Tool = marks[named[entered.Number]] },
            LedgerEntry e => e,
        };
    }
}

/// <summary>Something that happened, with what its rank follows from.</summary>
/// <param name="Tool">The tool's number, 0 for none.</param>
/// <param name="Place">Its place in the history.</param>
/// <param name="IsOfOpenSession">Whether it waits until all sessions but the open one are through.</param>
/// <param name="What">The entry.</param>
internal sealed record RankedEvent(long Tool, HistoryPlace Place, bool IsOfOpenSession, LedgerEntry What);
