using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>stock-take: which tools are there.</summary>
internal static class StockTakeVerb
{
    private static readonly Argument<ToolMark?> Tool = Said.MaybeTool("the tool that was looked for");
    private static readonly Option<bool> NotSeen = Said.Switch("--not-seen", "it was not there; usually it was seen");
    private static readonly Option<string?> By = Said.Name("--by", "NAME", "who looked for it");

    public static Verb Verb { get; } =
        new(
            "stock-take",
            "Lists every tool and when it was last seen.",
            "stock-take",
            [Tool, NotSeen, By],
            Run,
            "With a tool it records that you looked for it and found it, or with --not-seen that you did not:\n"
                + "toolwear stock-take H4 --not-seen"
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool) is { } mark)
        {
            call.ToWrite();
            ToolInShop tool = call.Tool(mark);
            ToolPresence before = ToolPresence.Of(call.Shop, tool);
            ToolLookedFor said = new(tool.Mark, call.On, !call.Get(NotSeen), call.Get(By));
            call.Record(said);
            if (before.SaysOtherwise(said.Seen, said.On))
            {
                call.Warn(FindingWords.LookedForBefore(before.LookedFor!));
            }

            return;
        }

        call.Without("goes with a TOOL", NotSeen, By);
        call.Print(StockTakeTable.Columns.Over(ToolPresence.All(call.Shop)), after: $"\n{Words.StockTakeLegend}\n");
    }
}
