using System.Collections.Immutable;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>How far a shop is known to have come: number and checksum in the names of its backups, held against its journal.</summary>
/// <param name="disk">The disk.</param>
/// <param name="folder">The folder of backups.</param>
internal sealed class HighWater(IDisk disk, string folder)
{
    private readonly ImmutableArray<(string Path, BackupName Name)> _backups = BackupFolder.Of(
        disk,
        folder,
        shop: null
    );
    private readonly HashSet<(long, uint)> _lines = [];

    /// <summary>Takes a line of the journal.</summary>
    /// <param name="line">The line.</param>
    internal void Take(JournalLine line)
    {
        if (!_backups.IsEmpty)
        {
            _lines.Add((line.LastSeq, line.Crc));
        }
    }

    /// <summary>Says where a journal has fallen back behind a backup.</summary>
    /// <param name="disk">The disk.</param>
    /// <param name="folder">A folder of backups, or nothing.</param>
    /// <param name="journal">The journal's path.</param>
    /// <param name="end">Its end.</param>
    /// <returns>A whole sentence; null where no backup holds more.</returns>
    internal static string? Behind(IDisk disk, string folder, string journal, JournalPoint end) =>
        BackupFolder.Of(disk, folder, end.Shop) is [{ } newest, ..] && newest.Name.Seq > end.Seq
            ? $"{journal} ends with entry {end.Seq}, but the backup {newest.Path} holds entry {newest.Name.Seq}: this is an older "
                + "journal. Nothing was changed. \"toolwear check\" brings back what the backup holds; \"toolwear restore "
                + "FILE\" goes back on purpose."
            : null;

    /// <summary>Says where the journal has fallen back behind a backup, or has gone another way.</summary>
    /// <param name="journal">The journal's path.</param>
    /// <param name="end">Its end, once all lines were taken.</param>
    /// <returns>A whole sentence; null where every backup of the shop is part of the journal.</returns>
    internal string? Fault(string journal, JournalPoint end)
    {
        if (Behind(disk, folder, journal, end) is { } fault)
        {
            return fault;
        }
        foreach (
            (string path, BackupName name) in _backups.Where(each => each.Name.Shop == BackupName.ShopOf(end.Shop))
        )
        {
            if (name.Seq > 0 && !_lines.Contains((name.Seq, name.Crc)))
            {
                return $"{journal} and the backup {path} part at or before entry {name.Seq}: the shop was continued from an "
                    + "older journal. Nothing was changed. \"toolwear backup FILE\" keeps the one, \"toolwear restore FILE\" "
                    + "with either says which goes on.";
            }
        }
        return null;
    }
}
