using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Tables;

namespace ToolWear.Commands;

/// <summary>quote: what an odd eye costs.</summary>
internal static class QuoteVerb
{
    private static readonly Argument<string> Eye = FigureOptions.Maybe(
        "EYE",
        "an eye of the shop, or --section for one that is not entered"
    );
    private static readonly Option<string?> SectionOption = Common.Text(
        "--section",
        "SECTION",
        "the cold eye, as 'teardrop 28.6 9.5 3.4'"
    );
    private static readonly Option<string?> Taper = Common.Text(
        "--taper",
        "Q",
        "its taper, mm of size a mm of depth, with --section"
    );
    private static readonly Option<string?> Heads = Common.Text("--heads", "N", "how many heads pay for the series");
    private static readonly Option<string?> Sure = Common.Text(
        "--sure",
        "P",
        "how sure the set is to last, a share such as 0.9"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "quote",
            "Proposes a series for an odd eye and spreads its cost over the heads: all of it, and what they wear away.",
            "quote --section 'teardrop 28.6 9.5 3.4' --taper 0.035 --heads 3",
            [Eye, SectionOption, Taper, Heads, Sure],
            Run
        );

    private static void Run(Call call)
    {
        int heads =
            call.Whole(Heads) ?? throw RefusedException.WrongUsage("--heads is wanted: how many heads pay for it");
        if (heads is < 1 or > 10_000)
        {
            throw RefusedException.WrongUsage($"--heads {heads}: a number from 1 to 10000");
        }

        double? sure = PlanVerb.ReadSure(call, Sure);
        using Bench bench = call.ToRead();
        SeriesProposal series = Propose(call, bench.Shop);
        OddEyeQuote quote = OddEyeQuote.Of(
            new ShopLives(ShopForecasts.Of(bench.Shop)),
            series,
            heads,
            sure ?? bench.Shop.Settings.Sure
        );
        Calculated figures = FiguresOf(quote);
        Table tools = ToolTable(quote, call.Units(bench.Shop));
        call.Print(
            call.Format() switch
            {
                "csv" => tools.ToCsv(),
                "json" => JsonText.Of(json =>
                {
                    json.WriteStartObject();
                    foreach (Figure figure in figures.All)
                    {
                        JsonText.Write(json, figure.Name, figure.Value);
                    }

                    json.WritePropertyName("tools");
                    tools.Write(json);
                    json.WriteEndObject();
                }),
                _ => Words.ShopHeading(bench.Shop, call.Units(bench.Shop))
                    + $"{tools.ToText()}\n{figures.ToText()}\n{Sentences(series)}{Words.CostBasis}\n{Words.EyeCaution}\n",
            }
        );
    }

    private static SeriesProposal Propose(Call call, Shop shop)
    {
        if ((call.Get(Eye).Length > 0) == (call.Get(SectionOption) is not null))
        {
            throw RefusedException.WrongUsage("one of EYE and --section is wanted");
        }

        (Section section, double taperLength, double taperWidth) = call.Get(SectionOption) is { } text
            ? (FigureOptions.ReadSection(call, SectionOption.Name, text), call.Or(Taper, 0), call.Or(Taper, 0))
            : OfShop(shop, call.Get(Eye));
        return SeriesProposal.TryFor(
            section,
            shop.Settings.KnockOutOf(Place.Finish),
            taperLength,
            taperWidth,
            SeriesSteps.Usual,
            out SeriesProposal? series,
            out string? refusal
        )
            ? series
            : throw RefusedException.WrongUsage(refusal);
    }

    private static (Section, double, double) OfShop(Shop shop, string name)
    {
        EyeDescribed eye =
            shop.Eyes.GetValueOrDefault(name) ?? throw RefusedException.WrongData(Words.NoEye(name, shop));
        return Section.TryMake(
            eye.Section,
            eye.Length,
            eye.Width,
            eye.NoseRadius ?? Length.Zero,
            out Section? section,
            out string? refusal
        )
            ? (section, eye.TaperLength ?? 0, eye.TaperWidth ?? 0)
            : throw RefusedException.WrongData(refusal);
    }

    private static string Sentences(SeriesProposal series) =>
        string.Concat(series.Nesting.Select(step => step.Sentence() + "\n"))
        + (series.Slits.Longest.Warning is { } warning ? warning + "\n" : "");

    private static Calculated FiguresOf(OddEyeQuote quote)
    {
        Func<double, string> money = FigureOptions.Decimals(2);
        return new([
            new("heads", "Heads", Cell.Of(quote.Heads)),
            new("set_cost", "The whole set", Cell.Of((double?)quote.SetCost, money)),
            new("set_cost_a_head", "The set, a head", Cell.Of((double?)quote.SetCostAHead, money)),
            new("wear_cost_a_head", "Wear alone, a head", Cell.Of(quote.WearCostAHead, money)),
            new("left_on_the_shelf", "Left on the shelf", Cell.Of(quote.LeftOnTheShelf, money)),
        ]);
    }

    private static Table ToolTable(OddEyeQuote quote, LengthUnit units)
    {
        string Size(double mm) => SizeShown.Caliper(Length.FromMm(mm), units);
        Func<double, string> money = FigureOptions.Decimals(2);
        double slit = quote.Series.Slits.Longest.LengthMm;
        return new(
            [
                new("tool", "Tool"),
                new("number", "No"),
                new("length_mm", "Length"),
                new("width_mm", "Width"),
                new("radius_mm", "Radius"),
                new("heats", "Heats"),
                new("life_heats", "Life"),
                new("cost", "Cost each"),
            ],
            [
                .. quote.Tools.Select(tool =>
                    (ImmutableArray<Cell>)
                        [
                            Cell.Of(tool.Tools.ToString()),
                            Cell.Of(tool.Number),
                            Cell.Of(tool.Section?.EyeLength.Mm ?? slit, Size),
                            Cell.Of(tool.Section?.EyeWidth.Mm, Size),
                            Cell.Of(tool.Section?.Radius.Mm, Size),
                            Cell.Of(tool.HeatsForAll),
                            Cell.Of(tool.Life.Value, Words.About),
                            Cell.Of((double?)tool.Cost.Total, money),
                        ]
                ),
            ]
        );
    }
}
