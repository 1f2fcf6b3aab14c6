using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>The ledger as it is being written, and beside it the tools as they truly are.</summary>
internal sealed class Diary
{
    private readonly Dictionary<string, TrueTool> tools = new(StringComparer.Ordinal);

    /// <summary>The shop so far.</summary>
    public Shop Shop { get; private set; } = Shop.Empty;

    /// <summary>The tool of a mark as it truly is.</summary>
    public TrueTool this[string mark] => tools[mark];

    /// <summary>Writes what happened. A shop that refuses its own demo is a fault of the demo, so it throws.</summary>
    /// <param name="day">The day on which it was written down.</param>
    /// <param name="what">What happened.</param>
    public void Write(DateOnly day, LedgerEntry what)
    {
        DateTimeOffset at = new(day, new TimeOnly(18, 0), TimeSpan.Zero);
        Step step = Shop.After(new Entered(Shop.NextNumber, at, day, what));
        Shop = step.After ?? throw new InvalidOperationException($"{day:yyyy-MM-dd}, {what}: {step.Refusal}");
        if (what is ToolAdded added)
        {
            tools[added.Tool.Mark.Text] = new(added.Tool);
        }
    }

    /// <summary>Works a tool: the ledger gets the heats, the tool its wear.</summary>
    public void Work(DaysWork session, Share share)
    {
        HeatsWorked heats = new(session.Name, Mark(share.Tool), share.Work, share.Heats, share.How);
        Write(session.On, heats);
        TrueTool tool = tools[share.Tool];
        tool.Work(Shop.Weighted(tool.Tool, heats), session.Fire);
    }

    /// <summary>Looks a tool over.</summary>
    public void LookOver(
        DateOnly day,
        string tool,
        Finding finding,
        string by,
        string? note = null,
        ToolPart? part = null
    ) => Write(day, new ToolLookedOver(Mark(tool), day, finding, by, note, part));

    /// <summary>Measures a tool at a gauge mark.</summary>
    public void Measure(
        DateOnly day,
        string tool,
        string gauge,
        string? session,
        string by,
        double slipMm = 0,
        string? note = null
    ) => Write(day, new ToolMeasured(Mark(tool), gauge, day, session, tools[tool].Read(gauge, slipMm), null, by, note));

    /// <summary>Reworks a tool with no size changed at a gauge mark.</summary>
    public void Rework(DateOnly day, string tool, Rework what, decimal hours, string? note) =>
        Write(day, new ToolReworked(Mark(tool), day, what, null, null, null, hours, null, note));

    /// <summary>Reworks a tool at a gauge mark and reads it before and after.</summary>
    /// <param name="day">The day.</param>
    /// <param name="tool">The tool's mark.</param>
    /// <param name="what">What was done.</param>
    /// <param name="gauge">The gauge mark.</param>
    /// <param name="byMm">What it gained there, below zero for what it lost.</param>
    /// <param name="hours">How long it took, null where it was part of another rework.</param>
    /// <param name="note">A note.</param>
    /// <param name="cost">What it cost besides, null where nothing was noted.</param>
    public void Rework(
        DateOnly day,
        string tool,
        Rework what,
        string gauge,
        double byMm,
        decimal? hours,
        string? note = null,
        decimal? cost = null
    )
    {
        TrueTool truth = tools[tool];
        Core.Measure.Length before = truth.Read(gauge, isGround: true);
        truth.Rework(gauge, byMm);
        Write(
            day,
            new ToolReworked(Mark(tool), day, what, gauge, before, truth.Read(gauge, isGround: true), hours, cost, note)
        );
    }

    /// <summary>Scraps a tool.</summary>
    public void Scrap(
        DateOnly day,
        string tool,
        ScrapCause cause,
        string? note = null,
        ToolPart? part = null,
        LedTo? led = null
    ) => Write(day, new ToolScrapped(Mark(tool), day, cause, null, note, part, led));
}
