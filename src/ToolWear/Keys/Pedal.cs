using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Keys;

/// <summary>The key of a foot pedal at the hammer.</summary>
internal static class Pedal
{
    /// <summary>The key as the table of keys names it.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The key; null where none is set, or where another key of the tally has it.</returns>
    public static string? KeyOf(Shop shop) =>
        shop.Settings.PedalKey is { } key && TakenBy(key) is null ? NameOf(key) : null;

    /// <summary>What is wrong with a change of the pedal's key.</summary>
    /// <param name="entry">Any entry.</param>
    /// <returns>What would be right; null where nothing is wrong.</returns>
    public static string? Fault(LedgerEntry entry) =>
        entry is SettingChanged { Value.Length: > 0 } change
        && change.Setting == ShopSetting.Pedal.Name
        && TakenBy(change.Value) is { } row
            ? $"pedal_key \"{change.Value}\": at the hammer {row.Shown} is \"{row.Words}\" already; choose a free key, such as p, Enter or F5"
            : null;

    private static string NameOf(string key) => key.Length == 1 ? key.ToLowerInvariant() : key;

    private static KeyRow? TakenBy(string key) =>
        KeyTable.Of(ScreenName.Hammer).FirstOrDefault(row => row.Names.Contains(NameOf(key), StringComparer.Ordinal));
}
