using ToolWear.Core.Findings;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Core.Wear.Verdicts;

// S(k) = (1 - F(k)) S_crack(n+k)/S_crack(n), F the largest over the tool's gauge marks, k the heats of the session
/// <summary>The chance that a tool lasts its next usual session. It is an estimate, not a go-ahead.</summary>
/// <param name="Heats">Weighted heats k of that session, above zero.</param>
/// <param name="ByWear">The chance that it is inside its limits after it, 0 to 1.</param>
/// <param name="WithCracks">The chance that it is, and has neither cracked nor broken; null where none of its sort did,
/// or where nobody knows its heats from new.</param>
/// <param name="OnRecord">The cracks and breaks of its sort.</param>
public sealed record SessionOutlook(double Heats, double ByWear, double? WithCracks, ShopFailures OnRecord)
{
    /// <summary>Reckons the chance for a tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="forecast">The tool with its forecasts.</param>
    /// <returns>The chance; null where the tool is scrapped or may not be used, or no forecast speaks.</returns>
    public static SessionOutlook? Of(Shop shop, ToolForecast forecast)
    {
        ToolInShop tool = forecast.Tool;
        double k = forecast.UsualSession;
        if (
            tool.State == ToolState.Scrapped
            || LookedOver.Of(shop, tool).Forbids is not null
            || forecast.ChancePastLimit(k) is not { } F
        )
        {
            return null;
        }

        ShopFailures onRecord = ShopFailures.Of(shop, tool.Tool);
        double? withCracks =
            onRecord.Failures > 0 && ShopFailures.HeatsFromNew(shop, tool) is { } n
                ? (1 - F) * SuddenFailures.Of(onRecord.Lives, shop.GuessOf(tool.Tool).Heats).ChanceStanding(n, k)
                : null;
        return new(k, 1 - F, withCracks, onRecord);
    }
}
