using System.Collections.Immutable;

namespace ToolWear.Core.Deeds.Bringing;

/// <summary>A table as a person keeps it: what stands over its columns and in its cells, as typed.</summary>
/// <param name="Line">The line of the headings, from 1.</param>
/// <param name="Headings">The headings.</param>
/// <param name="Rows">The rows below; none of them empty.</param>
public sealed record SaidTable(long Line, ImmutableArray<string> Headings, ImmutableArray<SaidRow> Rows);

/// <summary>A row of such a table.</summary>
/// <param name="Line">The line on which it starts, from 1.</param>
/// <param name="Cells">Its cells; there may be fewer or more of them than headings.</param>
public sealed record SaidRow(long Line, ImmutableArray<string> Cells)
{
    /// <summary>A cell without the blanks around it; empty where the row ends before it.</summary>
    internal string this[int column] => column < Cells.Length ? Cells[column].Trim() : "";
}

/// <summary>How a table is to be brought in.</summary>
/// <param name="IgnoreUnknown">Whether columns that nobody knows are left out.</param>
/// <param name="KeepUnknown">Whether such columns are kept in the note.</param>
/// <param name="Update">Whether what the shop has already is corrected.</param>
/// <param name="On">The day of rows that name none; null for today where a row tells of today's size, else refused.</param>
/// <param name="CarryDown">The columns in which an empty cell repeats the one above.</param>
public sealed record BringingWishes(
    bool IgnoreUnknown = false,
    bool KeepUnknown = false,
    bool Update = false,
    DateOnly? On = null,
    params ImmutableArray<string> CarryDown
)
{
    /// <summary>Columns as a person names them.</summary>
    /// <param name="typed">Such as "form, eye".</param>
    /// <returns>The names.</returns>
    public static ImmutableArray<string> Columns(string typed) =>
        [.. typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}

/// <summary>A doubt or a fault: what is meant or wrong, and what would be right.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The heading; empty for the whole row.</param>
/// <param name="Sentence">The sentence.</param>
public sealed record RowRemark(long Line, string Column, string Sentence)
{
    /// <summary>The remark on one line.</summary>
    /// <returns>For example "line 3: Size: ...".</returns>
    public override string ToString() => $"line {Line}: {(Column.Length == 0 ? "" : Column + ": ")}{Sentence}";
}

/// <summary>What a table comes to.</summary>
/// <param name="Kind">What it tells of: tools, readings, heats, bars, orders.</param>
/// <param name="Columns">The columns that were understood, in their order.</param>
/// <param name="Rows">The rows that can come in.</param>
/// <param name="Entries">What is entered, all of it tried on the shop; none where there is a fault.</param>
/// <param name="Doubts">What was taken in one way and could be meant in another.</param>
/// <param name="Faults">What is wrong.</param>
/// <param name="Understood">How numbers, units and days were read.</param>
/// <param name="Blanks">The columns of words in which a cell is empty below a filled one.</param>
public sealed record Brought(
    string Kind,
    ImmutableArray<BroughtColumn> Columns,
    ImmutableArray<BroughtRow> Rows,
    ImmutableArray<Ledger.LedgerEntry> Entries,
    ImmutableArray<RowRemark> Doubts,
    ImmutableArray<RowRemark> Faults,
    string Understood,
    ImmutableArray<string> Blanks
);

/// <summary>A column that was understood.</summary>
/// <param name="Name">The name of its field, such as size_mm.</param>
/// <param name="IsNumber">Whether a bare number is written in it.</param>
public sealed record BroughtColumn(string Name, bool IsNumber);

/// <summary>A row that can come in.</summary>
/// <param name="Written">Its values as files hold them, a value for each column.</param>
/// <param name="Shown">The same for people, sizes in the shop's unit.</param>
public sealed record BroughtRow(ImmutableArray<string> Written, ImmutableArray<string> Shown);
