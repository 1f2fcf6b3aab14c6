using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Tools;
using ToolWear.Sheets;
using ToolWear.Wording;

namespace ToolWear.Commands.Evening;

/// <summary>hand-over: what a helper is handed for the day's work.</summary>
internal static class HandOverVerb
{
    private static readonly Option<string?> Pattern = Said.Pattern(
        "the pattern that is forged; usually that of the open or the last session"
    );

    public static Verb Verb { get; } =
        new(
            "hand-over",
            "Tells a helper which tools to use, and how.",
            "hand-over --pattern hatchet --as html",
            [Pattern],
            Run,
            "It says, in order, which tool from which peg, how deep a drift goes, how it is cooled, and after how many heats to stop.\n"
                + Verb.MakesSheet,
            "html"
        );

    private static void Run(Call call)
    {
        string pattern =
            call.Get(Pattern)
            ?? call.Shop.OpenSession?.Opened.Pattern
            ?? LastTime.Pattern(call.Shop)
            ?? throw RefusedException.WrongData(NoPatternYet);
        _ = Call.Named("pattern", call.Shop.Patterns, pattern);
        ImmutableArray<HandOverStep> steps = HandOverTable.Steps(call.Forecasts, pattern);
        if (steps.IsEmpty)
        {
            throw RefusedException.WrongData(Words.NoStages(pattern));
        }

        if (call.Format == "html")
        {
            call.Print(HandOverSheet.Of(call.Shop, pattern, steps, call.On, call.Units));
            return;
        }

        Table all = HandOverTable.Columns.Over(steps, call.Units);
        if (call.Format != "text" || all.LeftOut(call.Width).Length == 0)
        {
            call.Print(all, Heading(call, pattern), Cautions(steps));
            return;
        }

        string tables =
            $"{call.Text(HandOverTable.Which.Over(steps, call.Units))}\n{call.Text(HandOverTable.How.Over(steps, call.Units))}";
        call.Print(call.Get(Said.Quiet) ? tables : Heading(call, pattern) + tables + Cautions(steps));
    }

    private static string Heading(Call call, string pattern) =>
        $"{Words.ShopHeading(call.Shop, call.Units)}{Words.HandOverPattern(pattern)}\n\n";

    private static string Cautions(ImmutableArray<HandOverStep> steps) =>
        "\n" + string.Concat(HandOverSheet.CautionsOf(steps).Select(each => each + "\n"));

    private static string NoPatternYet =>
        "no session has a pattern yet: name one with --pattern, as patterns.csv or the screens saved it";
}
