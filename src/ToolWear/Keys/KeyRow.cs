using System.Collections.Immutable;

namespace ToolWear.Keys;

/// <summary>One key: a row of data from which foot, help and what happens come.</summary>
/// <param name="Act">What it does.</param>
/// <param name="Shown">How the foot names the key, or the keys.</param>
/// <param name="Words">What the foot says.</param>
/// <param name="Need">What must be there; else it is refused with a sentence.</param>
/// <param name="Records">Whether it can write an entry into the ledger; no other key does.</param>
internal sealed record KeyRow(Act Act, string Shown, string Words, Need Need = Need.Nothing, bool Records = false)
{
    /// <summary>What help says.</summary>
    public string Does { get; init; } = "";

    /// <summary>The screen; null for all.</summary>
    public ScreenName? Where { get; init; }

    /// <summary>The keys; which of them was pressed tells up from down, the first tool from the second.</summary>
    public ImmutableArray<string> Names { get; init; } =
        Shown switch
        {
            "↑↓" => ["Up", "Down"],
            "←→" => ["Left", "Right"],
            "PgUp PgDn" => ["PageUp", "PageDown"],
            "1-9" => ["1", "2", "3", "4", "5", "6", "7", "8", "9"],
            "1-4" => ["1", "2", "3", "4"],
            "a-f" => ["a", "b", "c", "d", "e", "f"],
            "letter" => KeyTable.FindingKeys,
            _ => [Shown],
        };

    /// <summary>Whether the foot leaves it out, for the body of the screen shows it.</summary>
    public bool OnlyInHelp { get; init; }

    /// <summary>The same with what help says.</summary>
    public KeyRow Help(string does) => this with { Does = does };
}
