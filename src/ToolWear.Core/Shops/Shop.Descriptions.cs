using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;

namespace ToolWear.Core.Shops;

/// <content>Eyes, handles, series, patterns, bars, orders and settings are entered or changed.</content>
public sealed partial record Shop
{
    private Step Describe(EyeDescribed e) =>
        EyeFields.Table.Fault(e) is { } fault ? fault : this with { Eyes = Eyes.SetItem(e.Name, e) };

    private Step Describe(HandleDescribed e) =>
        HandleFields.Table.Fault(e) is { } fault ? fault : this with { Handles = Handles.SetItem(e.Name, e) };

    private Step Describe(SeriesDescribed e) =>
        SeriesFields.Table.Fault(e) is { } fault
            ? fault
            : this with
            {
                Series = Series.SetItem(new SeriesKey(e.Series.Eye, e.Series.Place, e.Series.Form.Name), e.Series),
            };

    private Step Describe(PatternDescribed e) =>
        e.Stages.IsEmpty ? new FieldFault("stage", $"pattern {e.Pattern} has no stage: at least one is wanted")
        : e
            .Stages.Select(stage => PatternFields.Table.Fault(new(e.Pattern, stage)))
            .FirstOrDefault(fault => fault is not null)
            is { } fault
            ? fault
        : this with { Patterns = Patterns.SetItem(e.Pattern, e) };

    private Step Describe(BarDescribed e) =>
        BarFields.Table.Fault(e) is { } fault ? fault : this with { Bars = Bars.SetItem(e.Bar, e) };

    private Step Describe(OrderDescribed e) =>
        OrderFields.Table.Fault(e) is { } fault ? fault
        : Patterns.ContainsKey(e.Pattern) ? this with { Orders = Orders.SetItem(e.Order, e) }
        : new FieldFault("pattern", UnknownPattern(e.Pattern));

    private Step Change(SettingChanged e) =>
        Settings.TryWith(e.Setting, e.Value, out ShopSettings after, out string refusal)
            ? this with
            {
                Settings = after,
            }
            : refusal;

    private string UnknownPattern(string pattern) =>
        $"none is called {pattern}: "
        + (Patterns.IsEmpty ? "none has been entered yet" : $"there are {string.Join(", ", Patterns.Keys)}");
}
