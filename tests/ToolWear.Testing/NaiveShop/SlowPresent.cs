using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.NaiveShop;

/// <summary>What a list of standing entries comes to, read through from the start for each question.</summary>
/// <param name="standing">The entries that count, in the order of the ledger.</param>
internal sealed class SlowPresent(IReadOnlyList<Entered> standing)
{
    public IEnumerable<T> All<T>()
        where T : LedgerEntry => standing.Select(entered => entered.What).OfType<T>();

    public SessionOpened? Session(string name) => All<SessionOpened>().FirstOrDefault(each => each.Session == name);

    public long OpeningOf(string name) =>
        standing.First(each => each.What is SessionOpened opened && opened.Session == name).Number;

    public bool IsOpen(string name) => Session(name) is not null && All<SessionClosed>().All(x => x.Session != name);

    public int? HeadsOf(string name) => All<SessionClosed>().FirstOrDefault(each => each.Session == name)?.Heads;

    public int HeadsAt(string session, string stage) =>
        All<HeadsDone>().Where(each => each.Session == session && each.Stage == stage).Sum(each => each.Heads);

    /// <summary>Heads by stage in the order of the stages' names: "open 3, cheeks 2".</summary>
    public string StagesOf(string session) =>
        string.Join(
            ", ",
            All<HeadsDone>()
                .Where(each => each.Session == session)
                .Select(each => each.Stage)
                .Distinct()
                .Order(StringComparer.Ordinal)
                .Select(stage => $"{stage} {HeadsAt(session, stage)}")
        );

    public SlowTool? Find(ToolMark mark) => Find(Tools(), mark);

    public List<SlowTool> Tools()
    {
        List<SlowTool> tools = [];
        foreach (Entered entered in standing)
        {
            Happen(tools, entered);
        }

        return tools;
    }

    /// <summary>The numbers of a tool's entries in the order in which they happened.</summary>
    public List<long> HistoryOf(SlowTool tool)
    {
        List<long> history = [];
        IEnumerable<DateOnly> days = tool
            .Events.Select(entered => SlowHistory.DayOf(this, tool, entered))
            .Distinct()
            .Order();
        foreach (DateOnly day in days)
        {
            history.AddRange(new SlowHistory(this, tool).OfDay(day));
        }

        return history;
    }

    public double Weighted(SlowTool tool, HeatsWorked heats)
    {
        double load = 1;
        PatternDescribed? pattern = All<PatternDescribed>()
            .LastOrDefault(each => each.Pattern == Session(heats.Session)!.Pattern);
        foreach (PatternStage stage in pattern?.Stages.Reverse() ?? [])
        {
            load = Fits(stage) ? stage.Load ?? 1 : load;
        }

        foreach (PatternStage stage in pattern?.Stages.Reverse() ?? [])
        {
            load = Fits(stage) && stage.Work == heats.Work ? stage.Load ?? 1 : load;
        }

        return heats.Heats.Halves * 0.5 * Factor(tool.Tool, heats.Work) * load;

        bool Fits(PatternStage stage) =>
            stage.Form is { } form && form.Name == tool.Tool.Form.Name && stage.Place == tool.Tool.Place;
    }

    private double Factor(Tool tool, Work work)
    {
        if (work == tool.Form.MainWork(tool.Place))
        {
            return 1;
        }

        string name = $"factor_{Places.Words.Word(tool.Place)}_{Works.Words.Word(work)}";
        string? said = All<SettingChanged>().LastOrDefault(each => each.Setting == name)?.Value;
        return string.IsNullOrEmpty(said)
            ? (tool.Place, work) switch
            {
                (Place.Rough, Work.Opening) or (Place.Rough, Work.Sizing) => 0.25,
                (Place.Second, Work.Opening) or (Place.Second, Work.Sizing) => 0.25,
                (Place.Finish, Work.Cheeks) => 4,
                _ => 1,
            }
            : double.Parse(said, System.Globalization.CultureInfo.InvariantCulture);
    }

    private static SlowTool? Find(List<SlowTool> tools, ToolMark mark) =>
        tools.Find(each => each.Mark == mark && each.State != ToolState.Scrapped)
        ?? tools.Where(each => each.Mark == mark).MaxBy(each => each.ScrapRank);

    private static void Happen(List<SlowTool> tools, Entered entered)
    {
        switch (entered.What)
        {
            case ToolAdded e:
                tools.Add(new(entered.Number, e.Tool));
                return;
            case ToolCorrected e:
                Find(tools, e.Tool.Mark)!.Tool = e.Tool;
                return;
            case ToolRemarked e:
                Find(tools, e.From)!.Mark = e.To;
                return;
            case EyeMeasured:
                return;
        }

        if (entered.What.Tools.IsEmpty)
        {
            return;
        }

        SlowTool tool = Find(tools, entered.What.Tools[0])!;
        switch (entered.What)
        {
            case ToolStartedHere:
                tool.StartUnknown = true;
                tool.ForgetSizes();
                break;
            case ToolSetAside e:
                (tool.State, tool.StateOn) = (ToolState.SetAside, e.On);
                break;
            case ToolLent e:
                (tool.State, tool.StateOn, tool.IsLent) = (ToolState.SetAside, e.On, true);
                break;
            case ToolTakenBack e:
                (tool.State, tool.StateOn, tool.IsLent) = (ToolState.InService, e.On, false);
                break;
            case ToolBroughtBack e:
                (tool.State, tool.StateOn) = (ToolState.InService, e.On);
                break;
            case ToolScrapped e:
                tool.ScrapRank = tools.Count(each => each.State == ToolState.Scrapped) + 1;
                (tool.State, tool.StateOn) = (ToolState.Scrapped, e.On);
                break;
        }

        tool.Events.Add(entered);
    }
}
