using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Results;
using ToolWear.Screens.LedgerPages;

namespace ToolWear.Commands.Evening;

/// <summary>ledger: the entries, the last one first.</summary>
internal static class LedgerVerb
{
    private static readonly Argument<string> Find = FigureOptions.Maybe("WORDS", "only entries with all these words");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "ledger",
            "Shows the entries of the ledger, the last one first; crossed-out ones stay in it.",
            "ledger 'H5 read'",
            [Find],
            Run
        );

    private static void Run(Call call)
    {
        using Bench bench = call.ToRead();
        call.Print(
            LedgerTable.Of(bench.Shop, LedgerPagesText.Found(bench.Shop, call.Get(Find)), call.Units(bench.Shop))
        );
    }
}
