using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Wording;

namespace ToolWear.Commands.Files;

/// <summary>set: changes a setting of the shop.</summary>
internal static class SetVerb
{
    private static readonly Argument<string> Setting = new Argument<string>("SETTING")
    {
        Description = "the setting's name",
    }.Offering([.. ShopSetting.All.Select(setting => setting.Name)]);
    private static readonly Argument<string> Value = new("VALUE")
    {
        Description = "its value; empty goes back to the usual",
    };

    public static Verb Verb { get; } =
        new(
            "set",
            "Changes a setting of the shop.",
            "set units in",
            [Setting, Value],
            Run,
            "Settings:\n" + string.Join('\n', Lines())
        );

    /// <summary>Every setting; of those that there are for each place and work only the ones that are not plainly 1.</summary>
    private static IEnumerable<string> Lines() =>
        [
            .. ShopSetting.All.Where(each => !IsPlainFactor(each)).Select(Line),
            "  factor_PLACE_WORK (else usually 1): how much a heat of other work wears a tool, against one of its own; PLACE is\n"
                + $"    {string.Join(", ", Places.Words.All)}; WORK is {string.Join(", ", Works.Words.All)}",
        ];

    private static bool IsPlainFactor(ShopSetting setting) =>
        setting.Name.StartsWith("factor_", StringComparison.Ordinal) && setting.Usual == "1";

    private static string Line(ShopSetting setting) =>
        $"  {setting.Name} (usually {(setting.Usual.Length == 0 ? "empty" : setting.Usual)}): {setting.Meaning}";

    private static void Run(Call call)
    {
        string setting = call.Get(Setting)!;
        call.Record(new SettingChanged(setting, ShopSetting.Meant(call.Get(Value)!)));
        if (setting == ShopSetting.Lubricant.Name)
        {
            call.Warn(Cautions.BlindHoleCaution);
        }
    }
}
