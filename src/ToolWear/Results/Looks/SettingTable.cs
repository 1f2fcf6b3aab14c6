using ToolWear.Core.Shops;
using Row = ToolWear.Results.Column<(ToolWear.Core.Shops.Shop Shop, ToolWear.Core.Shops.ShopSetting Setting)>;

namespace ToolWear.Results.Looks;

/// <summary>The shop's settings.</summary>
internal static class SettingTable
{
    public static Columns<(Shop Shop, ShopSetting Setting)> Columns { get; } =
    [
        Row.Text("setting", "Setting", row => row.Setting.Name),
        Row.Text("value", "Value", row => row.Shop.Settings.Get(row.Setting)),
        Row.Text("usual", "Usual", row => row.Setting.Usual).Means("the value where the shop said nothing"),
        Row.Text("meaning", "Meaning", row => row.Setting.Meaning),
    ];
}
