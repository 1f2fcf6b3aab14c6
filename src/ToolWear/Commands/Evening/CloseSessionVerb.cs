using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Results.Plans;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>close-session: ends the open session.</summary>
internal static class CloseSessionVerb
{
    private static readonly Option<int?> Heads = Said.Whole("--heads", "N", "heads finished");
    private static readonly Option<bool> CountOff = Said.Switch(
        "--count-off",
        "counts the heads off the open orders of the session's pattern, the first due first"
    );

    public static Verb Verb { get; } =
        new(
            "close-session",
            "Ends the open session.",
            "close-session --heads 6 --count-off",
            [Heads, CountOff],
            Run,
            "It names the tools to look over, and to measure once they are cold. Only --count-off takes the heads off the open orders; without it the order is named."
        );

    private static void Run(Call call)
    {
        int? heads = call.Get(Heads);
        bool counts = call.Get(CountOff);
        if (counts && heads is null)
        {
            throw RefusedException.WrongUsage("--count-off needs --heads: how many heads were finished");
        }

        Bench bench = call.ToWrite();
        Session open =
            call.Shop.OpenSession ?? throw RefusedException.WrongData("no session is open: open one with open-session");
        ClosingSession deed = ClosingSession.Of(call.Shop, open, heads);
        Board board = LastTime.GoingOn(call.Shop, open, null);
        ImmutableArray<ShortTally> shorts = ClosingSession.ShortOf(
            call.Shop,
            open.Name,
            board,
            [.. LastTime.Stages(call.Shop, board.Pattern).Select(_ => heads)]
        );
        call.Record(counts ? deed.CountingOff : deed.Entries);
        ImmutableArray<string> used = ClosingSession.Used(call.Shop, open.Name);
        call.PrintLine($"session {open.Name} is closed");
        call.PrintLine(
            used.IsEmpty ? "no tool worked in it" : $"to look over, and to measure once cold: {string.Join(", ", used)}"
        );
        foreach (ShortTally tally in shorts)
        {
            call.Warn(EntryWords.FallsShort(tally));
        }

        foreach (string misused in FindingWords.UsedAllTheSame(call.Shop, call.Forecasts, open.Name))
        {
            call.Warn(misused);
        }

        foreach ((OrderDescribed before, OrderDescribed after) in deed.Orders)
        {
            call.PrintLine(counts ? PlanWords.CountedOff(before, after) : NotCountedOff(before, heads!.Value));
        }

        foreach (string trouble in bench.BackUp())
        {
            call.Warn(trouble);
        }
    }

    private static string NotCountedOff(OrderDescribed order, int heads) =>
        $"order {order.Order} still has {order.Heads} {order.Pattern} to go: --count-off would have taken {Words.CountOf(heads, "head")} off; order {(order.Order.Contains(' ', StringComparison.Ordinal) ? $"'{order.Order}'" : order.Order)} --heads N sets it";
}
