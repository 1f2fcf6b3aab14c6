using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Storage.Entries;
using ToolWear.Testing.Generators;

namespace ToolWear.Ordeals;

/// <summary>What is recorded, known beforehand: who knows the seed knows every entry by its number, letter for letter.</summary>
/// <param name="seed">Another number for other entries.</param>
internal sealed class SteadyWork(int seed)
{
    private static readonly string[] Marks = ["R1", "R2", "Größe \"槌\""];

    /// <summary>The day all of it happens.</summary>
    public static DateOnly Day { get; } = new(2026, 11, 24);

    /// <summary>A tool that works.</summary>
    public static ToolMark Mark(int which) => Texts.MarkOf(Marks[which % Marks.Length]);

    /// <summary>The line that begins with an entry: one entry, or a batch that stands or falls together.</summary>
    /// <param name="first">The number of its first entry, from 1.</param>
    /// <returns>Its entries.</returns>
    public ImmutableArray<LedgerEntry> Line(long first)
    {
        if (first == 1)
        {
            SessionOpened opened = new("s1", Day, null, Care.Usual, null, null);
            return [.. Marks.Select((_, i) => new ToolAdded(Drift(Mark(i)))), opened];
        }

        Random chance = new(HashCode(first));
        int many = chance.Next(7) == 0 ? chance.Next(2, 6) : 1;
        return [.. Enumerable.Range(0, many).Select(_ => Entry(chance))];
    }

    /// <summary>The texts of the first entries, as the journal holds them.</summary>
    /// <param name="count">How many; the end of a line.</param>
    /// <returns>The texts in order.</returns>
    public IEnumerable<string> Bodies(long count)
    {
        long next = 1;
        while (next <= count)
        {
            foreach (LedgerEntry entry in Line(next))
            {
                next++;
                yield return EntryFormat.Write(entry);
            }
        }
    }

    private static LedgerEntry Entry(Random chance)
    {
        ToolMark mark = Mark(chance.Next(Marks.Length));
        // at times a line of several sectors
        string note = new('n', chance.Next(5) == 0 ? chance.Next(1, 2000) : chance.Next(1, 60));
        return chance.Next(3) switch
        {
            0 => new ToolLookedOver(mark, Day, Finding.Sound, null, note),
            1 => new ToolMeasured(mark, "width", Day, "s1", Length.FromMm(15.8), null, null, note),
            _ => new HeatsWorked("s1", mark, Work.Cheeks, Heats.OfHalves(chance.Next(1, 20)), HeatsHow.Counted),
        };
    }

    private static Tool Drift(ToolMark mark) =>
        new(
            mark,
            ToolForms.All.First(form => form.Name == "drift"),
            "hatchet",
            Place.Rough,
            null,
            null,
            null,
            null,
            ToolStart.New,
            null,
            ToolCost.Unknown,
            null,
            null,
            [new("width", Wears.Smaller, Measures.Width, null, Length.FromMm(16.0), Length.FromMm(15.2), null, null)],
            []
        );

    private int HashCode(long first) => unchecked((int)((first * 2_654_435_761L) ^ (seed * 40_503L)));
}
