using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ToolWear.Core.Measure;

namespace ToolWear.Results;

/// <summary>The columns of a result, in the order of files.</summary>
[CollectionBuilder(typeof(Columns), nameof(Columns.Of))]
internal sealed class Columns<T>(ImmutableArray<Column<T>> all) : IEnumerable<Column<T>>
{
    /// <summary>Rows as cells, for the pens and the screens.</summary>
    public Table Over(IEnumerable<T> rows, LengthUnit units = LengthUnit.Mm) =>
        new([.. all], [.. rows.Select(row => (ImmutableArray<Cell>)[.. all.Select(column => column.Of(row, units))])]);

    /// <summary>One row, drawn as figures: a line each for people, an object in JSON.</summary>
    public Table Of(T row, LengthUnit units = LengthUnit.Mm) => Over([row], units) with { IsOne = true };

    /// <inheritdoc />
    public IEnumerator<Column<T>> GetEnumerator() => ((IEnumerable<Column<T>>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes columns of a list in brackets.</summary>
internal static class Columns
{
    public static Columns<T> Of<T>(ReadOnlySpan<Column<T>> all) => new([.. all]);
}
