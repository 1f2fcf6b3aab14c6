using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;

namespace ToolWear.Commands.Tools;

/// <summary>scrap: a tool is done, or was made into another.</summary>
internal static class ScrapVerb
{
    private static readonly Argument<string> Tool = Common.Mark();
    private static readonly Argument<string> Cause = new("CAUSE")
    {
        Description = string.Join(", ", ToolScrapped.CauseWords.All),
    };
    private static readonly Option<string?> Into = Common.Text("--into", "TOOL", "the tool it was made into");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "scrap",
            "Records that a tool is done, or was made into another one that has been added. Of a worn drift it says what it could\n"
                + "still be made into.",
            "scrap H4 worn",
            [Tool, Cause, Into, Note],
            Run
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Tool);
        ScrapCause cause = Call.ReadWord(ToolScrapped.CauseWords, call.Get(Cause));
        ToolMark? into = call.Get(Into) is { } text ? Call.ReadMark(text) : null;
        using Bench bench = call.ToWrite();
        Shop before = bench.Shop;
        call.Record(bench, new ToolScrapped(mark, call.On, cause, into, call.Note(Note)));
        if (CouldBe(before, mark, cause) is { Offers.IsEmpty: false } could)
        {
            LengthUnit units = call.Units(before);
            call.Warn(
                Words.CouldHaveBeen(
                    mark.Text,
                    string.Join("; ", could.Offers.Take(3).Select(offer => Words.OfferInWords(offer, units)))
                )
            );
        }
    }

    // by the shop as it was: a scrapped tool is made into nothing
    private static MadeInto? CouldBe(Shop before, ToolMark mark, ScrapCause cause)
    {
        if (cause is not (ScrapCause.Worn or ScrapCause.Other) || !before.TryFind(mark, out ToolInShop? tool))
        {
            return null;
        }

        ShopForecasts forecasts = ShopForecasts.Of(before);
        return MadeInto.Of(forecasts, forecasts.Of(tool.Id));
    }
}
