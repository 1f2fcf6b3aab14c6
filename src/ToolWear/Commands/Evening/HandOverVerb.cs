using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Screens.Hammer;
using ToolWear.Sheets;

namespace ToolWear.Commands.Evening;

/// <summary>hand-over: what a helper is handed for the day's work.</summary>
internal static class HandOverVerb
{
    private static readonly Option<string?> Pattern = Common.Text(
        "--pattern",
        "P",
        "the pattern that is forged; usually that of the open or the last session"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "hand-over",
            "Says what a helper takes, in order: which tool from which peg, how deep a drift goes, how it is cooled, after\n"
                + "how many heats to stop.",
            "hand-over --pattern hatchet --as html",
            [Pattern],
            Run,
            Words.HelpSheet,
            "html"
        );

    private static void Run(Call call)
    {
        string format = call.Format();
        using Bench bench = call.ToRead();
        string pattern =
            call.Get(Pattern)
            ?? bench.Shop.OpenSession?.Opened.Pattern
            ?? LastTime.Pattern(bench.Shop)
            ?? throw RefusedException.WrongData(Words.NoPatternYet);
        if (!bench.Shop.Patterns.ContainsKey(pattern))
        {
            throw RefusedException.WrongData(Words.NoSuchPattern(pattern, bench.Shop.Patterns.Keys));
        }

        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        LengthUnit units = call.Units(bench.Shop);
        Table table = HandOverTable.Of(forecasts, pattern, units);
        if (table.Rows.IsEmpty)
        {
            throw RefusedException.WrongData(Words.NoStages(pattern));
        }

        if (format == "html")
        {
            call.Print(HandOverSheet.Of(forecasts, pattern, table, call.On, units));
            return;
        }

        string cautions = string.Concat(HandOverSheet.Cautions(forecasts, pattern).Select(each => Wrapped.Of(each)));
        call.Print(
            table,
            Words.ShopHeading(bench.Shop, units) + Words.HandOverPattern(pattern) + "\n\n",
            "\n" + cautions
        );
    }
}
