using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Csv;

/// <summary>A file of things that happened: its first column is the rank among the rows of all such files.</summary>
/// <param name="name">Its name.</param>
/// <param name="columns">Its columns after <c>entry</c>.</param>
internal abstract class EventFile(string name, string columns) : SetFile(name, EntryColumn + " " + columns)
{
    /// <summary>The column of the rank.</summary>
    public const string EntryColumn = "entry";

    /// <inheritdoc />
    public sealed override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop)
    {
        for (int i = 0; i < shop.Events.Length; i++)
        {
            if (Cells(shop.Events[i], shop) is { } cells)
            {
                CsvCell[] row = new CsvCell[cells.Count + 1];
                row[0] = CsvCell.Count(i + 1);
                for (int cell = 0; cell < cells.Count; cell++)
                {
                    row[cell + 1] = cells[cell];
                }

                yield return row;
            }
        }
    }

    /// <inheritdoc />
    public sealed override void Read(CsvRow row, ShopRead shop)
    {
        int? entry = row.Count(EntryColumn);
        LedgerEntry what = Entry(row, shop);
        if (row.IsFaulty)
        {
            Doubt(row, shop);
        }
        else
        {
            shop.AddEvent(row, Columns[1].Name, entry, what, After(row, shop));
        }
    }

    /// <summary>The cells behind the rank of an entry.</summary>
    /// <param name="what">The entry.</param>
    /// <param name="shop">The shop.</param>
    /// <returns>The cells; null where the entry belongs to another file.</returns>
    protected abstract IReadOnlyList<CsvCell>? Cells(LedgerEntry what, ShopToWrite shop);

    /// <summary>The entry that a row stands for.</summary>
    /// <param name="row">The row.</param>
    /// <param name="shop">What was read so far.</param>
    /// <returns>The entry; not used where the row is faulty.</returns>
    protected abstract LedgerEntry Entry(CsvRow row, ShopRead shop);

    /// <summary>A second entry that the same row stands for, right after the first.</summary>
    /// <param name="row">The row.</param>
    /// <param name="shop">What was read so far.</param>
    /// <returns>The entry, null where there is none.</returns>
    protected virtual LedgerEntry? After(CsvRow row, ShopRead shop) => null;

    /// <summary>What cannot be judged any more because this row is faulty.</summary>
    /// <param name="row">The faulty row.</param>
    /// <param name="shop">What was read so far.</param>
    protected virtual void Doubt(CsvRow row, ShopRead shop) { }
}
