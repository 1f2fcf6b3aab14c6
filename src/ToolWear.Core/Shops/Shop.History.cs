using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <content>What happened to a tool, in the order in which it happened.</content>
public sealed partial record Shop
{
    /// <summary>The history of a tool: its heats, readings, reworks, findings and changes of state in their order.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The entries with their places, first to last.</returns>
    public ImmutableArray<(HistoryPlace Place, Entered Entered)> HistoryOf(ToolInShop tool)
    {
        (HistoryPlace Place, Entered Entered)[] history = new (HistoryPlace, Entered)[tool.Events.Count];
        int at = 0;
        bool isInOrder = true;
        foreach (Entered entered in tool.Events)
        {
            history[at] = (PlaceOf(tool, entered), entered);
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
    /// <param name="tool">The tool it speaks of, null for a session or an eye.</param>
    /// <param name="entered">The entry.</param>
    /// <returns>Its place.</returns>
    public HistoryPlace PlaceOf(ToolInShop? tool, Entered entered) =>
        entered.What switch
        {
            SessionOpened e => new(e.On, entered.Number, HistoryStage.Opening, entered.Number),
            HeatsWorked e => InSession(e.Session, HistoryStage.During, entered),
            ToolMeasured { Session: { } session } => InSession(session, HistoryStage.After, entered),
            ToolMeasured e => WithoutSession(tool, e.On, entered.Number),
            EyeMeasured { Session: { } session } => InSession(session, HistoryStage.After, entered),
            ToolReworked e => AsEntered(tool, e.On, entered.Number),
            ToolLookedOver e => AsEntered(tool, e.On, entered.Number),
            ToolStartedHere => AfterWhatItWorked(tool, entered),
            _ => HistoryPlace.AfterAll(DayOf(entered), entered.Number),
        };

    /// <summary>How much a heat of a tool counts: the shop's factor for its place and the work, times the pattern's load.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="heats">The heats.</param>
    /// <returns>Weighted heats.</returns>
    public double Weighted(Tool tool, HeatsWorked heats)
    {
        double factor = heats.Work == tool.MainWork ? 1 : Settings.Factor(tool.Place, heats.Work);
        return heats.Heats.Count * factor * LoadOf(tool, heats);
    }

    /// <summary>The day an entry belongs to.</summary>
    private DateOnly DayOf(Entered entered) =>
        entered.What switch
        {
            SessionOpened e => e.On,
            HeatsWorked e => sessions[e.Session].On,
            ToolMeasured e => e.Session is { } session ? sessions[session].On : e.On,
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
    private DateOnly SaidOn(Entered entered) => entered.What is ToolMeasured e ? e.On : DayOf(entered);

    private HistoryPlace InSession(string name, HistoryStage stage, Entered entered)
    {
        Session session = sessions[name];
        return new(session.On, session.Opening, stage, entered.Number);
    }

    // what was read of a tool before its first session is what that session began with. Asked by the order of sessions,
    // not of entries, so that export and import tell it alike
    private HistoryPlace WithoutSession(ToolInShop? tool, DateOnly on, long number)
    {
        Session? next = SessionsOn(on).FirstOrDefault(session => session.Opening > number);
        bool isFirst =
            next is not null
            && tool is not null
            && !tool.Events.Exists(each =>
                each.What is HeatsWorked heats
                && sessions[heats.Session] is var worked
                && (worked.On, worked.Opening).CompareTo((next.On, next.Opening)) < 0
            );
        return isFirst ? new(on, next!.Opening, HistoryStage.Before, number) : HistoryPlace.AfterAll(on, number);
    }

    private HistoryPlace AsEntered(ToolInShop? tool, DateOnly on, long number)
    {
        Session? next = SessionsOn(on).FirstOrDefault(session => session.Opening > number);
        if (next is not null)
        {
            return new(on, next.Opening, HistoryStage.Before, number);
        }

        Session? last = SessionsOn(on).LastOrDefault();
        bool goesOn =
            last is not null
            && tool is not null
            && tool.Events.Exists(each =>
                each.Number > number && each.What is HeatsWorked heats && heats.Session == last.Name
            );
        return goesOn ? new(on, last!.Opening, HistoryStage.During, number) : HistoryPlace.AfterAll(on, number);
    }

    /// <summary>A start anew stands after the heats entered so far, before the readings that name their session.</summary>
    private HistoryPlace AfterWhatItWorked(ToolInShop? tool, Entered entered)
    {
        Session? last = tool
            ?.Events.Where(each => each.Number < entered.Number)
            .Select(each => each.What is HeatsWorked heats ? sessions[heats.Session] : null)
            .MaxBy(session => (session?.On, session?.Opening));
        return last is null
            ? new(entered.Day, 0, HistoryStage.Before, entered.Number)
            : new(last.On, last.Opening, HistoryStage.During, entered.Number);
    }

    private double LoadOf(Tool tool, HeatsWorked heats)
    {
        if (
            sessions[heats.Session].Opened.Pattern is not { } name
            || !Patterns.TryGetValue(name, out PatternDescribed? pattern)
        )
        {
            return 1;
        }

        ImmutableArray<PatternStage> stages =
        [
            .. pattern.Stages.Where(stage => stage.Form == tool.Form && stage.Place == tool.Place),
        ];
        PatternStage? stage = stages.FirstOrDefault(each => each.Work == heats.Work) ?? stages.FirstOrDefault();
        return stage?.Load ?? 1;
    }
}
