using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>series: the tools of an eye, as entered or as proposed.</summary>
internal static class SeriesVerb
{
    private static readonly Argument<string> Eye = new("EYE") { Description = "the eye's name" };

    public static Verb Verb { get; } =
        new(
            "series",
            "Shows the series of an eye, place by place.",
            "series H",
            [Eye],
            Run,
            $"Where none is saved it proposes one.\n{Cautions.EyeCaution}"
        );

    private static void Run(Call call)
    {
        EyeDescribed eye = Call.Named("eye", call.Shop.Eyes, call.Get(Eye)!);
        if (!SeriesPlan.TryFor(call.Shop, eye, out SeriesPlan? plan, out string? refusal))
        {
            throw RefusedException.WrongData(refusal);
        }

        LengthUnit units = call.Units;
        string proposed = plan.Tools.Any(tool => !tool.IsEntered) ? "* is proposed and not saved yet." + "\n\n" : "";
        IEnumerable<string> stock = plan.Tools.Select(tool => EyeWords.StockSentence(tool, units));
        IEnumerable<string> slit = QuoteText.SlitSentences(plan, units).Select(each => each.Sentence);
        string nesting = string.Concat(
            stock.Concat(slit).Concat(plan.Nesting.Select(step => step.Sentence(units))).Select(each => each + "\n")
        );
        call.Print(
            SeriesTable.Columns.Over(plan.Tools, units),
            Words.ShopHeading(call.Shop, units) + proposed,
            $"\n{nesting}{Cautions.EyeCaution}\n"
        );
    }
}
