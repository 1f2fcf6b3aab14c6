using System.Text.Json;
using ToolWear.Core.Ledger;
using ToolWear.Storage;
using ToolWear.Storage.Entries;
using ToolWear.Storage.Journal;

namespace ToolWear;

/// <summary>Makes entries of the lines of a journal, beside the reading of the next lines where there are many.</summary>
internal sealed class LedgerReading
{
    // a small shop is read before a second thread would have begun
    private const int Together = 1000;

    private readonly List<Task<Entered[]>> begun = [];
    private List<JournalLine> lines = [];
    private int entries;
    private long before;

    /// <summary>Takes the next line.</summary>
    /// <param name="line">The line.</param>
    public void Take(JournalLine line)
    {
        lines.Add(line);
        entries += line.Bodies.Length;
        if (entries >= Together)
        {
            List<JournalLine> batch = lines;
            long first = before;
            begun.Add(Task.Run(() => Read(batch, first)));
            before += entries;
            lines = [];
            entries = 0;
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

    private static Entered[] Read(List<JournalLine> lines, long before)
    {
        List<Entered> read = [];
        foreach (JournalLine line in lines)
        {
            foreach (string body in line.Bodies)
            {
                long number = before + read.Count + 1;
                read.Add(new(number, line.At, line.Day, Read(number, body)));
            }
        }

        return [.. read];
    }

    private static LedgerEntry Read(long number, string body)
    {
        try
        {
            return EntryFormat.Read(body);
        }
        catch (JsonException e)
        {
            throw new DamagedJournalException(Words.EntryUnreadable(number, e.Message), e);
        }
    }
}
