using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;

namespace ToolWear.Commands.Evening;

/// <summary>close-session: ends the open session.</summary>
internal static class CloseSessionVerb
{
    private static readonly Option<string?> Heads = Common.Text("--heads", "N", "heads finished");
    private static readonly Option<bool> CountOff = new("--count-off")
    {
        Description = "counts the heads off the open orders of the session's pattern, the first due first",
    };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "close-session",
            "Ends the open session; says which tools want looking over and measuring once cold. Orders are counted down\n"
                + "only with --count-off; without it the open order is named.",
            "close-session --heads 6 --count-off",
            [Heads, CountOff],
            Run
        );

    private static void Run(Call call)
    {
        int? heads = call.Whole(Heads);
        if (call.Has(CountOff) && heads is null)
        {
            throw RefusedException.WrongUsage("--count-off wants --heads: how many were finished");
        }

        using Bench bench = call.ToWrite();
        Session open =
            bench.Shop.OpenSession
            ?? throw RefusedException.WrongData("no session is open: open one with open-session");
        Shop before = bench.Shop;
        ImmutableArray<OrderDescribed> orders = OrderCountOff.Of(before, open.Opened.Pattern, heads);
        call.Record(bench, [new SessionClosed(open.Name, heads), .. call.Has(CountOff) ? orders : []]);
        string[] used =
        [
            .. bench
                .Shop.Tools.Values.Where(tool =>
                    tool.Events.Exists(each => each.What is HeatsWorked heats && heats.Session == open.Name)
                )
                .Select(tool => tool.Mark.Text),
        ];
        call.PrintLine($"session {open.Name} is closed");
        call.PrintLine(
            used.Length == 0
                ? "no tool worked in it"
                : $"to look over, and to measure once cold: {string.Join(", ", used)}"
        );
        foreach (OrderDescribed order in orders)
        {
            call.PrintLine(
                call.Has(CountOff)
                    ? Words.CountedOff(before.Orders[order.Order], order)
                    : Words.NotCountedOff(before.Orders[order.Order], heads!.Value)
            );
        }

        foreach (string trouble in bench.BackUp())
        {
            call.Warn(trouble);
        }
    }
}
