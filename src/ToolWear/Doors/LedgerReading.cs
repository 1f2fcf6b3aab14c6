using System.Text.Json;
using ToolWear.Core.Ledger;
using ToolWear.Storage;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;

namespace ToolWear.Doors;

/// <summary>Makes entries of the lines of a journal, beside the reading of the next lines where there are many.</summary>
/// <param name="keys">Where to note the keys of entries recorded once.</param>
internal sealed class LedgerReading(OnceKeys keys)
{
    // a small shop is read before a second thread would have begun
    private const int Together = 1000;

    // more waiting than this would only fill memory: then this thread lends a hand
    private const int MostWaiting = 4;

    private readonly List<Task<Entered[]>> begun = [];
    private int done;
    private List<JournalLine> lines = [];
    private int entries;
    private long before;

    /// <summary>Takes the next line.</summary>
    /// <param name="line">The line.</param>
    public void Take(JournalLine line)
    {
        keys.Take(line);
        lines.Add(line);
        entries += line.Bodies.Count;
        if (entries >= Together)
        {
            List<JournalLine> batch = lines;
            long first = before;
            Begin(new Task<Entered[]>(() => Read(batch, first)));
            before += entries;
            lines = [];
            entries = 0;
        }
    }

    private void Begin(Task<Entered[]> task)
    {
        begun.Add(task);
        while (begun[done].IsCompleted)
        {
            done++;
        }

        if (begun.Count - done > MostWaiting)
        {
            task.RunSynchronously(TaskScheduler.Default);
        }
        else
        {
            task.Start(TaskScheduler.Default);
        }
    }

    /// <summary>The entries of all lines.</summary>
    /// <returns>In order, numbered from 1.</returns>
    /// <exception cref="DamagedJournalException">An entry is not what an entry is; the first such is named.</exception>
    public List<Entered> Ledger()
    {
        List<Entered> ledger = [];
        foreach (Task<Entered[]> task in begun)
        {
            ledger.AddRange(task.GetAwaiter().GetResult());
        }

        ledger.AddRange(Read(lines, before));
        return ledger;
    }

    /// <summary>Makes entries of lines.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="before">How many entries are before them.</param>
    /// <returns>The entries, numbered on.</returns>
    /// <exception cref="DamagedJournalException">An entry is not what an entry is.</exception>
    public static Entered[] Read(IEnumerable<JournalLine> lines, long before)
    {
        List<Entered> read = [];
        foreach (JournalLine line in lines)
        {
            for (int i = 0; i < line.Bodies.Count; i++)
            {
                long number = before + read.Count + 1;
                read.Add(new(number, line.At, line.Day, Read(number, line.Bodies.Utf8(i))));
            }
        }

        return [.. read];
    }

    private static LedgerEntry Read(long number, ReadOnlySpan<byte> body)
    {
        try
        {
            return EntryFormat.Read(body);
        }
        catch (JsonException e)
        {
            throw new DamagedJournalException(0, EntryUnreadable(number, e.Path?.TrimStart('$', '.')), e);
        }
    }

    private static string EntryUnreadable(long number, string? where) =>
        $"entry {number} of the journal cannot be read: {(where is null ? "a part of it" : $"its field {where}")} does not hold what ToolWear writes there. Nothing was changed. \"toolwear check\" looks further.";
}
