namespace ToolWear.Testing.Disks;

/// <summary>What of the writes and names that were not yet synced has reached the disk when the power is cut.</summary>
/// <param name="Last">Which part of the last unsynced write of each file; the writes before it are there whole.</param>
/// <param name="Names">How many of the unsynced new names, moves and deletions are there, the oldest first.</param>
/// <param name="LengthFirst">Whether the file's new length is there although its bytes may not be: they read as zeros.</param>
public sealed record Tear(LastWrite Last, int Names = int.MaxValue, bool LengthFirst = false);

/// <summary>A part of a write.</summary>
public abstract record LastWrite
{
    /// <summary>Whether a byte of the write is there.</summary>
    /// <param name="index">The byte's place in the write.</param>
    /// <param name="offset">The byte's place in the file.</param>
    /// <param name="firstSector">The sector of the file in which the write begins.</param>
    public abstract bool Has(int index, long offset, long firstSector);
}

/// <summary>Its first bytes: torn at a byte.</summary>
public sealed record FirstBytes(int Count) : LastWrite
{
    /// <inheritdoc />
    public override bool Has(int index, long offset, long firstSector) => index < Count;
}

/// <summary>Some of its sectors, in any order: bit i of the mask is the write's sector i.</summary>
public sealed record Sectors(ulong Mask) : LastWrite
{
    public const int Size = 512;

    /// <inheritdoc />
    public override bool Has(int index, long offset, long firstSector) =>
        (Mask >> (int)Math.Min(63, (offset / Size) - firstSector) & 1) == 1;
}
