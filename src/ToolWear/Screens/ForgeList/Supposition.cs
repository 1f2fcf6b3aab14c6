using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Results.Plans;
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
    private const string SureAsked = "How sure";
    private const string OrderToGrow = "Order";
    private const string HeadsMore = "More heads";
    private const string ToolLost = "Tool lost";
    private const string SureMeaning = "A share above 0 and below 1: 0.95 is nineteen times in twenty.";
    private const string OrderToGrowMeaning = "Which order grows: type its first letters, or use the arrows.";
    private const string HeadsMoreMeaning = "How many more heads it would have.";
    private const string ToolLostMeaning = "Which tool would be lost: type its first letters, or use the arrows.";

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
                Act.Certainty => [new(SureAsked, SureMeaning, [])],
                Act.MoreHeads =>
                [
                    new(OrderToGrow, OrderToGrowMeaning, Orders(shop)),
                    new(HeadsMore, HeadsMoreMeaning, []),
                ],
                _ => [new(ToolLost, ToolLostMeaning, Tools(shop, place))],
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
                string text = ShopSetting.Meant(first);
                if (ShopSetting.Sure.Fault(text) is null)
                {
                    double sure = double.Parse(text, CultureInfo.InvariantCulture);
                    return new(new SettingChanged(ShopSetting.Sure.Name, text), PlanWords.IfSure(sure));
                }

                refusal = (0, NoSure(first));
                return null;
            case Act.MoreHeads when !Orders(shop).Contains(first, StringComparer.Ordinal):
                refusal = (0, NotAnOpenOrder(first));
                return null;
            case Act.MoreHeads when ReadHeads(Guided[1]) is { } more:
                OrderDescribed order = shop.Orders[first];
                return new(order with { Heads = order.Heads + more }, PlanWords.IfHeads(first, more));
            case Act.MoreHeads:
                refusal = (1, NoHeadsMore(Guided[1]));
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
                        PlanWords.IfLost(first)
                    );
                }

                refusal = (0, NotInService(first));
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

    private static string NoSure(string text) => $"\"{text}\": a share above 0 and below 1, such as 0.95";

    private static string NoHeadsMore(string text) => $"\"{text}\": a whole number from 1 to 10000";

    private static string NotInService(string text) => $"\"{text}\": name a tool in service";

    private static string NotAnOpenOrder(string text) => $"\"{text}\": name an open order";
}
