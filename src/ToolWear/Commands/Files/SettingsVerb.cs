using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>settings: how the shop speaks and works.</summary>
internal static class SettingsVerb
{
    private const string Every = "all";

    private static readonly Argument<string?> Which = Said.Maybe(
            "WHICH",
            "\"all\", or how their names begin, such as guess_heats; usually those that were set"
        )
        .Offering([Every, "guess_heats", .. Core.Tools.Places.Words.All.Select(place => $"factor_{place}")]);

    public static Verb Verb { get; } =
        new("settings", "Shows the shop's settings.", "settings", [Which], Run, Cautions.ShopCaution);

    private static void Run(Call call)
    {
        string? which = call.Get(Which);
        ShopSetting[] shown =
        [
            .. ShopSetting.All.Where(setting =>
                which is null
                    ? call.Format != "text" || call.Shop.Settings.Get(setting) != setting.Usual
                    : which == Every || setting.Name.StartsWith(which, StringComparison.Ordinal)
            ),
        ];
        if (which is not null && shown.Length == 0)
        {
            throw RefusedException.WrongData(Call.NoSuch("setting", which, ShopSetting.All.Select(each => each.Name)));
        }

        call.Print(
            SettingTable.Columns.Over(shown.Select(setting => (call.Shop, setting))),
            after: $"\n{(which is null ? AsUsual(ShopSetting.All.Length - shown.Length) : "")}{Cautions.ShopCaution}\n{Cautions.ForecastCaution}\n"
        );
    }

    private static string AsUsual(int others) =>
        $"{others} more are as usual: toolwear settings all, or some of them, such as toolwear settings guess_heats.\n\n";
}
