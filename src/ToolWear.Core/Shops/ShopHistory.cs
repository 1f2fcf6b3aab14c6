using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>What happened to a tool, in the order in which it happened.</summary>
public static class ShopHistory
{
    /// <summary>The history of a tool: its heats, readings, reworks, findings and changes of state in their order.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>The entries with their places, first to last.</returns>
    public static ImmutableArray<(HistoryPlace Place, Entered Entered)> HistoryOf(this Shop shop, ToolInShop tool)
    {
        (HistoryPlace Place, Entered Entered)[] history = new (HistoryPlace, Entered)[tool.Events.Count];
        int at = 0;
        bool isInOrder = true;
        foreach (Entered entered in tool.Events)
        {
            history[at] = (shop.PlaceOf(tool, entered), entered);
            isInOrder &= at == 0 || history[at - 1].Place < history[at].Place;
            at++;
        }

        // most of it is entered as it happens; no two places are the same
        if (!isInOrder)
        {
            Array.Sort(history, (one, other) => one.Place.CompareTo(other.Place));
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(history);
    }

    /// <summary>The place of an entry that has no tool, or of a tool's entry, in the history of the shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool it speaks of, null for a session or an eye.</param>
    /// <param name="entered">The entry.</param>
    /// <returns>Its place.</returns>
    public static HistoryPlace PlaceOf(this Shop shop, ToolInShop? tool, Entered entered) =>
        entered.What switch
        {
            SessionOpened e => new(e.On, entered.Number, HistoryStage.Opening, entered.Number),
            HeatsWorked e => InSession(shop, e.Session, HistoryStage.During, entered),
            ToolMeasured { Session: { } session } => InSession(shop, session, HistoryStage.After, entered),
            ToolMeasured e => WithoutSession(shop, tool, e.On, entered.Number),
            EyeMeasured { Session: { } session } => InSession(shop, session, HistoryStage.After, entered),
            ToolReworked e => AsEntered(shop, tool, e.On, entered.Number),
            ToolLookedOver e => AsEntered(shop, tool, e.On, entered.Number),
            ToolStartedHere => AfterWhatItWorked(shop, tool, entered),
            _ => HistoryPlace.AfterAll(DayOf(shop, entered), entered.Number),
        };

    /// <summary>How much heats count for a tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="heats">The heats.</param>
    /// <returns>Weighted heats.</returns>
    public static double Weighted(this Shop shop, Tool tool, HeatsWorked heats) =>
        heats.Heats.Count * shop.WeightOf(tool, heats.Work, shop.SessionShelf[heats.Session].Opened.Pattern);

    /// <summary>How much a heat as worked counts: the shop's factor for its place and the work, times the pattern's load.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="work">The work.</param>
    /// <param name="pattern">The pattern's name; null for none.</param>
    /// <returns>Weighted heats, zero or more.</returns>
    public static double WeightOf(this Shop shop, Tool tool, Work work, string? pattern) =>
        (work == tool.MainWork ? 1 : shop.Settings.Factor(tool.Place, work)) * LoadOf(shop, tool, work, pattern);

    /// <summary>How many heats a tool is guessed to last: by the smith's word for it, by its series, else the shop's first
    /// guess for its form, place and steel.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>Weighted heats above zero, and whether nobody said it.</returns>
    public static (double Heats, bool IsAssumed) GuessOf(this Shop shop, Tool tool) =>
        (tool.GuessHeats ?? shop.SeriesOf(tool)?.GuessHeats) is { } said
            ? (said, false)
            : (shop.Settings.GuessHeats(tool.Form, tool.Place, tool.Steel), true);

    /// <summary>The day an entry belongs to.</summary>
    private static DateOnly DayOf(Shop shop, Entered entered) =>
        entered.What switch
        {
            SessionOpened e => e.On,
            HeatsWorked e => shop.SessionShelf[e.Session].On,
            ToolMeasured e => e.Session is { } session ? shop.SessionShelf[session].On : e.On,
            ToolReworked e => e.On,
            ToolLookedOver e => e.On,
            EyeMeasured e => e.On,
            ToolSetAside e => e.On,
            ToolBroughtBack e => e.On,
            ToolLent e => e.On,
            ToolTakenBack e => e.On,
            ToolLookedFor e => e.On,
            ToolScrapped e => e.On,
            _ => entered.Day,
        };

    /// <summary>The day an entry names itself: a reading of the next morning follows a session but was taken later.</summary>
    internal static DateOnly SaidOn(this Shop shop, Entered entered) =>
        entered.What is ToolMeasured e ? e.On : DayOf(shop, entered);

    private static HistoryPlace InSession(Shop shop, string name, HistoryStage stage, Entered entered)
    {
        Session session = shop.SessionShelf[name];
        return new(session.On, session.Opening, stage, entered.Number);
    }

    // what was read of a tool before its first session is what that session began with. Asked by the order of sessions,
    // not of entries, so that export and import tell it alike
    private static HistoryPlace WithoutSession(Shop shop, ToolInShop? tool, DateOnly on, long number)
    {
        Session? next = shop.SessionsOn(on).FirstOrDefault(session => session.Opening > number);
        bool isFirst =
            next is not null
            && tool is not null
            && !tool.Events.Exists(each =>
                each.What is HeatsWorked heats
                && shop.SessionShelf[heats.Session] is var worked
                && (worked.On, worked.Opening).CompareTo((next.On, next.Opening)) < 0
            );
        return isFirst ? new(on, next!.Opening, HistoryStage.Before, number) : HistoryPlace.AfterAll(on, number);
    }

    private static HistoryPlace AsEntered(Shop shop, ToolInShop? tool, DateOnly on, long number)
    {
        Session? next = shop.SessionsOn(on).FirstOrDefault(session => session.Opening > number);
        if (next is not null)
        {
            return new(on, next.Opening, HistoryStage.Before, number);
        }

        Session? last = shop.SessionsOn(on).LastOrDefault();
        bool goesOn =
            last is not null
            && tool is not null
            && tool.Events.Exists(each =>
                each.Number > number && each.What is HeatsWorked heats && heats.Session == last.Name
            );
        return goesOn ? new(on, last!.Opening, HistoryStage.During, number) : HistoryPlace.AfterAll(on, number);
    }

    /// <summary>A start anew stands after the heats entered so far, before the readings that name their session.</summary>
    private static HistoryPlace AfterWhatItWorked(Shop shop, ToolInShop? tool, Entered entered)
    {
        Session? last = tool
            ?.Events.Where(each => each.Number < entered.Number)
            .Select(each => each.What is HeatsWorked heats ? shop.SessionShelf[heats.Session] : null)
            .MaxBy(session => (session?.On, session?.Opening));
        return last is null
            ? new(entered.Day, 0, HistoryStage.Before, entered.Number)
            : new(last.On, last.Opening, HistoryStage.During, entered.Number);
    }

    private static double LoadOf(Shop shop, Tool tool, Work work, string? name)
    {
        if (name is null || !shop.Patterns.TryGetValue(name, out PatternDescribed? pattern))
        {
            return 1;
        }

        ImmutableArray<PatternStage> stages =
        [
            .. pattern.Stages.Where(stage => stage.Form == tool.Form && stage.Place == tool.Place),
        ];
        PatternStage? stage = stages.FirstOrDefault(each => each.Work == work) ?? stages.FirstOrDefault();
        return stage?.Load ?? 1;
    }
}
