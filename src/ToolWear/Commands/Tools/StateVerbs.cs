using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;

namespace ToolWear.Commands.Tools;

/// <summary>set-aside, bring-back, re-mark, start-here: where a tool stands and what it is called.</summary>
internal static class StateVerbs
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Why = new("WHY") { Description = "why, in a few words" };
    private static readonly Argument<string> Old = Common.Mark("OLD");
    private static readonly Argument<string> New = new("NEW") { Description = "the mark it bears now" };

    public static IEnumerable<Command> Make(Site site) =>
        [
            Common.Verb(
                site,
                "set-aside",
                "Lays a tool aside for the time being: it is on no rack until it is brought back.",
                "set-aside H4 \"waits to be straightened\"",
                [Tool, Why],
                call => Change(call, new ToolSetAside(call.Mark(Tool), call.On, Call.ReadNote("WHY", call.Get(Why))))
            ),
            Common.Verb(
                site,
                "bring-back",
                "Brings a tool that was set aside back into service.",
                "bring-back X1",
                [Tool],
                call => Change(call, new ToolBroughtBack(call.Mark(Tool), call.On, null))
            ),
            Common.Verb(
                site,
                "re-mark",
                "Gives a tool another mark; its history stays its own.",
                "re-mark H5 H5A",
                [Old, New],
                call => Change(call, new ToolRemarked(call.Mark(Old), call.Mark(New)))
            ),
            Common.Verb(
                site,
                "start-here",
                "Counts a tool's wear from its next reading on, once the scale is off.",
                "start-here H6",
                [Tool],
                call => Change(call, new ToolStartedHere(call.Mark(Tool), null))
            ),
        ];

    private static void Change(Call call, LedgerEntry entry)
    {
        using Bench bench = call.ToWrite();
        call.Record(bench, entry);
    }
}
