using System.Globalization;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Backups;

/// <summary>The name of a backup the store makes by itself: 01234567-20261124T224246123Z-0000000042-89abcdef.journal.</summary>
/// <param name="Shop">The first eight digits of the shop's id: two shops can share a folder.</param>
/// <param name="At">When it was made, in UTC.</param>
/// <param name="Seq">The number of its last entry.</param>
/// <param name="Crc">The checksum of its last line.</param>
internal sealed record BackupName(string Shop, DateTimeOffset At, long Seq, uint Crc)
{
    /// <summary>How the name of a backup ends.</summary>
    internal const string Ending = ".journal";

    private const string Stamp = "yyyyMMdd'T'HHmmssfff'Z'";
    private const int ShopDigits = 8;

    /// <summary>The name for a copy made now.</summary>
    /// <param name="point">What it holds.</param>
    /// <param name="at">Now.</param>
    /// <returns>The name.</returns>
    internal static BackupName Of(JournalPoint point, DateTimeOffset at) =>
        new(ShopOf(point.Shop), at.ToUniversalTime(), point.Seq, point.Crc);

    /// <summary>What of a shop's id stands in the name.</summary>
    /// <param name="shop">The whole id.</param>
    /// <returns>Its first eight digits.</returns>
    internal static string ShopOf(string shop) => shop[..ShopDigits];

    /// <summary>Reads a file's name; what is not exactly such a name is not ours and is never touched.</summary>
    /// <param name="path">A path.</param>
    /// <returns>The name, or null.</returns>
    internal static BackupName? TryRead(string path)
    {
        string name = Path.GetFileName(path);
        string[] parts = name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length].Split('-') : [];
        if (
            parts.Length == 4
            && parts[0].Length == ShopDigits
            && DateTimeOffset.TryParseExact(
                parts[1],
                Stamp,
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal,
                out DateTimeOffset at
            )
            && long.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out long seq)
            && uint.TryParse(parts[3], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out uint crc)
        )
        {
            var read = new BackupName(parts[0], at, seq, crc);
            return read.ToString() == name ? read : null;
        }
        return null;
    }

    /// <summary>The file's name.</summary>
    /// <returns>Without a folder.</returns>
    public override string ToString() =>
        $"{Shop}-{At.ToString(Stamp, CultureInfo.InvariantCulture)}-{Seq:d10}-{Crc:x8}{Ending}";
}
