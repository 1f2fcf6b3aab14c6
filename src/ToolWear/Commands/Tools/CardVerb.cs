using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Sheets;

namespace ToolWear.Commands.Tools;

/// <summary>card: all about one tool.</summary>
internal static class CardVerb
{
    private static readonly Argument<string> Tool = Common.Mark();

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "card",
            "Shows one tool: verdict, eye or slit, wear, both forecasts, what it can be made into, readings, what happened\n"
                + "to it. As csv its gauge marks, each with the tool's eye, slit and what it can be made into.",
            "card H5",
            [Tool],
            Run,
            Words.HelpDrawing,
            "svg",
            "html"
        );

    private static void Run(Call call)
    {
        string format = call.Format();
        using Bench bench = call.ToRead();
        ToolInShop tool = Call.Find(bench.Shop, call.Mark(Tool));
        LengthUnit units = call.Units(bench.Shop);
        Card card = Card.Of(ShopForecasts.Of(bench.Shop), tool, units);
        switch (format)
        {
            case "csv":
                call.Print(card.ToCsv());
                break;
            case "json":
                call.Print(card.ToJson());
                break;
            case "svg":
                call.Print(CardSvg.Of(card));
                break;
            case "html":
                call.Print(CardSheet.Of(card, call.On));
                break;
            default:
                call.Print(CardText.Of(card));
                break;
        }
    }
}
