using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>A tool of a set that has to be made for an odd eye.</summary>
/// <param name="Tool">What it is made like, from which bar, for how much.</param>
/// <param name="Life">Weighted heats it lasts.</param>
/// <param name="HeatsForAll">Weighted heats that all heads take of it.</param>
/// <param name="Number">How many of it all heads take, at the certainty asked for; null where none is enough.</param>
public sealed record QuotedTool(PlannedTool Tool, Estimate Life, double HeatsForAll, int? Number)
{
    /// <summary>What making them costs; null where nothing is known.</summary>
    public decimal? SetCost => Tool.Cost.Total * Number;

    /// <summary>The hours that making them takes; null where none are noted.</summary>
    public decimal? Hours => Tool.Cost.Hours * Number;

    /// <summary>What the wear of all heads costs: heats over the median life, times the cost; null where not known.</summary>
    public double? WearCost => Life.Value > 0 ? (double?)Tool.Cost.Total * HeatsForAll / Life.Value : null;
}

/// <summary>A quote for an odd eye: the series it takes and what that costs a head.</summary>
/// <param name="Heads">How many heads it is spread over.</param>
/// <param name="Series">The series: as entered, else as proposed, with what it is cut from.</param>
/// <param name="Tools">The tools of the set, in the order of use.</param>
public sealed record OddEyeQuote(int Heads, SeriesPlan Series, ImmutableArray<QuotedTool> Tools)
{
    // heats a head where no pattern of the shop says: common practice, no source
    private const double UsualSlit = 2;
    private const double UsualRough = 3.25;
    private const double UsualFinish = 2;
    private const double Usual = 1;

    /// <summary>The cost of the whole set; null where some tool's is not known.</summary>
    public decimal? SetCost => Tools.Any(tool => tool.SetCost is null) ? null : Tools.Sum(tool => tool.SetCost);

    /// <summary>The hours of the whole set; null where some tool's are not known.</summary>
    public decimal? Hours => Tools.Any(tool => tool.Hours is null) ? null : Tools.Sum(tool => tool.Hours);

    /// <summary>The cost a head if the heads pay for the whole set.</summary>
    public decimal? SetCostAHead => SetCost / Heads;

    /// <summary>The cost a head if the heads pay only for the wear.</summary>
    public double? WearCostAHead =>
        Tools.Any(tool => tool.WearCost is null) ? null : Tools.Sum(tool => tool.WearCost) / Heads;

    /// <summary>What is left on the shelf afterwards: the cost of the set less that of the wear.</summary>
    public double? LeftOnTheShelf => (double?)SetCost - (WearCostAHead * Heads);

    /// <summary>Makes a quote.</summary>
    /// <param name="lives">The lives of the shop's tools, which new ones will be like.</param>
    /// <param name="series">The series for the eye.</param>
    /// <param name="heads">How many heads, above zero.</param>
    /// <param name="sure">The certainty with which the set is to last.</param>
    /// <returns>The quote.</returns>
    public static OddEyeQuote Of(ShopLives lives, SeriesPlan series, int heads, double sure)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heads, 1);
        ImmutableArray<HeatsAHead> stages = [.. HeatsAHead.Of(lives.Shop).Values.SelectMany(each => each)];
        ImmutableArray<(Series Series, Estimate Life, double Heats, int? Number)> sets =
        [
            .. series.Tools.Select(tool => Set(lives, tool.Series, AHead(stages, tool.Series) * heads, sure)),
        ];
        // what is cut depends on how many there are
        SeriesPlan plan = SeriesPlan.Of(
            lives.Shop,
            series.Eye,
            [.. sets.Select(set => set.Series)],
            each => sets.First(set => set.Series == each).Number ?? 1
        );
        return new OddEyeQuote(
            heads,
            plan,
            [.. plan.Tools.Zip(sets, (tool, set) => new QuotedTool(tool, set.Life, set.Heats, set.Number))]
        );
    }

    private static (Series, Estimate, double, int?) Set(ShopLives lives, Series series, double heats, double sure)
    {
        // an eye of no name, so that no tool there is counts
        PlaceLives drawn = lives.At(new ToolPlace("", series.Place, series.Form.Name));
        int? number = (drawn.Needs(heats, sure) as Replacements)?.Needed;
        return (series, drawn.NewLife, heats, number);
    }

    // the mean over the patterns that use such a tool
    private static double AHead(ImmutableArray<HeatsAHead> stages, Series series) =>
        stages
            .Where(stage => stage.Tools is { } tools && tools.Form == series.Form.Name && tools.Place == series.Place)
            .GroupBy(stage => stage.Pattern, StringComparer.Ordinal)
            .Select(pattern => pattern.Sum(stage => stage.Weighted))
            .DefaultIfEmpty(
                series.Form.OpensASlit ? UsualSlit
                : series.Place == Place.Rough ? UsualRough
                : series.Place == Place.Finish ? UsualFinish
                : Usual
            )
            .Average();
}
