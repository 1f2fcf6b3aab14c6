using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Deeds;

/// <summary>Looking a tool over.</summary>
/// <param name="Entry">What is recorded.</param>
/// <param name="Doubt">The earlier finding that says otherwise, in words; null where none does. Screens ask once.</param>
public sealed record LookingOver(ToolLookedOver Entry, string? Doubt)
{
    /// <summary>A finding as it was said.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="said">The finding.</param>
    /// <returns>The deed: sound on what was found otherwise is doubted, and the other way round on one day.</returns>
    public static LookingOver Of(Shop shop, ToolLookedOver said)
    {
        if (!shop.TryFind(said.Tool, out ToolInShop? tool))
        {
            return new(said, null);
        }

        LookedOver seen = LookedOver.Of(shop, tool);
        return new(
            said,
            said.Finding == Finding.Sound ? seen.Open.FirstOrDefault()?.Words
                : seen.Last is { Finding: Finding.Sound } last && last.On == said.On && seen.SoundSinceHeats
                    ? $"found sound on {last.On:yyyy-MM-dd}{(last.By is { } by ? $" by {by}" : "")}"
                : null
        );
    }

    /// <summary>What follows from a finding for its tool.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="found">The finding, not sound.</param>
    /// <returns>What follows.</returns>
    public static FindingRule RuleOf(Shop shop, ToolLookedOver found) =>
        FindingTable.Of(
            found.Finding,
            found.Part,
            Tools.SteelClasses.Of(shop.TryFind(found.Tool, out ToolInShop? tool) ? tool.Tool.Steel : null)
        );
}
