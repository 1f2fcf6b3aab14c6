using System.Collections.Immutable;
using ToolWear.Commands.Calls;
using ToolWear.Core.Shops;
using ToolWear.Results;

namespace ToolWear.Commands.Files;

/// <summary>settings: how the shop speaks and works.</summary>
internal static class SettingsVerb
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("setting", "Setting"),
        new("value", "Value"),
        new("usual", "Usual"),
        new("meaning", "Meaning"),
    ];

    public static Verb Verb { get; } =
        new(
            "settings",
            "Shows the shop's settings: what it said, the usual, what each means. set changes one.",
            "settings",
            [],
            Run,
            Words.ShopCaution
        );

    private static void Run(Call call)
    {
        call.Print(
            new Table(Columns, [.. ShopSetting.All.Select(setting => Row(call.Shop, setting))]),
            after: $"\n{Words.ShopCaution}\n{Words.ForecastCaution}\n"
        );
    }

    private static ImmutableArray<Cell> Row(Shop shop, ShopSetting setting) =>
        [Cell.Of(setting.Name), Cell.Of(shop.Settings.Get(setting)), Cell.Of(setting.Usual), Cell.Of(setting.Meaning)];
}
