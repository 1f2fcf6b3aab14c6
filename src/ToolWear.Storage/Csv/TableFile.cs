using ToolWear.Core.Fields;
using ToolWear.Storage.Csv.Written;

namespace ToolWear.Storage.Csv;

/// <summary>A file of described things: columns, cells and refusals are those of their fields.</summary>
/// <param name="fields">The fields.</param>
/// <param name="things">The things of a shop in the order of their rows.</param>
/// <param name="take">Takes what a row says and the tool that it names first, faulty or not.</param>
/// <typeparam name="T">The thing.</typeparam>
internal sealed class TableFile<T>(
    FieldTable<T> fields,
    Func<ShopToWrite, IEnumerable<T>> things,
    Action<CsvRow, T, ShopRead, ToolRead?> take
) : SetFile(fields.File, CsvColumn.Of(fields))
{
    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        things(shop).Select(thing => CsvCell.Row(fields, thing));

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        T thing = row.Read(fields);
        take(row, thing, shop, shop.Named(row, fields, thing));
    }
}
