using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Shops;

/// <summary>What showed that a tool was there.</summary>
public enum Sighting
{
    /// <summary>It was made or entered.</summary>
    Entered,

    /// <summary>It worked.</summary>
    Heats,

    /// <summary>It was measured.</summary>
    Reading,

    /// <summary>It was looked over.</summary>
    Finding,

    /// <summary>It was reworked.</summary>
    Rework,

    /// <summary>It went aside or out on loan, or came back.</summary>
    Moved,

    /// <summary>It was seen at a stock-take.</summary>
    StockTake,
}

/// <summary>When a tool that is not scrapped was there last, and whether it was looked for since.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="SeenOn">The last day on which it was certainly there.</param>
/// <param name="SeenAs">What shows it.</param>
/// <param name="LookedFor">The last stock-take that asked for it; null where none did.</param>
public sealed record ToolPresence(ToolInShop Tool, DateOnly SeenOn, Sighting SeenAs, ToolLookedFor? LookedFor)
{
    /// <summary>The words of <see cref="Sighting"/>.</summary>
    public static Vocabulary<Sighting> SightingWords { get; } =
        new(
            "sighting",
            (Sighting.Entered, "entered"),
            (Sighting.Heats, "heats"),
            (Sighting.Reading, "reading"),
            (Sighting.Finding, "finding"),
            (Sighting.Rework, "rework"),
            (Sighting.Moved, "moved"),
            (Sighting.StockTake, "stock-take")
        );

    /// <summary>Whether it was not seen when it was looked for last, and nothing showed it since.</summary>
    public bool IsMissing => LookedFor is { Seen: false } looked && SeenOn <= looked.On;

    /// <summary>Whether its last stock-take says otherwise: it was not to be found, or was asked for on that very day.</summary>
    /// <param name="seen">Whether it is there.</param>
    /// <param name="on">The day.</param>
    /// <returns>True where one asks once before it is recorded.</returns>
    public bool SaysOtherwise(bool seen, DateOnly on) =>
        LookedFor is { } last && last.Seen != seen && (IsMissing || last.On == on);

    /// <summary>Every tool that is not scrapped.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Those in service first, then those aside or lent, each by its number.</returns>
    public static ImmutableArray<ToolPresence> All(Shop shop) =>
        [
            .. shop
                .Tools.Values.Where(tool => tool.State != ToolState.Scrapped)
                .OrderBy(tool => tool.State)
                .Select(tool => Of(shop, tool)),
        ];

    /// <summary>One tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>When it was there last.</returns>
    public static ToolPresence Of(Shop shop, ToolInShop tool)
    {
        DateOnly entered = shop.Ledger[(int)tool.Id - 1].Day;
        ToolPresence seen = new(tool, tool.Tool.MadeOn ?? entered, Sighting.Entered, null);
        foreach (Entered each in tool.Events)
        {
            seen = each.What switch
            {
                HeatsWorked e => seen.At(shop.Sessions[e.Session].On, Sighting.Heats),
                ToolMeasured e => seen.At(e.On, Sighting.Reading),
                ToolLookedOver e => seen.At(e.On, Sighting.Finding),
                ToolReworked e => seen.At(e.On, Sighting.Rework),
                ToolSetAside e => seen.At(e.On, Sighting.Moved),
                ToolBroughtBack e => seen.At(e.On, Sighting.Moved),
                ToolLent e => seen.At(e.On, Sighting.Moved),
                ToolTakenBack e => seen.At(e.On, Sighting.Moved),
                ToolLookedFor e => (e.Seen ? seen.At(e.On, Sighting.StockTake) : seen).Asked(e),
                _ => seen,
            };
        }

        return seen;
    }

    private ToolPresence At(DateOnly on, Sighting how) => on >= SeenOn ? this with { SeenOn = on, SeenAs = how } : this;

    private ToolPresence Asked(ToolLookedFor asked) =>
        LookedFor is null || asked.On >= LookedFor.On ? this with { LookedFor = asked } : this;
}
