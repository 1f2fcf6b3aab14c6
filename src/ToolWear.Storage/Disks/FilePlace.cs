namespace ToolWear.Storage.Disks;

/// <summary>Where an open file stands now.</summary>
public enum FilePlace
{
    /// <summary>Under the name by which it was opened, and under no other.</summary>
    InPlace,

    /// <summary>Not under that name: it was moved, deleted or replaced. It takes writes and syncs, and nobody finds them.</summary>
    Gone,

    /// <summary>Under a second name too (a hard link): whoever opens it by that holds another lock.</summary>
    Shared,
}
