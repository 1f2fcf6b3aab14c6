using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Evening;

/// <summary>cross-out: an entry no longer counts; it stays visible in the ledger.</summary>
internal static class CrossOutVerb
{
    private static readonly Argument<long> Entry = Said.Argument(
        "ENTRY",
        "the entry's number",
        (it, text) =>
            long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number) && number > 0
                ? number
                : it.Refuse<long>($"entry {text}: the number that was printed when it was recorded")
    );
    private static readonly Argument<string> Why = Said.Free("WHY", "why, in a few words");

    public static Verb Verb { get; } =
        new(
            "cross-out",
            "Crosses out an entry: it stays but no longer counts.",
            "cross-out 212 \"jaw on scale\"",
            [Entry, Why],
            call => call.Record(call.ToWrite().Shop.TakingBack(call.Get(Entry), call.Get(Why)!)),
            "It is refused while other entries rest on it, and they are named. Where ENTRY is itself a crossing out, what it crossed out counts again."
        );
}
