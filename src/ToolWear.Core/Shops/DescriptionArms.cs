using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Shops;

/// <summary>What follows from entries that describe: eyes, handles, series, patterns, bars, orders and settings.</summary>
internal static class DescriptionArms
{
    internal static Step Describe(Shop shop, EyeDescribed e) =>
        EyeFields.Table.Fault(e) is { } fault ? fault : shop with { Eyes = shop.Eyes.SetItem(e.Name, e) };

    internal static Step Describe(Shop shop, HandleDescribed e) =>
        HandleFields.Table.Fault(e) is { } fault ? fault : shop with { Handles = shop.Handles.SetItem(e.Name, e) };

    internal static Step Describe(Shop shop, SeriesDescribed e) =>
        SeriesFields.Table.Fault(e) is { } fault
            ? fault
            : shop with
            {
                Series = shop.Series.SetItem(new SeriesKey(e.Series.Eye, e.Series.Place, e.Series.Form.Name), e.Series),
            };

    internal static Step Describe(Shop shop, PatternDescribed e) =>
        e.Stages.IsEmpty ? $"pattern {e.Pattern} has no stage: give at least one"
        : e
            .Stages.Select(stage => (stage.Name, Fault: PatternFields.Table.Fault(new(e.Pattern, stage))))
            .FirstOrDefault(each => each.Fault is not null)
            is { Fault: { } fault, Name: var stage }
            ? fault with
            {
                Sentence = $"{fault.Sentence} (stage {stage})",
            }
        : shop with { Patterns = shop.Patterns.SetItem(e.Pattern, e) };

    internal static Step Describe(Shop shop, BarDescribed e) =>
        BarFields.Table.Fault(e) is { } fault ? fault : shop with { Bars = shop.Bars.SetItem(e.Bar, e) };

    internal static Step Describe(Shop shop, OrderDescribed e) =>
        OrderFields.Table.Fault(e) is { } fault ? fault
        : shop.Patterns.ContainsKey(e.Pattern) ? shop with { Orders = shop.Orders.SetItem(e.Order, e) }
        : new FieldFault("pattern", UnknownPattern(shop, e.Pattern));

    internal static Step Change(Shop shop, SettingChanged e) =>
        shop.Settings.TryWith(e.Setting, e.Value, out ShopSettings after, out string refusal)
            ? shop with
            {
                Settings = after,
            }
            : refusal;

    private static string UnknownPattern(Shop shop, string pattern) =>
        NearNames.Refusal("pattern", pattern, shop.Patterns.Keys);
}
