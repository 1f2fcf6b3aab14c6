using ToolWear.Core.Fields;

namespace ToolWear.Storage.Csv;

/// <summary>A file of described things: columns, cells and refusals are those of their fields.</summary>
/// <param name="fields">The fields.</param>
/// <param name="things">The things of a shop in the order of their rows.</param>
/// <param name="take">Takes what a row says, and whether the row is faulty.</param>
/// <typeparam name="T">The thing.</typeparam>
internal sealed class TableFile<T>(
    FieldTable<T> fields,
    Func<ShopToWrite, IEnumerable<T>> things,
    Action<CsvRow, T, ShopRead> take
) : SetFile(fields.File, CsvColumn.Of(fields))
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        things(shop).Select(thing => CsvCell.Row(fields, thing));

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop) => take(row, row.Read(fields), shop);
}
