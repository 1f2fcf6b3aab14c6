using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>What a journal or a backup holds.</summary>
/// <param name="Point">Its end.</param>
/// <param name="Until">The shop's day of its last entry; null before the first.</param>
public sealed record JournalHeld(JournalPoint Point, DateOnly? Until)
{
    /// <summary>Which shop, until which day and entry, for the smith.</summary>
    /// <returns>"shop 01234567 until 2026-11-24, entry 42".</returns>
    public override string ToString() =>
        $"shop {BackupName.ShopOf(Point.Shop)}"
        + (Until is { } day ? $" until {JournalFormat.DayText(day)}, entry {Point.Seq}" : ", no entry yet");
}
