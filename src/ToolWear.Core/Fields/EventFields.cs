using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>A session as one row tells it.</summary>
/// <param name="Opened">Its opening.</param>
/// <param name="Heads">Heads that it finished; null where nobody said.</param>
/// <param name="Closed">Whether it is closed; null counts as closed.</param>
public sealed record SessionSaid(SessionOpened Opened, int? Heads, bool? Closed);

/// <summary>A tool laid aside or brought back.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="IsAside">True where it was laid aside.</param>
/// <param name="Why">Why, null where nobody said.</param>
public sealed record AsideSaid(ToolMark Tool, DateOnly On, bool IsAside, string? Why)
{
    /// <summary>What is told of an entry.</summary>
    /// <param name="what">The entry.</param>
    /// <returns>What is told; null of an entry of another kind.</returns>
    public static AsideSaid? Of(LedgerEntry what) =>
        what switch
        {
            ToolSetAside e => new(e.Tool, e.On, true, e.Why),
            ToolBroughtBack e => new(e.Tool, e.On, false, e.Why),
            _ => null,
        };

    /// <summary>The entry that is told.</summary>
    /// <returns>The entry.</returns>
    public LedgerEntry Entry() => IsAside ? new ToolSetAside(Tool, On, Why) : new ToolBroughtBack(Tool, On, Why);
}

/// <summary>A tool lent out or taken back.</summary>
/// <param name="Tool">The tool's mark.</param>
/// <param name="On">The day.</param>
/// <param name="IsOut">True where it was lent.</param>
/// <param name="Who">Who has it; null where it is back.</param>
/// <param name="Note">A note, null where none.</param>
public sealed record LoanSaid(ToolMark Tool, DateOnly On, bool IsOut, string? Who, string? Note)
{
    /// <summary>What is told of an entry.</summary>
    /// <param name="what">The entry.</param>
    /// <returns>What is told; null of an entry of another kind.</returns>
    public static LoanSaid? Of(LedgerEntry what) =>
        what switch
        {
            ToolLent e => new(e.Tool, e.On, true, e.To, e.Note),
            ToolTakenBack e => new(e.Tool, e.On, false, null, e.Note),
            _ => null,
        };

    /// <summary>The entry that is told.</summary>
    /// <returns>The entry.</returns>
    public LedgerEntry Entry() => IsOut ? new ToolLent(Tool, On, Who ?? "", Note) : new ToolTakenBack(Tool, On, Note);
}

/// <summary>The fields of what happens in the shop.</summary>
public static class EventFields
{
    private static readonly FieldKind<Heats?> HeatsInARow = HeatsInHalves with
    {
        Fault = heats =>
            heats < Heats.Half || heats > Heats.MostAtOnce ? $"{heats} heats in one row; 0.5 to 1000 can be" : null,
    };

    /// <summary>Sessions.</summary>
    public static FieldTable<SessionSaid> Sessions { get; } =
        new FieldTable<SessionSaid>("sessions.csv", new(new("", default, null, Care.Usual, null, null), null, null))
            .Of(
                new FieldTable<SessionOpened>("sessions.csv", new("", default, null, Care.Usual, null, null))
                    .Key("session", Name, s => s.Session, (s, v) => s with { Session = v! })
                    .Means("the session's name")
                    .Needs("on", PastDay, s => s.On, (s, v) => s with { On = v!.Value })
                    .Means("the day, as year-month-day", "Day")
                    .Maybe("pattern", Text, s => s.Pattern, (s, v) => s with { Pattern = v }),
                s => s.Opened,
                (s, v) => s with { Opened = v }
            )
            .Maybe("heads", Whole(), s => s.Heads, (s, v) => s with { Heads = v })
            .Means("heads forged in it")
            .Of(
                new FieldTable<Care>("sessions.csv", Care.Usual)
                    .Maybe("lubricant", Text, c => c.Lubricant, (c, v) => c with { Lubricant = v })
                    .Means("the lubricant of the session, else the shop's usual", "Lubricant")
                    .Maybe("cooling", Word(Care.CoolingWords), c => c.Cooling, (c, v) => c with { Cooling = v })
                    .Means("what cools the tool between heats", "Cooling")
                    .Maybe("blows", Whole(), c => c.Blows, (c, v) => c with { Blows = v })
                    .Means("blows before the tool comes out of the work", "Blows"),
                s => s.Opened.Care,
                (s, v) => s with { Opened = s.Opened with { Care = v } }
            )
            .Maybe("hand", Text, s => s.Opened.Hand, (s, v) => s with { Opened = s.Opened with { Hand = v } })
            .Means("who worked in it", "Who works")
            .Maybe("closed", YesNo, s => s.Closed, (s, v) => s with { Closed = v })
            .Means("no where it is open still")
            .Maybe("note", Note, s => s.Opened.Note, (s, v) => s with { Opened = s.Opened with { Note = v } })
            .Means("a note, or nothing", "Note");

    /// <summary>Heats as worked, those of one session, tool and work that follow each other in one row.</summary>
    public static FieldTable<HeatsWorked> Worked { get; } =
        new FieldTable<HeatsWorked>("heats.csv", new("", default, Work.Other, Heats.None, HeatsHow.Counted))
            .Needs("session", Name, h => h.Session, (h, v) => h with { Session = v! })
            .Means("", like: Kept.Sessions)
            .Needs("tool", Mark, h => h.Tool, (h, v) => h with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Called("mark", "stamp", "tool mark", "tool no", "tool number")
            .Needs("work", Word(Works.Words), h => h.Work, (h, v) => h with { Work = v!.Value })
            .Means("the work done")
            .Needs("heats", HeatsInARow, h => h.Heats, (h, v) => h with { Heats = v!.Value })
            .Means("heats as worked, in halves")
            .Maybe("how", Word(HeatsWorked.HowWords), h => h.How, (h, v) => h with { How = v ?? HeatsHow.Counted })
            .Means("how heats are known");

    /// <summary>Readings.</summary>
    public static FieldTable<ToolMeasured> Readings { get; } =
        new FieldTable<ToolMeasured>("readings.csv", new(default, "", default, null, Length.Zero, null, null, null))
            .Needs("tool", Mark, r => r.Tool, (r, v) => r with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Called("mark", "stamp", "tool mark", "tool no", "tool number")
            .Needs("gauge", Name, r => r.Gauge, (r, v) => r with { Gauge = v! })
            .Means("the gauge mark's name", like: Kept.GaugeMarks)
            .Called("gauge mark")
            .Needs("on", PastDay, r => r.On, (r, v) => r with { On = v!.Value })
            .Called("day", "date", "measured on", "read on")
            .Maybe("session", Name, r => r.Session, (r, v) => r with { Session = v })
            .Means("", like: Kept.Sessions)
            .Needs("size_mm", Size, r => r.Size, (r, v) => r with { Size = v!.Value })
            .Called("size now", "current size", "reading", "measured")
            .Maybe("resolution_mm", Size, r => r.Resolution, (r, v) => r with { Resolution = v })
            .Maybe("by", Text, r => r.By, (r, v) => r with { By = v })
            .Means("who measured, looked or found")
            .Called("who", "measured by", "read by")
            .Maybe("note", Note, r => r.Note, (r, v) => r with { Note = v })
            .Called("notes", "remark", "remarks", "comment", "comments");

    /// <summary>Reworks.</summary>
    public static FieldTable<ToolReworked> Reworks { get; } =
        new FieldTable<ToolReworked>(
            "reworks.csv",
            new(default, default, Rework.Dressed, null, null, null, null, null, null)
        )
            .Needs("tool", Mark, r => r.Tool, (r, v) => r with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs("on", PastDay, r => r.On, (r, v) => r with { On = v!.Value })
            .Needs("what", Word(ToolReworked.WhatWords), r => r.What, (r, v) => r with { What = v!.Value })
            .Means("what was done", "What")
            .Maybe("gauge", Name, r => r.Gauge, (r, v) => r with { Gauge = v })
            .Means("the gauge mark whose size it changed; empty where it changed none", "Gauge mark", Kept.GaugeMarks)
            .Maybe("before_mm", Size, r => r.Before, (r, v) => r with { Before = v })
            .Means("the size before a rework", "Size before")
            .Maybe("after_mm", Size, r => r.After, (r, v) => r with { After = v })
            .Means("the size after a rework", "Size after")
            .Maybe("hours", Hours, r => r.Hours, (r, v) => r with { Hours = v })
            .Means("hours that it took")
            .Maybe("cost", Amount, r => r.Cost, (r, v) => r with { Cost = v })
            .Means("what it cost besides the hours")
            .Maybe("note", Note, r => r.Note, (r, v) => r with { Note = v });

    /// <summary>What was found when tools were looked over.</summary>
    public static FieldTable<ToolLookedOver> Findings { get; } =
        new FieldTable<ToolLookedOver>("findings.csv", new(default, default, Finding.Sound, null, null))
            .Needs("tool", Mark, f => f.Tool, (f, v) => f with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs("on", PastDay, f => f.On, (f, v) => f with { On = v!.Value })
            .Needs(
                "finding",
                Word(ToolLookedOver.FindingWords),
                f => f.Finding,
                (f, v) => f with { Finding = v!.Value }
            )
            .Means("what was found")
            .Maybe("by", Text, f => f.By, (f, v) => f with { By = v })
            .Maybe("note", Note, f => f.Note, (f, v) => f with { Note = v })
            .Maybe("part", Word(ToolLookedOver.PartWords), f => f.Part, (f, v) => f with { Part = v })
            .Means("where on the tool it was found; empty counts as the strictest place");

    /// <summary>Finished eyes, measured cold.</summary>
    public static FieldTable<EyeMeasured> EyesMeasured { get; } =
        new FieldTable<EyeMeasured>("eyes-measured.csv", new("", default, null, null, null, null, null, null))
            .Needs("eye", Text, e => e.Eye, (e, v) => e with { Eye = v! })
            .Needs("on", PastDay, e => e.On, (e, v) => e with { On = v!.Value })
            .Maybe("session", Name, e => e.Session, (e, v) => e with { Session = v })
            .Means("", like: Kept.Sessions)
            .Maybe("tool", Mark, e => e.Tool, (e, v) => e with { Tool = v })
            .Means("", like: Kept.Tools)
            .Maybe("where", Word(EyeMeasured.WhereWords), e => e.Where, (e, v) => e with { Where = v })
            .Means("where the eye was measured")
            .Maybe("length_mm", Size, e => e.Length, (e, v) => e with { Length = v })
            .Means("the length of the cold eye")
            .Maybe("width_mm", Size, e => e.Width, (e, v) => e with { Width = v })
            .Means("the width of the cold eye")
            .Maybe("handle_fits", Word(EyeMeasured.FitsWords), e => e.HandleFits, (e, v) => e with { HandleFits = v })
            .Means("how the handle sat in the measured eye");

    /// <summary>How tools ended.</summary>
    public static FieldTable<ToolScrapped> Scrapped { get; } =
        new FieldTable<ToolScrapped>("scrapped.csv", new(default, default, ScrapCause.Other, null, null))
            .Needs("tool", Mark, s => s.Tool, (s, v) => s with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs("on", PastDay, s => s.On, (s, v) => s with { On = v!.Value })
            .Needs("cause", Word(ToolScrapped.CauseWords), s => s.Cause, (s, v) => s with { Cause = v!.Value })
            .Means("why it is scrapped", "Cause")
            .Maybe("into", Mark, s => s.Into, (s, v) => s with { Into = v })
            .Means("the mark of the tool it was made into, where it was", "Made into", Kept.Tools)
            .Maybe("note", Note, s => s.Note, (s, v) => s with { Note = v })
            .Means("a note, or nothing", "Note")
            .Maybe("part", Word(ToolLookedOver.PartWords), s => s.Part, (s, v) => s with { Part = v })
            .Means("where on the tool it failed", "Where")
            .Maybe("led_to", Word(ToolScrapped.LedToWords), s => s.LedTo, (s, v) => s with { LedTo = v })
            .Means("what led to the loss", "Led to it");

    /// <summary>Tools laid aside and brought back.</summary>
    public static FieldTable<AsideSaid> Aside { get; } =
        new FieldTable<AsideSaid>("aside.csv", new(default, default, true, null))
            .Needs("tool", Mark, a => a.Tool, (a, v) => a with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs("on", PastDay, a => a.On, (a, v) => a with { On = v!.Value })
            .Needs("what", Either("set aside", "brought back"), a => a.IsAside, (a, v) => a with { IsAside = v!.Value })
            .Means("what was done")
            .Maybe("why", Note, a => a.Why, (a, v) => a with { Why = v })
            .Means("why it was, in your own words");

    /// <summary>Tools lent out and taken back.</summary>
    public static FieldTable<LoanSaid> Loans { get; } =
        new FieldTable<LoanSaid>("loans.csv", new(default, default, true, null, null))
            .Needs("tool", Mark, l => l.Tool, (l, v) => l with { Tool = v!.Value })
            .Means("", "Tool", Kept.Tools)
            .Needs("on", PastDay, l => l.On, (l, v) => l with { On = v!.Value })
            .Needs("what", Either("out", "back"), l => l.IsOut, (l, v) => l with { IsOut = v!.Value })
            .Means("what was done")
            .Maybe("who", Text, l => l.Who, (l, v) => l with { Who = v })
            .Means("who has a lent tool", "Lent to")
            .Maybe("note", Note, l => l.Note, (l, v) => l with { Note = v })
            .Means("a note, or nothing", "Note");

    /// <summary>Tools looked for, and whether they were there.</summary>
    public static FieldTable<ToolLookedFor> StockTakes { get; } =
        new FieldTable<ToolLookedFor>("stock-takes.csv", new(default, default, false, null))
            .Needs("tool", Mark, s => s.Tool, (s, v) => s with { Tool = v!.Value })
            .Means("", like: Kept.Tools)
            .Needs("on", PastDay, s => s.On, (s, v) => s with { On = v!.Value })
            .Needs("seen", YesNo, s => s.Seen, (s, v) => s with { Seen = v!.Value })
            .Means("whether the tool was there")
            .Maybe("by", Text, s => s.By, (s, v) => s with { By = v });
}
