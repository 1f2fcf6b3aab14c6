using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.NaiveShop;

/// <summary>Whether an entry can follow what stands, rule by rule.</summary>
internal sealed class SlowRules(SlowPresent present, Entered entered)
{
    public bool Holds() =>
        entered.What switch
        {
            ToolAdded e => IsFree(e.Tool.Mark) && !(e.Tool.MadeOn > entered.Day),
            ToolCorrected e => CanCorrect(e.Tool),
            ToolRemarked e => IsInUse(e.From) && IsFree(e.To),
            ToolStartedHere e => IsInUse(e.Tool),
            ToolSetAside e => CanChange(e.Tool, e.On, ToolState.InService),
            ToolBroughtBack e => CanChange(e.Tool, e.On, ToolState.SetAside) && !present.Find(e.Tool)!.IsLent,
            ToolLent e => e.To.Trim().Length > 0 && CanChange(e.Tool, e.On, ToolState.InService),
            ToolTakenBack e => CanChange(e.Tool, e.On, ToolState.SetAside) && present.Find(e.Tool)!.IsLent,
            ToolLookedFor e => CanHappen(e.Tool, e.On),
            ToolScrapped e => CanScrap(e),
            SessionOpened e => present.Session(e.Session) is null
                && present.All<SessionOpened>().All(each => !present.IsOpen(each.Session))
                && e.On <= entered.Day
                && e.Care.Blows is not (< 1 or > 1000),
            SessionClosed e => present.IsOpen(e.Session) && e.Heads is not (< 0 or > 10_000),
            HeatsWorked e => CanWork(e),
            HeadsDone e => CanCount(e),
            ToolMeasured e => CanMeasure(e),
            ToolReworked e => CanHappen(e.Tool, e.On)
                && (e.Gauge is null || present.Find(e.Tool)!.HasGauge(e.Gauge))
                && IsSize(e.Before)
                && IsSize(e.After),
            ToolLookedOver e => CanHappen(e.Tool, e.On),
            EyeMeasured e => e.On <= entered.Day
                && (e.Session is null || present.Session(e.Session) is not null)
                && (e.Tool is null || present.Find(e.Tool.Value) is not null)
                && AreSizes(e.Length, e.Width),
            EyeDescribed e => AreSizes(e.Length, e.Width, e.Depth),
            HandleDescribed e => AreSizes(e.Length, e.Width, e.SeatTolerance),
            SeriesDescribed e => AreSizes(e.Series.Length, e.Series.Width),
            PatternDescribed or SettingChanged => true,
            BarDescribed e => AreSizes(e.A, e.B, e.Length),
            OrderDescribed e => present.All<PatternDescribed>().Any(each => each.Pattern == e.Pattern)
                && e.Heads is >= 1 and <= 100_000,
            _ => throw new InvalidOperationException($"No rule for {entered.What.GetType().Name}."),
        };

    private bool IsInUse(ToolMark mark) => present.Find(mark) is { State: not ToolState.Scrapped };

    private bool IsFree(ToolMark mark) => !IsInUse(mark);

    private bool CanHappen(ToolMark mark, DateOnly on) =>
        present.Find(mark) is { } tool
        && on <= entered.Day
        && !(on < tool.Tool.MadeOn)
        && (tool.State != ToolState.Scrapped || on <= tool.StateOn);

    private bool CanChange(ToolMark mark, DateOnly on, ToolState from) =>
        CanHappen(mark, on) && present.Find(mark)!.State == from && on >= present.Find(mark)!.StateOn;

    private bool CanCorrect(Tool tool)
    {
        if (!IsInUse(tool.Mark) || tool.MadeOn > entered.Day)
        {
            return false;
        }

        SlowTool after = new(0, tool);
        foreach (Entered each in present.Find(tool.Mark)!.Events)
        {
            string? gauge = (each.What as ToolMeasured)?.Gauge ?? (each.What as ToolReworked)?.Gauge;
            if ((gauge is not null && !after.HasGauge(gauge)) || SlowHistory.OnOf(present, each) < tool.MadeOn)
            {
                return false;
            }
        }

        return true;
    }

    private bool CanScrap(ToolScrapped e)
    {
        if (!CanHappen(e.Tool, e.On) || !IsInUse(e.Tool))
        {
            return false;
        }

        SlowTool tool = present.Find(e.Tool)!;
        bool named = e.Into is not { } into || (into != e.Tool && present.Find(into) is not null);
        return named && e.On >= tool.StateOn && tool.Events.TrueForAll(each => SlowHistory.OnOf(present, each) <= e.On);
    }

    private bool CanWork(HeatsWorked e)
    {
        if (present.Session(e.Session) is not { } session || e.Heats.Halves is < 1 or > 2000)
        {
            return false;
        }

        return present.Find(e.Tool) is { } tool && session.On <= entered.Day && !(session.On < tool.Tool.MadeOn);
    }

    private bool CanCount(HeadsDone e) =>
        e.Heads >= 1
        && present.HeadsAt(e.Session, e.Stage) + e.Heads <= 10_000
        && present.Session(e.Session)?.Pattern is { } pattern
        && present.All<PatternDescribed>().LastOrDefault(each => each.Pattern == pattern) is { } described
        && described.Stages.Any(stage => stage.Name == e.Stage);

    private bool CanMeasure(ToolMeasured e)
    {
        if (
            !CanHappen(e.Tool, e.On)
            || !present.Find(e.Tool)!.HasGauge(e.Gauge)
            || e.Size.Nanometres is <= 0 or > 10_000_000_000
            || e.Resolution is { Nanometres: <= 0 }
        )
        {
            return false;
        }

        SessionOpened? session = e.Session is null ? null : present.Session(e.Session);
        if (e.Session is not null && (session is null || e.On < session.On))
        {
            return false;
        }

        SlowTool tool = present.Find(e.Tool)!;
        return tool.Events.Where(each => each.What is ToolStartedHere).All(started => Follows(tool, started, e));
    }

    private bool Follows(SlowTool tool, Entered started, ToolMeasured e)
    {
        if (e.On < started.Day)
        {
            return false;
        }

        if (e.Session is null)
        {
            return true;
        }

        SessionOpened named = present.Session(e.Session)!;
        return SlowHistory.LastSessionBefore(present, tool, started) is { } last
            ? (named.On, present.OpeningOf(named.Session)).CompareTo((last.On, present.OpeningOf(last.Session))) >= 0
            : named.On >= started.Day;
    }

    private static bool IsSize(Length? size) => size is null or { Nanometres: > 0 and <= 10_000_000_000 };

    private static bool AreSizes(params Length?[] sizes) => Array.TrueForAll(sizes, IsSize);
}
