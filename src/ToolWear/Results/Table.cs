using System.Collections.Immutable;

namespace ToolWear.Results;

/// <summary>Rows as cells under their columns: what every pen draws.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, a cell for each column.</param>
internal sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows)
{
    /// <summary>Whether it is one row of figures that belong together: a line each for people, an object in JSON.</summary>
    public bool IsOne { get; init; }

    /// <summary>The columns of files and where they stand.</summary>
    public IEnumerable<(string Name, int Index)> InFiles =>
        Columns.Index().Where(each => each.Item.Name is not null).Select(each => (each.Item.Name!, each.Index));
}
