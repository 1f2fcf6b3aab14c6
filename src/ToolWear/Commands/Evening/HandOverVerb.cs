using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Doors;
using ToolWear.Pens;
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
            "Says what a helper takes, in order: which tool from which peg, how deep a drift goes, how it is cooled, after\n"
                + "how many heats to stop.",
            "hand-over --pattern hatchet --as html",
            [Pattern],
            Run,
            Verb.MakesSheet,
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

        string cautions = string.Concat(HandOverSheet.CautionsOf(steps).Select(each => Wrapped.Of(each)));
        call.Print(
            HandOverTable.Columns.Over(steps, call.Units),
            Words.ShopHeading(call.Shop, call.Units) + Words.HandOverPattern(pattern) + "\n\n",
            "\n" + cautions
        );
    }

    private static string NoPatternYet =>
        "no session has a pattern yet: name one with --pattern, as patterns.csv or the screens entered it";
}
