using ToolWear.Core.Ledger;

namespace ToolWear.Testing.NaiveShop;

/// <summary>A tool's history as the smith would tell it, day by day and session by session.</summary>
internal sealed class SlowHistory(SlowPresent present, SlowTool tool)
{
    /// <summary>The day on which the history tells an entry: a session's is its opening day, even past midnight.</summary>
    public static DateOnly DayOf(SlowPresent present, SlowTool tool, Entered entered) =>
        entered.What switch
        {
            HeatsWorked e => present.Session(e.Session)!.On,
            ToolMeasured { Session: { } session } => present.Session(session)!.On,
            ToolStartedHere when LastSessionBefore(present, tool, entered) is { } last => last.On,
            _ => OnOf(present, entered),
        };

    /// <summary>The day that an entry names itself.</summary>
    public static DateOnly OnOf(SlowPresent present, Entered entered) =>
        entered.What switch
        {
            HeatsWorked e => present.Session(e.Session)!.On,
            ToolMeasured e => e.On,
            ToolReworked e => e.On,
            ToolLookedOver e => e.On,
            ToolSetAside e => e.On,
            ToolBroughtBack e => e.On,
            ToolLent e => e.On,
            ToolTakenBack e => e.On,
            ToolLookedFor e => e.On,
            ToolScrapped e => e.On,
            _ => entered.Day,
        };

    /// <summary>The last session in which a tool had worked when something was entered.</summary>
    public static SessionOpened? LastSessionBefore(SlowPresent present, SlowTool tool, Entered entered) =>
        present
            .All<SessionOpened>()
            .Where(session => Works(tool, session, each => each.Number < entered.Number))
            .OrderBy(session => session.On)
            .ThenBy(session => present.OpeningOf(session.Session))
            .LastOrDefault();

    public IEnumerable<long> OfDay(DateOnly day)
    {
        List<Entered> left = [.. tool.Events.Where(each => DayOf(present, tool, each) == day).OrderBy(x => x.Number)];
        List<SessionOpened> sessions =
        [
            .. present.All<SessionOpened>().Where(each => each.On == day).OrderBy(x => present.OpeningOf(x.Session)),
        ];
        List<long> told = [];
        Tell(each => each.What is ToolStartedHere && LastSessionBefore(present, tool, each) is null);
        foreach (SessionOpened session in sessions)
        {
            long opening = present.OpeningOf(session.Session);
            Tell(each => (IsLoose(each) || IsReadBeforeAllWork(each, session)) && each.Number < opening);
            long lastHeat = Heats(session).Select(each => each.Number).DefaultIfEmpty().Max();
            Tell(each =>
                Heats(session).Contains(each)
                || IsStart(each, session)
                || (session == sessions[^1] && IsLoose(each) && each.Number < lastHeat)
            );
            Tell(each => IsAfter(each, session));
        }

        Tell(_ => true);
        return told;

        void Tell(Predicate<Entered> which)
        {
            told.AddRange(left.FindAll(which).Select(each => each.Number));
            left.RemoveAll(which);
        }
    }

    /// <summary>Whether an entry stands between heats as it was entered.</summary>
    private static bool IsLoose(Entered entered) => entered.What is ToolReworked or ToolLookedOver;

    /// <summary>Whether it was read outside every session, and the tool worked in none before this one.</summary>
    private bool IsReadBeforeAllWork(Entered entered, SessionOpened session) =>
        entered.What is ToolMeasured { Session: null }
        && !present
            .All<SessionOpened>()
            .Where(each => Works(tool, each, _ => true))
            .Any(each =>
                each.On < session.On
                || (each.On == session.On && present.OpeningOf(each.Session) < present.OpeningOf(session.Session))
            );

    private bool IsStart(Entered entered, SessionOpened session) =>
        entered.What is ToolStartedHere && LastSessionBefore(present, tool, entered) == session;

    private static bool IsAfter(Entered entered, SessionOpened session) =>
        entered.What is ToolMeasured measured && measured.Session == session.Session;

    private List<Entered> Heats(SessionOpened session) =>
        tool.Events.FindAll(each => each.What is HeatsWorked heats && heats.Session == session.Session);

    private static bool Works(SlowTool tool, SessionOpened session, Func<Entered, bool> which) =>
        tool.Events.Exists(each => each.What is HeatsWorked heats && heats.Session == session.Session && which(each));
}
