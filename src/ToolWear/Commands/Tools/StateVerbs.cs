using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Tools;

/// <summary>set-aside, bring-back, re-mark, start-here: where a tool stands and what it is called.</summary>
internal static class StateVerbs
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<string> Why = Said.Free("WHY", "why, in a few words");
    private static readonly Argument<ToolMark> Old = Said.Tool("OLD");
    private static readonly Argument<ToolMark> New = Said.NewMark("NEW", "the mark it bears now");

    public static IEnumerable<Verb> All { get; } =
    [
        new(
            "set-aside",
            "Sets a tool aside until you bring it back.",
            "set-aside H4 \"waits to be straightened\"",
            [Tool, Why],
            call => call.Record(new ToolSetAside(call.Mark(Tool), call.On, call.Get(Why))),
            "It leaves the rack."
        ),
        new(
            "bring-back",
            "Puts a tool that was set aside back into service.",
            "bring-back X1",
            [Tool],
            call => call.Record(new ToolBroughtBack(call.Mark(Tool), call.On, null))
        ),
        new(
            "re-mark",
            "Gives a tool another mark; it keeps its history.",
            "re-mark H5 H5A",
            [Old, New],
            call => call.Record(new ToolRemarked(call.Mark(Old), call.Get(New)))
        ),
        new(
            "start-here",
            "Counts a tool's wear from its next reading on.",
            "start-here H6",
            [Tool],
            call => call.Record(new ToolStartedHere(call.Mark(Tool), null)),
            "Use it once the scale is off a newly forged tool."
        ),
    ];
}
