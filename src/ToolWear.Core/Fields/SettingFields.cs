using ToolWear.Core.Ledger;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Core.Fields;

/// <summary>The fields of a setting that the shop changed; which settings there are is another list.</summary>
public static class SettingFields
{
    /// <summary>The table.</summary>
    public static FieldTable<SettingChanged> Table { get; } =
        new FieldTable<SettingChanged>("shop.csv", new("", ""))
            .Key("setting", Text, s => s.Setting, (s, v) => s with { Setting = v! })
            .Means("the setting's name: toolwear set --help")
            .Needs("value", Text, s => s.Value, (s, v) => s with { Value = v! })
            .Means("the setting's value; empty is the usual");
}
