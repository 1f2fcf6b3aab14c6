using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>A tool of a set that has to be made for an odd eye.</summary>
/// <param name="Tools">Its place, without an eye.</param>
/// <param name="Section">Its section at the mark; null for the slitter, whose width is the slit.</param>
/// <param name="Cost">What it costs to make, as others of its place and form.</param>
/// <param name="Life">Weighted heats it lasts.</param>
/// <param name="HeatsForAll">Weighted heats that all heads take of it.</param>
/// <param name="Number">How many of it all heads take, at the certainty asked for; null where none is enough.</param>
public sealed record QuotedTool(
    ToolPlace Tools,
    Section? Section,
    PlaceCost Cost,
    Estimate Life,
    double HeatsForAll,
    int? Number
)
{
    /// <summary>What making them costs; null where nothing is known.</summary>
    public decimal? SetCost => Cost.Total * Number;

    /// <summary>What the wear of all heads costs: heats over the median life, times the cost; null where not known.</summary>
    public double? WearCost => Life.Value > 0 ? (double?)Cost.Total * HeatsForAll / Life.Value : null;
}

/// <summary>A quote for an odd eye: the series it takes and what that costs a head.</summary>
/// <param name="Heads">How many heads it is spread over.</param>
/// <param name="Series">The series proposed.</param>
/// <param name="Tools">The tools of the set, in the order of use.</param>
public sealed record OddEyeQuote(int Heads, SeriesProposal Series, ImmutableArray<QuotedTool> Tools)
{
    // heats a head where no pattern of the shop says: common practice, no source
    private static readonly ImmutableArray<(string Form, Place Place, double Heats)> UsualHeats =
    [
        ("slitter", Place.None, 2),
        ("drift", Place.Rough, 3.25),
        ("drift", Place.Second, 1),
        ("drift", Place.Finish, 2),
    ];

    /// <summary>The cost of the whole set; null where some tool's is not known.</summary>
    public decimal? SetCost => Tools.Any(tool => tool.SetCost is null) ? null : Tools.Sum(tool => tool.SetCost);

    /// <summary>The cost a head if the heads pay for the whole set.</summary>
    public decimal? SetCostAHead => SetCost / Heads;

    /// <summary>The cost a head if the heads pay only for the wear.</summary>
    public double? WearCostAHead =>
        Tools.Any(tool => tool.WearCost is null) ? null : Tools.Sum(tool => tool.WearCost) / Heads;

    /// <summary>What is left on the shelf afterwards: the cost of the set less that of the wear.</summary>
    public double? LeftOnTheShelf => (double?)SetCost - (WearCostAHead * Heads);

    /// <summary>Makes a quote.</summary>
    /// <param name="lives">The lives of the shop's tools, which new ones will be like.</param>
    /// <param name="series">The series proposed for the eye.</param>
    /// <param name="heads">How many heads, above zero.</param>
    /// <param name="sure">The certainty with which the set is to last.</param>
    /// <returns>The quote.</returns>
    public static OddEyeQuote Of(ShopLives lives, SeriesProposal series, int heads, double sure)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heads, 1);
        ImmutableArray<HeatsAHead> stages =
        [
            .. lives.Shop.Patterns.Values.SelectMany(pattern => HeatsAHead.Of(lives.Shop, pattern)),
        ];
        return new OddEyeQuote(
            heads,
            series,
            [.. UsualHeats.Select(tool => Of(lives, series, stages, tool, heads, sure))]
        );
    }

    private static QuotedTool Of(
        ShopLives lives,
        SeriesProposal series,
        ImmutableArray<HeatsAHead> stages,
        (string Form, Place Place, double Heats) usual,
        int heads,
        double sure
    )
    {
        // an eye of no name, so that no tool there is counts
        ToolPlace place = new("", usual.Place, usual.Form);
        double aHead = stages
            .Where(stage => stage.Tools is { } tools && tools.Form == usual.Form && tools.Place == usual.Place)
            .GroupBy(stage => stage.Pattern, StringComparer.Ordinal)
            .Select(pattern => pattern.Sum(stage => stage.Weighted))
            .DefaultIfEmpty(usual.Heats)
            .Average();
        PlaceLives drawn = lives.At(place);
        double heats = aHead * heads;
        Section? section = usual.Place switch
        {
            Place.Rough => series.Rough,
            Place.Second => series.Second,
            Place.Finish => series.Finish,
            _ => null,
        };
        return new QuotedTool(
            place with
            {
                Eye = null,
            },
            section,
            PlaceCost.Usual(lives.Shop, place),
            drawn.NewLife,
            heats,
            (drawn.Needs(heats, sure) as Replacements)?.Needed
        );
    }
}
