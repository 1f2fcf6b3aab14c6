using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Tools;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Sheets;

namespace ToolWear.Commands.Tools;

/// <summary>card: all about one tool.</summary>
internal static class CardVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();

    public static Verb Verb { get; } =
        new(
            "card",
            "Shows all of one tool: wear, forecast, history.",
            "card H5",
            [Tool],
            Run,
            "As csv it gives the gauge marks, each with the eye, the slit and what it could be made into.\n"
                + "--as html makes a sheet to print, --as svg a drawing: toolwear ... --as html > sheet.html",
            "svg",
            "html"
        );

    private static void Run(Call call)
    {
        Card card = Card.Of(call.Forecasts, call.Tool(Tool), call.Units);
        call.Print(
            call.Format switch
            {
                "csv" => card.ByGauge.ToCsv(call.HasSemicolons),
                "json" => Card.Columns.Of(card).ToJson(),
                "svg" => CardSvg.Of(card),
                "html" => CardSheet.Of(card, call.On),
                _ => CardText.Of(card),
            }
        );
    }
}
