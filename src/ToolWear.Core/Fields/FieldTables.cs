using System.Collections.Immutable;

namespace ToolWear.Core.Fields;

/// <summary>Every table of fields there is.</summary>
public static class FieldTables
{
    /// <summary>The tables, in the order in which their files are read: what a file refers to stands above it.</summary>
    public static ImmutableArray<IFieldTable> All { get; } =
    [
        SettingFields.Table,
        EyeFields.Table,
        HandleFields.Table,
        SeriesFields.Table,
        PatternFields.Table,
        BarFields.Table,
        ToolFields.Table,
        StationFields.Table,
        GaugeMarkFields.Table,
        InUseFields.Table,
        EventFields.Sessions,
        EventFields.Worked,
        EventFields.Readings,
        EventFields.Reworks,
        EventFields.Findings,
        EventFields.EyesMeasured,
        EventFields.Scrapped,
        EventFields.Aside,
        EventFields.Loans,
        EventFields.StockTakes,
        OrderFields.Table,
    ];
}
