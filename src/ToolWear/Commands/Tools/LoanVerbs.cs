using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Results;
using ToolWear.Results.Tools;

namespace ToolWear.Commands.Tools;

/// <summary>lend, take-back, loans: tools that others have.</summary>
internal static class LoanVerbs
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Who = new("WHO") { Description = "who has it" };
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static IEnumerable<Command> Make(Site site) =>
        [
            Common.Verb(
                site,
                "lend",
                "Lends a tool out: it is on no rack until it is taken back.",
                "lend H4 'a smith near by' --note 'until spring'",
                [Tool, Who, Note],
                Lend
            ),
            Common.Verb(
                site,
                "take-back",
                "Takes a lent tool back into service; its verdict is \"look it over\" until a finding is sound.",
                "take-back H4",
                [Tool, Note],
                TakeBack
            ),
            Common.Verb(
                site,
                "loans",
                "Shows the tools that are lent out, to whom and for how long.",
                "loans",
                [],
                Show
            ),
        ];

    private static void Lend(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        string who = Call.ReadName(Who.Name, call.Get(Who));
        using Bench bench = call.ToWrite();
        call.Record(bench, new ToolLent(mark, call.On, who, call.Note(Note)));
    }

    private static void TakeBack(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        using Bench bench = call.ToWrite();
        call.Record(bench, new ToolTakenBack(mark, call.On, call.Note(Note)));
        call.Warn(Words.BackNow(mark.Text));
    }

    private static void Show(Call call)
    {
        using Bench bench = call.ToRead();
        ImmutableArray<Loan> loans = Loan.All(bench.Shop, call.On);
        Table table = LoanTable.Columns.Over(loans);
        if (loans.IsEmpty && call.Format() == "text")
        {
            call.PrintLine(Words.NoneLent);
            return;
        }

        call.Print(table, after: $"\n{Words.LoansLegend}\n");
    }
}
