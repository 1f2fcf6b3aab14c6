using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ForgeList;

/// <summary>Something that is supposed while the plan is looked at.</summary>
/// <param name="Entry">The entry that it would be.</param>
/// <param name="Words">What it is, in words.</param>
internal sealed record Supposition(LedgerEntry Entry, string Words);

/// <summary>Asks what to suppose.</summary>
/// <param name="Act">What is asked for: another certainty, more heads, a tool lost.</param>
/// <param name="Guided">The questions.</param>
internal sealed record SupposingSheet(Act Act, GuidedLine Guided)
{
    /// <summary>Begins to ask.</summary>
    /// <param name="act">What for.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="place">The place whose tools are offered first; null for any.</param>
    /// <returns>The questions.</returns>
    public static SupposingSheet Of(Act act, Shop shop, ToolPlace? place)
    {
        GuidedLine guided = new(
            act switch
            {
                Act.Certainty => [new(ToolWear.Words.SureAsked, ToolWear.Words.SureMeaning, [])],
                Act.MoreHeads =>
                [
                    new(ToolWear.Words.OrderToGrow, ToolWear.Words.OrderToGrowMeaning, Orders(shop)),
                    new(ToolWear.Words.HeadsMore, ToolWear.Words.HeadsMoreMeaning, []),
                ],
                _ => [new(ToolWear.Words.ToolLost, ToolWear.Words.ToolLostMeaning, Tools(shop, place))],
            }
        );
        guided.Offer(
            0,
            act == Act.Certainty
                ? shop.Settings.Sure.ToString("0.###", CultureInfo.InvariantCulture)
                : guided.Questions[0].Choices.FirstOrDefault("")
        );
        return new SupposingSheet(act, guided);
    }

    /// <summary>What the answers come to.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="refusal">The question that was answered wrongly and why, where one was.</param>
    /// <returns>The supposition; null where an answer is wrong.</returns>
    public Supposition? Read(Shop shop, DateOnly today, out (int At, string Why)? refusal)
    {
        refusal = null;
        string first = Guided[0].Trim();
        switch (Act)
        {
            case Act.Certainty:
                string text = first.Replace(',', '.');
                if (ShopSetting.Sure.Fault(text) is null)
                {
                    double sure = double.Parse(text, CultureInfo.InvariantCulture);
                    return new(new SettingChanged(ShopSetting.Sure.Name, text), ToolWear.Words.IfSure(sure));
                }

                refusal = (0, ToolWear.Words.NoSure(first));
                return null;
            case Act.MoreHeads when !Orders(shop).Contains(first, StringComparer.Ordinal):
                refusal = (0, ToolWear.Words.NotAnOpenOrder(first));
                return null;
            case Act.MoreHeads when ReadHeads(Guided[1]) is { } more:
                OrderDescribed order = shop.Orders[first];
                return new(order with { Heads = order.Heads + more }, ToolWear.Words.IfHeads(first, more));
            case Act.MoreHeads:
                refusal = (1, ToolWear.Words.NoHeadsMore(Guided[1]));
                return null;
            default:
                if (
                    ToolMark.TryParse(first, out ToolMark mark, out _)
                    && shop.TryFind(mark, out ToolInShop? tool)
                    && tool.State != ToolState.Scrapped
                )
                {
                    return new(
                        new ToolScrapped(tool.Mark, today, ScrapCause.Lost, null, null),
                        ToolWear.Words.IfLost(first)
                    );
                }

                refusal = (0, ToolWear.Words.NotInService(first));
                return null;
        }
    }

    private static int? ReadHeads(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int more) && more is > 0 and <= 10_000
            ? more
            : null;

    private static ImmutableArray<string> Orders(Shop shop) =>
        [
            .. shop
                .Orders.Values.Where(order => order.State == OrderState.Open)
                .OrderBy(order => order.DueOn)
                .Select(order => order.Order),
        ];

    private static ImmutableArray<string> Tools(Shop shop, ToolPlace? place) =>
        [
            .. shop
                .Tools.Values.Where(tool => tool.State == ToolState.InService)
                .OrderBy(tool => ToolPlace.Of(tool.Tool) != place)
                .Select(tool => tool.Mark.Text),
        ];
}
