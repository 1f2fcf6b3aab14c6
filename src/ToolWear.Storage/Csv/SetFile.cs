using System.Collections.Immutable;
using ToolWear.Storage.Csv.Written;

namespace ToolWear.Storage.Csv;

/// <summary>One kind of file of the CSV set: its name, its columns, how a row is written and read.</summary>
/// <param name="name">Its name.</param>
/// <param name="columns">Its columns in order.</param>
internal abstract class SetFile(string name, ImmutableArray<CsvColumn> columns)
{
    /// <summary>The column of the rank among the rows of all files of things that happened.</summary>
    public const string EntryColumn = "entry";

    /// <summary>The file's name.</summary>
    public string Name => name;

    /// <summary>The columns in their order.</summary>
    public ImmutableArray<CsvColumn> Columns => columns;

    /// <summary>Whether it is written even where it has no rows.</summary>
    public bool IsAlwaysWritten { get; init; }

    /// <summary>The rows of a shop, each with a cell for every column.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The rows.</returns>
    public abstract IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop);

    /// <summary>Reads a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="shop">What was read so far and takes what this row says.</param>
    public abstract void Read(CsvRow row, ShopRead shop);
}
