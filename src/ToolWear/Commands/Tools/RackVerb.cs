using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Findings;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>rack: the tools in service with their wear, what is left and the verdict.</summary>
internal static class RackVerb
{
    private static readonly Option<RackBy?> By = Said.Word(
        "--by",
        "ORDER",
        new Vocabulary<RackBy>("order", (RackBy.Place, "place"), (RackBy.Verdict, "verdict")),
        "place as on the rack, or verdict with the worst first"
    );

    private enum RackBy
    {
        Place,
        Verdict,
    }

    public static Verb Verb { get; } =
        new(
            "rack",
            "Shows each tool: wear, heats left, verdict.",
            "rack",
            [By],
            Run,
            $"Worn and its limit (Of) are in the shop's unit. {Words.LeftExplained} {Words.ForecastBasis}\n{Cautions.ForecastCaution}\n{Verb.MakesSheet}",
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

        ImmutableArray<RackRow> rows = RackTable.Rows(forecasts);
        RackRow[] worstFirst = [.. rows.OrderBy(row => row.Verdict.Verdict)];
        string reasons = string.Concat(
            worstFirst
                .Where(row =>
                    row.Tool.Tool.State == ToolState.InService && row.Verdict.Verdict != Verdict.InsideItsLimit
                )
                .Select(row =>
                    Wrapped.Of(
                        FindingWords.Sentence(row.Verdict.Why),
                        row.Made.Mark.Text.PadRight(6),
                        "      ",
                        call.Width
                    )
                )
        );
        call.Print(
            RackTable.Columns.Over(call.Get(By) == RackBy.Verdict ? worstFirst : rows, call.Units),
            Words.ShopHeading(call.Shop, call.Units),
            $"\n{reasons}{FindingWords.NoneNext(forecasts)}\n\n{Legend}\n"
                + (rows.Any(row => row.NotFollowed.Length > 0) ? $"{Words.NotFollowedMark} {Words.NotFollowed}\n" : "")
                + $"{Cautions.ForecastCautionShort}\n{Cautions.EyeCautionShort}\n"
        );
    }

    private const string Legend = $"{RackTable.MarksExplained} Left: about so many heats, 9 in 10 from .. to.";
}
