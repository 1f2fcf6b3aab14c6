using ToolWear.Commands.Calls;
using ToolWear.Core.Findings;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>rack: the tools in service with their wear, what is left and the verdict.</summary>
internal static class RackVerb
{
    public static Verb Verb { get; } =
        new(
            "rack",
            "Shows the tool rack: wear, heats left, the eye a drift would make now, the verdict.",
            "rack",
            [],
            Run,
            "Worn of limit in the shop's unit; heats left about, and nine times in ten between; > stands before the tool to\n"
                + "use next.\n"
                + Verb.MakesSheet,
            "html"
        );

    private static void Run(Call call)
    {
        ShopForecasts forecasts = call.Forecasts;
        if (call.Format == "html")
        {
            call.Print(RackSheet.Of(forecasts, call.On, call.Units));
            return;
        }

        string reasons = string.Concat(
            forecasts
                .InService.Select(tool => (tool.Tool.Mark, Verdict: forecasts.VerdictOf(tool)))
                .Where(each => each.Verdict.Verdict != Verdict.InsideItsLimit)
                .Select(each => $"{each.Mark}: {each.Verdict.Shown}: {each.Verdict.Why}\n")
        );
        call.Print(
            RackTable.Columns.Over(RackTable.Rows(forecasts), call.Units),
            Words.ShopHeading(call.Shop, call.Units),
            $"\n{reasons}{Wrapped.Of(FindingWords.NoneNext(forecasts))}\n{Words.LeftExplained}\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Words.ForecastBasis}\n{Cautions.ForecastCaution}\n{Cautions.EyeCaution}\n"
        );
    }
}
