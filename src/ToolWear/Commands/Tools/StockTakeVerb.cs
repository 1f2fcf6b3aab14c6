using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results;

namespace ToolWear.Commands.Tools;

/// <summary>stock-take: when every tool was seen last; or that one was looked for.</summary>
internal static class StockTakeVerb
{
    private static readonly Argument<string> Tool = FigureOptions.Maybe("TOOL", "the tool that was looked for");
    private static readonly Option<bool> NotSeen = new("--not-seen")
    {
        Description = "it was not there; usually it was seen",
    };
    private static readonly Option<string?> By = Common.Text("--by", "NAME", "who looked for it");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "stock-take",
            "Without a tool shows every tool that is not scrapped and when it was seen last; with one records that it was\n"
                + "looked for, and was there or was not.",
            "stock-take",
            [Tool, NotSeen, By],
            Run,
            "toolwear stock-take H4 --not-seen"
        );

    private static void Run(Call call)
    {
        string text = call.Get(Tool);
        if (text.Length > 0)
        {
            ToolMark mark = Call.ReadMark(text);
            using Bench written = call.ToWrite();
            call.Record(written, new ToolLookedFor(mark, call.On, !call.Has(NotSeen), call.Name(By)));
            return;
        }

        if (call.Has(NotSeen) || call.Get(By) is not null)
        {
            throw RefusedException.WrongUsage(Words.ToolOfStockTake);
        }

        using Bench bench = call.ToRead();
        call.Print(StockTakeTable.Of(ToolPresence.All(bench.Shop)), after: $"\n{Words.StockTakeLegend}\n");
    }
}
