using System.Collections.Immutable;

namespace ToolWear.Results;

/// <summary>Rows as cells under their columns: what every pen draws.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, a cell for each column.</param>
internal sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows)
{
    public ImmutableArray<string> FileOrder { get; init; } = [];

    public int IndexOf(string name) => Index(column => column.Name == name, name);

    public int IndexOfHeading(string heading) => Index(column => column.Heading == heading, heading);

    private int Index(Func<Column, bool> isIt, string name)
    {
        for (int i = 0; i < Columns.Length; i++)
        {
            if (isIt(Columns[i]))
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no column {name}.", nameof(name));
    }

    /// <summary>The columns of files and where they stand.</summary>
    public IEnumerable<(string Name, int Index)> InFiles()
    {
        IEnumerable<(string Name, int Index)> named = Columns
            .Select((column, index) => (column.Name, index))
            .Where(each => each.Name is not null)
            .Select(each => (each.Name!, each.index));
        return FileOrder.IsEmpty ? named : named.OrderBy(each => FileOrder.IndexOf(each.Name));
    }
}
