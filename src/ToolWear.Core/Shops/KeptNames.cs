using System.Collections.Immutable;
using ToolWear.Core.Fields;

namespace ToolWear.Core.Shops;

/// <summary>The names that a shop keeps, for fields that offer them.</summary>
public static class KeptNames
{
    /// <summary>The names of one sort.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="kept">What they name.</param>
    /// <returns>The names; none where nothing is kept.</returns>
    public static ImmutableArray<string> In(Shop shop, Kept kept) =>
        kept switch
        {
            Kept.Eyes => [.. shop.Eyes.Keys],
            Kept.Handles => [.. shop.Handles.Keys],
            Kept.Patterns => [.. shop.Patterns.Keys],
            Kept.Sessions => [.. shop.Sessions.Keys],
            Kept.Tools =>
            [
                .. shop.Tools.Values.Where(tool => tool.State == ToolState.InService).Select(tool => tool.Mark.Text),
            ],
            Kept.Steels => [.. shop.Bars.Values.Select(bar => bar.Steel).Distinct(StringComparer.Ordinal)],
            _ => [],
        };
}
