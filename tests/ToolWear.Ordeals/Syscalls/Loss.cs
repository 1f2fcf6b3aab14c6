namespace ToolWear.Ordeals.Syscalls;

/// <summary>What of the unsynced a crash takes with it.</summary>
internal sealed class Loss
{
    private const int Sector = 512;

    private readonly Func<NameChange, bool> _keeps;
    private readonly Func<Change, IEnumerable<Change>> _of;

    private Loss(Func<NameChange, bool> keeps, Func<Change, IEnumerable<Change>> of)
    {
        _keeps = keeps;
        _of = of;
    }

    /// <summary>All of it: the strict disk.</summary>
    public static Loss Everything { get; } = new(_ => false, _ => []);

    /// <summary>Nothing: the process was killed, the machine runs on.</summary>
    public static Loss Nothing { get; } = new(_ => true, change => [change]);

    /// <summary>All bytes, no names: a file is found under its new name with nothing in it.</summary>
    public static Loss Bytes { get; } = new(_ => true, _ => []);

    /// <summary>All names, no bytes.</summary>
    public static Loss Names { get; } = new(_ => false, change => [change]);

    /// <summary>Any of it: names lost or kept in any order, writes lost, torn or kept.</summary>
    /// <param name="chance">Which.</param>
    /// <returns>One choice.</returns>
    public static Loss Some(Random chance) => new(_ => chance.Next(2) == 0, change => Torn(change, chance));

    public bool Keeps(NameChange change) => _keeps(change);

    public IEnumerable<Change> Of(Change change) => _of(change);

    private static Change[] Torn(Change change, Random chance)
    {
        switch (chance.Next(4))
        {
            case 0:
                return [];
            case 1 when change.Bytes is { Length: > 0 } bytes:
                return [new Change(change.Offset, bytes[..chance.Next(bytes.Length)])];
            case 2 when change.Bytes is { Length: > 0 }:
                return [.. Sectors(change, chance)];
            default:
                return [change];
        }
    }

    // a disk writes whole sectors, in any order; where a later one is there and an earlier is not, zeros stand
    private static List<Change> Sectors(Change change, Random chance)
    {
        List<Change> kept = [];
        long at = change.Offset;
        while (at < change.Offset + change.Bytes!.Length)
        {
            long next = Math.Min(change.Offset + change.Bytes.Length, ((at / Sector) + 1) * Sector);
            if (chance.Next(2) == 0)
            {
                kept.Add(new Change(at, change.Bytes[(int)(at - change.Offset)..(int)(next - change.Offset)]));
            }

            at = next;
        }

        return kept;
    }
}
