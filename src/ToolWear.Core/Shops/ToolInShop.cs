using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>A tool with what happened to it so far.</summary>
/// <param name="Id">The number of the entry that added it: it never changes, the mark can.</param>
/// <param name="Tool">The tool, under the mark it has now.</param>
/// <param name="State">Where it stands.</param>
/// <param name="StateOn">The day of its last change of state; the least day where it never changed.</param>
/// <param name="Scrapped">How it ended; null while it is not scrapped.</param>
/// <param name="Events">Heats, readings, reworks, findings and changes of state, in the order of the ledger.</param>
public sealed record ToolInShop(
    long Id,
    Tool Tool,
    ToolState State,
    DateOnly StateOn,
    ToolScrapped? Scrapped,
    Entries Events
)
{
    /// <summary>Who has it and since when; null where it is not lent out. A lent tool counts as set aside.</summary>
    public ToolLent? Lent { get; init; }

    /// <summary>The mark it has now.</summary>
    public ToolMark Mark => Tool.Mark;

    /// <summary>Whether it got heats in a session.</summary>
    /// <param name="session">The session's name.</param>
    /// <returns>True where it did.</returns>
    public bool WorkedIn(string session) =>
        Events.Exists(each => each.What is HeatsWorked heats && heats.Session == session);

    /// <summary>The same tool with one thing more behind it.</summary>
    /// <param name="happened">The entry.</param>
    /// <returns>The tool after it.</returns>
    internal ToolInShop With(Entered happened) => this with { Events = Events.Add(happened) };
}
