using System.CommandLine;
using System.Globalization;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Evening;

/// <summary>cross-out: an entry counts no more; it stays visible in the ledger.</summary>
internal static class CrossOutVerb
{
    private static readonly Argument<string> Entry = new("ENTRY") { Description = "the entry's number" };
    private static readonly Argument<string> Why = new("WHY") { Description = "why, in a few words" };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "cross-out",
            "Crosses an entry out: it stays in the ledger and counts no more.",
            "cross-out 212 \"jaw on scale\"",
            [Entry, Why],
            Run,
            "It is refused, and they are named, while other entries rest on it. Where ENTRY is itself a crossing out, what it\n"
                + "crossed out counts again."
        );

    private static void Run(Call call)
    {
        string text = call.Get(Entry);
        if (!long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number) || number < 1)
        {
            throw RefusedException.WrongUsage($"entry {text}: the number that was printed when it was recorded");
        }

        string why = Call.ReadNote("WHY", call.Get(Why));
        using Bench bench = call.ToWrite();
        call.Record(bench, bench.Shop.TakingBack(number, why));
    }
}
