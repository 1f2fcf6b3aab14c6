using ToolWear.Storage.Disks;

namespace ToolWear.Doors;

/// <summary>The world around the program, handed in: streams, clock, disk, chance, where the user's data lie.</summary>
/// <param name="Out">Where results go.</param>
/// <param name="Error">Where everything else goes.</param>
/// <param name="Clock">The time and its zone.</param>
/// <param name="Disk">The disk.</param>
/// <param name="NewShopId">A new random id of a shop, 32 lower hex digits.</param>
/// <param name="UsualStore">The store where no other is named: a full path.</param>
/// <param name="TemporaryFolder">Where a demo that nobody keeps may lie: a full path.</param>
public sealed record Site(
    TextWriter Out,
    TextWriter Error,
    TimeProvider Clock,
    IDisk Disk,
    Func<string> NewShopId,
    string UsualStore,
    string TemporaryFolder
)
{
    /// <summary>The terminal for the screens; null where there is none, as in most tests.</summary>
    public Tty? Tty { get; init; }

    /// <summary>Opens the standard input; empty in most tests.</summary>
    public Func<Stream> In { get; init; } = () => Stream.Null;

    /// <summary>How many columns a line of text may have: those of the terminal, else of the narrowest.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Whether the smith answers for it that nobody else writes to the store, where its file system has no locks.</summary>
    public bool Alone { get; init; }

    /// <summary>The shop's day now.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
}
