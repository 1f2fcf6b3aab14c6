using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>lend, take-back, loans: tools that others have.</summary>
internal static class LoanVerbs
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<string> Who = Said.Free("WHO", "who has it", isNote: false);

    public static IEnumerable<Verb> All { get; } =
    [
        new(
            "lend",
            "Lends a tool out; it leaves the rack.",
            "lend H4 'a smith near by' --note 'until spring'",
            [Tool, Who, Said.Note],
            call => call.Record(new ToolLent(call.Mark(Tool), call.On, call.Get(Who)!, call.Get(Said.Note)))
        ),
        new(
            "take-back",
            "Takes a lent tool back into service.",
            "take-back H4",
            [Tool, Said.Note],
            call =>
            {
                call.Record(new ToolTakenBack(call.Mark(Tool), call.On, call.Get(Said.Note)));
                call.Warn(Words.BackNow(call.Mark(Tool).Text));
            },
            "It has to be looked over before it works again."
        ),
        new("loans", "Lists the tools lent out: to whom, for how long.", "loans", [], Show),
    ];

    private static void Show(Call call)
    {
        ImmutableArray<Loan> loans = Loan.All(call.Shop, call.On);
        if (loans.IsEmpty && call.Format == "text")
        {
            call.PrintLine("no tool is lent out");
            return;
        }

        call.Print(LoanTable.Columns.Over(loans), after: $"\n{Words.LoansLegend}\n");
    }
}
