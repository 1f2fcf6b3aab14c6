using System.CommandLine;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Commands;

/// <summary>set: changes a setting of the shop.</summary>
internal static class SetVerb
{
    private static readonly Argument<string> Setting = new("SETTING") { Description = "the setting's name" };
    private static readonly Argument<string> Value = new("VALUE")
    {
        Description = "its value; empty goes back to the usual",
    };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "set",
            "Changes a setting of the shop.",
            "set units in",
            [Setting, Value],
            Run,
            "Settings:\n" + string.Join('\n', ShopSetting.All.Select(Line))
        );

    private static string Line(ShopSetting setting) =>
        $"  {setting.Name} ({(setting.Usual.Length == 0 ? "usually empty" : "usually " + setting.Usual)}): {setting.Meaning}";

    private static void Run(Call call)
    {
        using Bench bench = call.ToWrite();
        call.Record(bench, new SettingChanged(call.Get(Setting), call.Get(Value)));
    }
}
