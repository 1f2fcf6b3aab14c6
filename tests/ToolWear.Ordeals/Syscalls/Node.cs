namespace ToolWear.Ordeals.Syscalls;

/// <summary>A change that a disk has been told and may or may not have yet.</summary>
/// <param name="Offset">Where bytes were written; for a cut the new length.</param>
/// <param name="Bytes">The bytes; null for a cut.</param>
internal sealed record Change(long Offset, byte[]? Bytes)
{
    /// <summary>Whether a sync failed after it: a later one that succeeds proves nothing (fsync(2), NOTES).</summary>
    public bool IsDoomed { get; set; }
}

/// <summary>A change of names in one folder: one goes, one comes, or both in one step.</summary>
internal sealed record NameChange(string? Gone, string? Came, Node? Node);

/// <summary>A file or a folder: what of it is durable, and what was done since.</summary>
internal sealed class Node(bool isFolder)
{
    public bool IsFolder { get; } = isFolder;

    public byte[] Bytes { get; set; } = [];

    public List<Change> Changes { get; } = [];

    public Dictionary<string, Node> Names { get; } = new(StringComparer.Ordinal);

    public List<NameChange> NameChanges { get; } = [];

    /// <summary>The names as every process sees them.</summary>
    public Dictionary<string, Node> Seen { get; } = new(StringComparer.Ordinal);

    /// <summary>Makes what had been done when a sync began durable.</summary>
    /// <param name="changes">How many changes of bytes there were then.</param>
    /// <param name="names">How many changes of names there were then.</param>
    public void Sync(int changes, int names)
    {
        Change[] durable = [.. Changes.Take(changes).Where(change => !change.IsDoomed)];
        Bytes = With(Bytes, durable);
        Changes.RemoveAll(durable.Contains);
        foreach (NameChange change in NameChanges.Take(names))
        {
            Rename(Names, change);
        }

        NameChanges.RemoveRange(0, names);
    }

    public static void Rename(Dictionary<string, Node> names, NameChange change)
    {
        if (change.Gone is { } gone)
        {
            names.Remove(gone);
        }

        if (change.Came is { } came)
        {
            names[came] = change.Node!;
        }
    }

    public static byte[] With(byte[] before, IEnumerable<Change> changes)
    {
        using MemoryStream after = new();
        after.Write(before);
        foreach (Change change in changes)
        {
            if (change.Bytes is null)
            {
                after.SetLength(change.Offset);
            }
            else
            {
                after.Position = change.Offset;
                after.Write(change.Bytes);
            }
        }

        return after.ToArray();
    }
}
