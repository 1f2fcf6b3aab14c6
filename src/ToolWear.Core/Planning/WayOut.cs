using ToolWear.Core.Shops;
using ToolWear.Core.Wear;

namespace ToolWear.Core.Planning;

/// <summary>How a tool that is missing is had sooner than forged new, the cheapest first. Common practice, no source.</summary>
public enum SoonerBy
{
    /// <summary>It is lent: fetch it back.</summary>
    FetchBack,

    /// <summary>It is set aside: bring it back.</summary>
    BringBack,

    /// <summary>One that is worn is re-forged on its edges: one heat brings it back on size.</summary>
    Reforge,

    /// <summary>A worn tool of another place is made into it.</summary>
    MakeInto,

    /// <summary>A new one is hardened and ground at once, before any other work.</summary>
    Haste,
}

/// <summary>The cheapest way to have a tool of a place sooner.</summary>
/// <param name="Tools">The place.</param>
/// <param name="How">The way.</param>
/// <param name="Tool">Which tool; null where a new one is made in haste.</param>
public sealed record WayOut(ToolPlace Tools, SoonerBy How, ToolInShop? Tool)
{
    internal static WayOut Of(ShopLives lives, ToolPlace place)
    {
        ShopForecasts all = lives.Forecasts;
        ToolInShop? aside = lives.Shop.Tools.Values.FirstOrDefault(tool =>
            tool.State == ToolState.SetAside
            && ToolPlace.Of(tool.Tool) == place
            && all.Of(tool.Id).HeatsLeft is { Q50: > 0 }
        );
        if (aside is not null)
        {
            return new(place, aside.Lent is null ? SoonerBy.BringBack : SoonerBy.FetchBack, aside);
        }

        // what was hardened would have to be hardened again, which is what takes the days
        CountedTool? worn =
            place.SeriesIn(lives.Shop)?.Treated == false
                ? lives.InService(place).FirstOrDefault(tool => tool.WhyNot is null)
                : null;
        ToolInShop? other = all
            .InService.Where(tool =>
                ToolPlace.Of(tool.Tool.Tool) != place
                && tool.HeatsLeft is { Q50: { } left }
                && left < tool.UsualSession
                && MadeInto.Of(all, tool) is { } into
                && into.Offers.Any(offer => offer.Series == place.SeriesIn(lives.Shop))
            )
            .Select(tool => tool.Tool)
            .FirstOrDefault();
        return worn is not null ? new(place, SoonerBy.Reforge, worn.Forecast.Tool)
            : other is not null ? new(place, SoonerBy.MakeInto, other)
            : new(place, SoonerBy.Haste, null);
    }
}
