using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.Ranges;

namespace ToolWear.Core.Planning.Years;

/// <summary>The tools of one form, place and steel in a year.</summary>
/// <param name="Form">The form's name.</param>
/// <param name="Place">The place in the series.</param>
/// <param name="Steel">The steel; null where it is not known.</param>
/// <param name="InUse">Tools not scrapped at the end of the year, or today.</param>
/// <param name="Added">Tools that came in the year: made in it, or entered in it where the day of making is not known.</param>
/// <param name="Scrapped">Tools scrapped in the year, for whatever cause.</param>
/// <param name="WornOut">Those of them that were worn out.</param>
/// <param name="Ended">Tools whose life had ended by the end of the year and whose heats from new are known.</param>
/// <param name="Life">A <see cref="MedianLife"/> in weighted heats from new, or why there is none.</param>
public sealed record YearOfTools(
    string Form,
    Place Place,
    string? Steel,
    int InUse,
    int Added,
    int Scrapped,
    int WornOut,
    int Ended,
    Estimated Life
);

/// <summary>What ended tools in a year.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Tools">How many, at least one.</param>
/// <param name="LedTo">What led to it, by how many tools; those of which it was said.</param>
public sealed record YearOfCause(ScrapCause Cause, int Tools, ImmutableArray<(LedTo LedTo, int Tools)> LedTo);

/// <summary>The heads of a pattern in a year.</summary>
/// <param name="Pattern">The pattern; null for sessions that name none.</param>
/// <param name="Sessions">Sessions of it in the year.</param>
/// <param name="Heads">Heads finished in those that counted them; null where none did.</param>
/// <param name="Uncounted">Sessions in which nobody counted the heads.</param>
/// <param name="Cost">What a head costs in tooling, as the costs say today; null where the pattern is not known to them.</param>
public sealed record YearOfHeads(string? Pattern, int Sessions, int? Heads, int Uncounted, HeadCost? Cost);

/// <summary>How much was measured in a year.</summary>
/// <param name="Readings">Caliper readings taken.</param>
/// <param name="Findings">Times that a tool was looked over.</param>
/// <param name="Heats">Weighted heats worked.</param>
/// <param name="Followed">Those of them after which the tool was read before it was reworked or scrapped, to this day.</param>
public sealed record YearMeasured(int Readings, int Findings, double Heats, double Followed)
{
    /// <summary>The share of the heats that a reading followed, 0 to 1; null where none were worked.</summary>
    public double? Share => Heats > 0 ? Followed / Heats : null;
}

/// <summary>One year of a shop.</summary>
/// <param name="Year">The year.</param>
/// <param name="Tools">A row for each form, place and steel that had tools in it.</param>
/// <param name="Causes">What ended tools, the commonest first.</param>
/// <param name="Heads">A row for each pattern forged.</param>
/// <param name="Measured">How much was measured.</param>
public sealed record ShopYear(
    int Year,
    ImmutableArray<YearOfTools> Tools,
    ImmutableArray<YearOfCause> Causes,
    ImmutableArray<YearOfHeads> Heads,
    YearMeasured Measured
)
{
    /// <summary>How the ranges held that were said before the last readings, by form and place; none where nobody asked.</summary>
    public ImmutableArray<KeptRanges> Ranges { get; init; } = [];

    /// <summary>The years that the records speak of.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>From the first session or reading to this year, without gaps; this year alone where there is none.</returns>
    public static ImmutableArray<int> Years(Shop shop, DateOnly today)
    {
        int first = shop
            .Sessions.Values.Select(session => session.On.Year)
            .Concat(shop.Tools.Values.SelectMany(tool => tool.Events.Select(each => shop.PlaceOf(tool, each).Day.Year)))
            .Append(today.Year)
            .Min();
        return [.. Enumerable.Range(first, today.Year - first + 1)];
    }

    /// <summary>Gathers a year.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="costs">Its costs; null where they are not worked out.</param>
    /// <param name="year">The year.</param>
    /// <returns>The year.</returns>
    public static ShopYear Of(Shop shop, ToolingCosts? costs, int year) =>
        new(
            year,
            [
                .. shop
                    .Tools.Values.Where(tool => CameBy(shop, tool) <= year)
                    .GroupBy(tool => (tool.Tool.Form.Name, tool.Tool.Place, tool.Tool.Steel))
                    .OrderBy(sort => sort.Key.Place)
                    .ThenBy(sort => sort.Key.Name, StringComparer.Ordinal)
                    .ThenBy(sort => sort.Key.Steel is null)
                    .ThenBy(sort => sort.Key.Steel, StringComparer.Ordinal)
                    .Select(sort => ToolsOf(shop, [.. sort], year))
                    .Where(sort => sort.InUse + sort.Scrapped > 0),
            ],
            [
                .. ScrappedIn(shop.Tools.Values, year)
                    .GroupBy(tool => tool.Scrapped!.Cause)
                    .Select(cause => new YearOfCause(cause.Key, cause.Count(), Loss.LedToOf(cause)))
                    .OrderByDescending(cause => cause.Tools)
                    .ThenBy(cause => cause.Cause),
            ],
            HeadsOf(shop, costs, year),
            MeasuredIn(shop, year)
        );

    private static YearOfTools ToolsOf(Shop shop, ToolInShop[] sort, int year)
    {
        DateOnly end = new(year, 12, 31);
        ToolInShop[] scrapped = [.. ScrappedIn(sort, year)];
        WatchedLife[] lives = [.. sort.Select(tool => ShopFailures.EndedBy(shop, tool, end)).OfType<WatchedLife>()];
        Tool first = sort[0].Tool;
        return new YearOfTools(
            first.Form.Name,
            first.Place,
            first.Steel,
            sort.Count(tool => tool.State != ToolState.Scrapped || tool.StateOn > end),
            sort.Count(tool => CameBy(shop, tool) == year),
            scrapped.Length,
            scrapped.Count(tool => tool.Scrapped!.Cause == ScrapCause.Worn),
            lives.Count(life => life.Failed),
            MedianLife.Of(lives)
        );
    }

    private static int CameBy(Shop shop, ToolInShop tool) =>
        (tool.Tool.MadeOn ?? shop.Ledger[(int)tool.Id - 1].Day).Year;

    private static IEnumerable<ToolInShop> ScrappedIn(IEnumerable<ToolInShop> tools, int year) =>
        tools.Where(tool => tool.Scrapped?.On.Year == year);

    private static ImmutableArray<YearOfHeads> HeadsOf(Shop shop, ToolingCosts? costs, int year) =>
        [
            .. shop
                .Sessions.Values.Where(session => session.On.Year == year)
                .GroupBy(session => session.Opened.Pattern, StringComparer.Ordinal)
                .OrderBy(pattern => pattern.Key is null)
                .ThenBy(pattern => pattern.Key, StringComparer.Ordinal)
                .Select(pattern => new YearOfHeads(
                    pattern.Key,
                    pattern.Count(),
                    pattern.Any(session => session.Heads is not null)
                        ? pattern.Sum(session => session.Heads ?? 0)
                        : null,
                    pattern.Count(session => session.Heads is null),
                    costs?.Heads.FirstOrDefault(head => head.Pattern == pattern.Key)
                )),
        ];

    private static YearMeasured MeasuredIn(Shop shop, int year)
    {
        YearMeasured sum = new(0, 0, 0, 0);
        foreach (ToolInShop tool in shop.Tools.Values)
        {
            double waiting = 0;
            foreach ((HistoryPlace place, Entered entered) in shop.HistoryOf(tool))
            {
                switch (entered.What)
                {
                    case HeatsWorked heats when place.Day.Year == year:
                        double weighted = shop.Weighted(tool.Tool, heats);
                        sum = sum with { Heats = sum.Heats + weighted };
                        waiting += weighted;
                        break;
                    case ToolMeasured reading:
                        sum = sum with
                        {
                            Readings = sum.Readings + (reading.On.Year == year ? 1 : 0),
                            Followed = sum.Followed + waiting,
                        };
                        waiting = 0;
                        break;
                    // the size before a rework is a reading too
                    case ToolReworked rework:
                        sum = sum with { Followed = sum.Followed + (rework.Before is null ? 0 : waiting) };
                        waiting = 0;
                        break;
                    case ToolLookedOver found when found.On.Year == year:
                        sum = sum with { Findings = sum.Findings + 1 };
                        break;
                    default:
                        break;
                }
            }
        }

        return sum;
    }
}
