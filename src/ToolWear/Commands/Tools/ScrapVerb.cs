using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>scrap: a tool is done, or was made into another.</summary>
internal static class ScrapVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<ScrapCause> Cause = Said.Word("CAUSE", ToolScrapped.CauseWords);
    private static readonly Option<ToolMark?> Into = Said.Tool("--into", "TOOL", "the tool it was made into");

    private static readonly Option<ToolPart?> Part = Said.Word(
        "--part",
        "PART",
        ToolLookedOver.PartWords,
        $"where it failed: {string.Join(", ", ToolLookedOver.PartWords.All)}"
    );
    private static readonly Option<LedTo?> LedTo = Said.Word(
        "--led-to",
        "WHAT",
        ToolScrapped.LedToWords,
        $"what led to it: {string.Join(", ", ToolScrapped.LedToWords.All)}"
    );

    public static Verb Verb { get; } =
        new(
            "scrap",
            "Records that a tool is done, or made into another.",
            "scrap H4 worn",
            [Tool, Cause, Into, Part, LedTo, Said.Note],
            Run,
            "Of a worn drift it says what you could still make of it."
        );

    private static void Run(Call call)
    {
        ScrapCause cause = call.Get(Cause);
        ToolMark mark = call.Mark(Tool);
        Shop before = call.Shop;
        call.Record(
            new ToolScrapped(
                mark,
                call.On,
                cause,
                call.Get(Into) is { } into ? before.Meant(into) : null,
                call.Get(Said.Note),
                call.Get(Part),
                call.Get(LedTo)
            )
        );
        if (cause == ScrapCause.Worn && Unread(before, mark) is { } unread)
        {
            call.Warn(ThrownOutUnread(unread));
        }

        // by the shop as it was: a scrapped tool is made into nothing
        if (cause is ScrapCause.Worn or ScrapCause.Other && CouldBe(before, mark) is { Offers.IsEmpty: false } could)
        {
            LengthUnit units = call.Units;
            call.Warn(
                CouldHaveBeen(
                    mark.Text,
                    string.Join("; ", could.Offers.Take(3).Select(offer => EyeWords.OfferInWords(offer, units)))
                )
            );
        }
    }

    private static GaugeHistory? Unread(Shop before, ToolMark mark) =>
        before.TryFind(mark, out ToolInShop? tool) ? ShopHistories.UnreadEnd(ShopHistories.Of(before, tool)) : null;

    private static MadeInto? CouldBe(Shop before, ToolMark mark)
    {
        ShopForecasts forecasts = ShopForecasts.Of(before);
        return before.TryFind(mark, out ToolInShop? tool) ? MadeInto.Of(forecasts, forecasts.Of(tool.Id)) : null;
    }

    private static string CouldHaveBeen(string tool, string into) =>
        $"{tool} could still be made into: {into}. {Cautions.MakeIntoCaution} If it is: add the new tool, cross this entry out, and scrap {tool} made-into --into the new mark.";

    private static string ThrownOutUnread(GaugeHistory gauge) =>
        $"{gauge.Tool.Mark}: its {gauge.Gauge.Name} was not measured after its last heats, so it counts as worn to its limit after {Words.Heats(gauge.Wear.HeatsNow)} heats. Measure the next one before you scrap it.";
}
