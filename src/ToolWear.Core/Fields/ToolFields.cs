using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of a tool without its gauge marks and its body.</summary>
public static class ToolFields
{
    /// <summary>A tool of which nothing is known.</summary>
    internal static readonly Tool Blank = new(
        default,
        ToolForms.All[^1],
        null,
        Place.None,
        null,
        null,
        null,
        null,
        ToolStart.New,
        null,
        ToolCost.Unknown,
        null,
        null,
        [],
        []
    );

    /// <summary>What is said first of a tool, whatever table it stands in.</summary>
    internal static readonly FieldTable<Tool> First = new FieldTable<Tool>("", Blank)
        .Key("tool", Mark, t => t.Mark, (t, v) => t with { Mark = v!.Value })
        .Means("the mark stamped on the tool, such as R3", "Mark")
        .Called("stamp", "tool mark", "tool no", "tool number")
        .Needs("form", Form, t => t.Form, (t, v) => t with { Form = v! })
        .Means("what form of tool it is", "Form")
        .Called("type", "kind", "what", "tool type")
        .Maybe("eye", Text, t => t.Eye, (t, v) => t with { Eye = v })
        .Means("the eye it works on or for, such as H; empty where it serves every eye", "Eye", Kept.Eyes)
        .Maybe("place", InSeries, t => SeriesFields.OrNone(t.Place), (t, v) => t with { Place = v ?? Place.None })
        .Means("its place in the series", "Place")
        .Maybe("section", Word(SectionKinds.Words), t => t.Section, (t, v) => t with { Section = v })
        .Means("its shape", "Section")
        .Maybe("steel", Text, t => t.Steel, (t, v) => t with { Steel = v })
        .Means("its steel, by number where it has one", "Steel", Kept.Steels)
        .Called("material", "grade", "steel grade");

    /// <summary>What is said last of a tool, whatever table it stands in.</summary>
    internal static readonly FieldTable<Tool> Last = new FieldTable<Tool>("", Blank)
        .Maybe("peg", Text, t => t.Peg, (t, v) => t with { Peg = v })
        .Means("where it hangs", "Peg")
        .Maybe("note", Note, t => t.Note, (t, v) => t with { Note = v })
        .Means("a note, or nothing", "Note")
        .Called("notes", "remark", "remarks", "comment", "comments");

    /// <summary>How it came into the records, behind its making.</summary>
    internal static readonly FieldTable<Tool> Start = new FieldTable<Tool>("", Blank)
        .Maybe(
            "heats_before",
            HeatsInHalves,
            t => t.Start.HeatsBefore,
            (t, v) => t with { Start = t.Start with { HeatsBefore = v } }
        )
        .Means("heats it worked before these records, roughly; empty where nobody knows", "Heats before")
        .Called("heats", "heats so far", "heats done", "total heats")
        .Maybe(
            "heats_before_how",
            Word(ToolStart.HowWords),
            t => t.Start.How,
            (t, v) => t with { Start = t.Start with { How = v } }
        )
        .Means("how those are known", "How known")
        .Called("how", "counted")
        .Maybe("guess_heats", GuessHeats, t => t.GuessHeats, (t, v) => t with { GuessHeats = v })
        .Means("how many heats one of these usually lasts, roughly; empty where nobody knows", "Usually lasts");

    /// <summary>The table.</summary>
    public static FieldTable<Tool> Table { get; } =
        new FieldTable<Tool>("tools.csv", Blank)
            .Also(First)
            .Maybe("lot", Text, t => t.Lot, (t, v) => t with { Lot = v })
            .Means("the lot of its steel", "Lot")
            .Maybe("made_on", PastDay, t => t.MadeOn, (t, v) => t with { MadeOn = v })
            .Means("the day it was made", "Made on")
            .Maybe(
                "started_as",
                Word(ToolStart.AsWords),
                t => t.Start.As,
                (t, v) => t with { Start = t.Start with { As = v ?? StartedAs.New } }
            )
            .Means("how it came into the records", "New or in use")
            .Also(Start)
            .Maybe("steel_cost", Amount, t => t.Cost.Steel, (t, v) => t with { Cost = t.Cost with { Steel = v } })
            .Means("what its steel cost", "Steel cost")
            .Maybe(
                "forge_hours",
                Hours,
                t => t.Cost.ForgeHours,
                (t, v) => t with { Cost = t.Cost with { ForgeHours = v } }
            )
            .Means("hours at the forge", "Forge hours")
            .Maybe(
                "grind_hours",
                Hours,
                t => t.Cost.GrindHours,
                (t, v) => t with { Cost = t.Cost with { GrindHours = v } }
            )
            .Means("hours of grinding", "Grind hours")
            .Maybe(
                "treat_cost",
                Amount,
                t => t.Cost.Treatment,
                (t, v) => t with { Cost = t.Cost with { Treatment = v } }
            )
            .Means("what hardening it cost", "Hardening cost")
            .Also(Last);
}
