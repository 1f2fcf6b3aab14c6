using ToolWear.Commands.Calls;
using ToolWear.Core.Shops;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>settings: how the shop speaks and works.</summary>
internal static class SettingsVerb
{
    public static Verb Verb { get; } =
        new(
            "settings",
            "Shows the shop's settings: what it said, the usual, what each means. set changes one.",
            "settings",
            [],
            Run,
            Cautions.ShopCaution
        );

    private static void Run(Call call)
    {
        call.Print(
            SettingTable.Columns.Over(ShopSetting.All.Select(setting => (call.Shop, setting))),
            after: $"\n{Cautions.ShopCaution}\n{Cautions.ForecastCaution}\n"
        );
    }
}
