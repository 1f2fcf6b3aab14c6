using System.Collections.Immutable;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear.Core.Deeds;

/// <summary>Heats that a tool worked.</summary>
/// <param name="Opens">The session that is opened for them; null where there is one.</param>
/// <param name="Heats">The heats.</param>
public sealed record Working(SessionOpened? Opens, HeatsWorked Heats)
{
    /// <summary>What is recorded, both or none: no session is left behind that nobody opened.</summary>
    public ImmutableArray<LedgerEntry> Entries => Opens is null ? [Heats] : [Opens, Heats];

    /// <summary>What speaks against heats on a tool: they are recorded all the same, for they happened, and it is told.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecasts">The forecasts, be they those of before; null while there are none.</param>
    /// <param name="tool">The tool's number.</param>
    /// <returns>Each reason with what to do, without a full stop; none where nothing does.</returns>
    public static ImmutableArray<string> Against(Shop shop, ShopForecasts? forecasts, long tool)
    {
        ToolInShop used = shop.Tools[tool];
        string? state =
            used.State == ToolState.Scrapped
                ? $"scrapped on {used.StateOn:yyyy-MM-dd}: if it was another tool, cross the entry out"
            : used.Lent is { } lent ? $"lent to {lent.To} since {lent.On:yyyy-MM-dd}: if it is back, take it back"
            : used.State == ToolState.SetAside
                ? $"set aside since {used.StateOn:yyyy-MM-dd}: if it is to work, bring it back"
            : null;
        IEnumerable<Reason> reasons = ShopVerdicts.WithoutForecast(shop, used).Reasons;
        reasons = reasons.Any(each => each.Verdict == Verdict.PastItsLimit)
            ? reasons
            : reasons.Concat(
                forecasts?.VerdictOf(tool)?.Reasons.Where(each => each.Verdict == Verdict.PastItsLimit) ?? []
            );
        return
        [
            .. state is null ? [] : (string[])[state],
            .. (used.State == ToolState.Scrapped ? [] : reasons)
                .Where(each => each.Verdict <= Verdict.PastItsLimit)
                .Select(each => each.Verdict == Verdict.PastItsLimit ? $"{each.Why}: measure it once cold" : each.Why),
        ];
    }

    /// <summary>Heats as they were said.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="heats">How many.</param>
    /// <param name="work">Their work; null for the tool's main work.</param>
    /// <param name="how">Whether they were counted.</param>
    /// <param name="session">The session that was named; null for the open one, else the last of the day.</param>
    /// <param name="day">The day that was named; null for today, whatever the day of the open session.</param>
    /// <param name="today">The shop's day.</param>
    /// <returns>The deed.</returns>
    public static Working Of(
        Shop shop,
        ToolInShop tool,
        Heats heats,
        Work? work,
        HeatsHow how,
        string? session,
        DateOnly? day,
        DateOnly today
    )
    {
        DateOnly on = day ?? today;
        string? known =
            session
            ?? (
                shop.OpenSession is { } open && (day is null || open.On == on)
                    ? open.Name
                    : shop.SessionsOn(on).LastOrDefault()?.Name
            );
        string name = known ?? SessionNames.Next(shop, on);
        return new(
            known is null ? new SessionOpened(name, on, null, Care.Usual, null, null) : null,
            new HeatsWorked(name, tool.Mark, work ?? tool.Tool.MainWork, heats, how)
        );
    }
}
