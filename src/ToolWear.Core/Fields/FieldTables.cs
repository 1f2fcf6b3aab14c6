using System.Collections.Immutable;

namespace ToolWear.Core.Fields;

/// <summary>Every table of fields there is.</summary>
public static class FieldTables
{
    /// <summary>The tables, in the order in which their files are read.</summary>
    public static ImmutableArray<IFieldTable> All { get; } = [BarFields.Table];
}
