using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Results.Tools;

namespace ToolWear.Commands.Evening;

/// <summary>ledger: the entries, the last one first.</summary>
internal static class LedgerVerb
{
    private static readonly Argument<string?> Find = Said.Maybe("WORDS", "only entries with all these words");

    public static Verb Verb { get; } =
        new(
            "ledger",
            "Lists the entries, the last one first.",
            "ledger 'H5 read'",
            [Find],
            call =>
                call.Print(
                    LedgerTable.Columns.Over(
                        LedgerTable
                            .Found(call.Shop, call.Get(Find) ?? "")
                            .Select(entered => new LedgerRow(call.Shop, entered)),
                        call.Units
                    )
                ),
            "Crossed-out entries stay in it."
        );
}
