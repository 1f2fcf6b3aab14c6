using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Storage.Csv.Written;

namespace ToolWear.Storage.Csv;

/// <summary>A file of things that happened: its first column is the rank among the rows of all such files.</summary>
/// <param name="fields">The fields behind the rank.</param>
/// <param name="said">What a row tells of an entry; null where the entry belongs to another file.</param>
/// <param name="entry">The entry that a row stands for; may tell faults of the row.</param>
/// <param name="doubtful">What cannot be judged any more where a row is faulty: tool, session; null for nothing.</param>
/// <typeparam name="T">What a row tells.</typeparam>
internal sealed class EventFile<T>(
    FieldTable<T> fields,
    Func<LedgerEntry, ShopToWrite, T?> said,
    Func<CsvRow, T, ShopRead, LedgerEntry> entry,
    string? doubtful = null
) : SetFile(fields.File, [new(EntryColumn, false), .. CsvColumn.Of(fields)])
    where T : class
{
    /// <summary>A second entry that the same row stands for, right after the first; null where there is none.</summary>
    public Func<T, LedgerEntry?> Then { get; init; } = static _ => null;

    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop)
    {
        for (int i = 0; i < shop.Events.Length; i++)
        {
            if (said(shop.Events[i], shop) is { } row)
            {
                yield return CsvCell.Row(fields, row, CsvCell.Count(i + 1));
            }
        }
    }

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        int? rank = row.Rank();
        T thing = row.Read(fields);
        shop.Named(row, fields, thing);
        LedgerEntry what = entry(row, thing, shop);
        if (!row.IsFaulty)
        {
            shop.Events.Add(new(rank, new(row, Columns[1].Name, what), Then(thing)));
        }
        else if (doubtful is not null)
        {
            shop.Doubt(doubtful, row.Peek(doubtful));
        }
    }
}
