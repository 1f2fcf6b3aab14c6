using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Deeds.Bringing;

/// <summary>What a table that a person keeps can tell of.</summary>
/// <param name="Name">Its name: tools, readings, heats, bars, orders.</param>
public abstract record TableKind(string Name)
{
    /// <summary>The field of the day on which something happened.</summary>
    internal const string Day = "on";

    /// <summary>Heading, meaning and two examples of each column of an empty table.</summary>
    /// <param name="units">The unit of its sizes.</param>
    /// <returns>The columns.</returns>
    public abstract IEnumerable<TemplateColumn> Template(LengthUnit units);

    /// <summary>Reads a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="shop">The shop it comes into.</param>
    /// <param name="units">The unit of bare sizes under headings that name none.</param>
    /// <param name="today">The shop's day: nothing may have happened after it.</param>
    /// <param name="wishes">How it is to be brought in.</param>
    /// <returns>What it comes to.</returns>
    public abstract Brought Read(SaidTable table, Shop shop, LengthUnit units, DateOnly today, BringingWishes wishes);

    /// <summary>How well headings fit: the columns that are known, less those that are missing.</summary>
    internal abstract int Fit(ImmutableArray<Heading> headings, BringingWishes wishes);
}

/// <summary>A column of an empty table.</summary>
/// <param name="Name">The name of its field.</param>
/// <param name="Heading">Its heading, with the unit of its sizes.</param>
/// <param name="Meaning">What it means; empty where it means what it does everywhere.</param>
/// <param name="IsNumber">Whether a bare number is written in it.</param>
/// <param name="First">An example.</param>
/// <param name="Second">Another.</param>
public sealed record TemplateColumn(
    string Name,
    string Heading,
    string Meaning,
    bool IsNumber,
    string First,
    string Second
);

/// <summary>A kind of table over the fields of what a row tells of.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Fields">The fields.</param>
/// <param name="Filled">The fields that are filled where a row leaves them empty, though files must have them.</param>
/// <param name="Known">What the shop has already of what a row names, asked by its cells; null where every row is new.</param>
/// <param name="Entries">The entries a row comes to: what it says, what is known, the row.</param>
/// <param name="Examples">Two examples.</param>
/// <typeparam name="T">What a row tells of.</typeparam>
internal sealed record TableKind<T>(
    string Name,
    FieldTable<T> Fields,
    ImmutableArray<string> Filled,
    Func<Shop, Func<string, string>, T?> Known,
    Func<T, T?, RowAsked, IEnumerable<LedgerEntry>> Entries,
    params ImmutableArray<T> Examples
) : TableKind(Name)
    where T : class
{
    /// <inheritdoc />
    public override IEnumerable<TemplateColumn> Template(LengthUnit units) =>
        Fields.All.Select(field => new TemplateColumn(
            field.Name,
            field.Unit == "mm" ? field.Name[..^2] + SizeShown.Mark(units) : field.Name,
            field.Meaning,
            field.IsNumber,
            Shown(field, Examples[0], units),
            Shown(field, Examples[1], units)
        ));

    /// <inheritdoc />
    public override Brought Read(SaidTable table, Shop shop, LengthUnit units, DateOnly today, BringingWishes wishes) =>
        new TableReading<T>(this, table, shop, units, today, wishes).Run();

    /// <inheritdoc />
    internal override int Fit(ImmutableArray<Heading> headings, BringingWishes wishes) =>
        headings.Count(heading => Fields.All.Any(heading.Names)) - (2 * Missing(headings, wishes).Count());

    /// <summary>The columns that a table of new things must have and that no heading names.</summary>
    internal IEnumerable<Field<T>> Missing(ImmutableArray<Heading> headings, BringingWishes wishes) =>
        Fields.All.Where(field =>
            field.Need != Need.Maybe
            && !Filled.Contains(field.Name, StringComparer.Ordinal)
            && !(field.Name == Day && wishes.On is not null)
            && !headings.Any(heading => heading.Names(field))
        );

    /// <summary>As a person would write it under a heading that names the unit.</summary>
    private static string Shown(Field<T> field, T thing, LengthUnit units) =>
        field.Unit == "mm" && units == LengthUnit.Inch && field.Write(thing) is { Length: > 0 } mm
            ? SizeShown.Eye(Length.FromMm(decimal.Parse(mm, CultureInfo.InvariantCulture)), units)
            : field.Write(thing);
}

/// <summary>What the entries of a row may ask, and where they tell doubts and faults.</summary>
/// <param name="Shop">The shop with the rows above.</param>
/// <param name="On">The day of what names none.</param>
/// <param name="Has">Whether a cell has something in it, by its field.</param>
/// <param name="Resolution">The step of the fraction in a cell; null for a decimal.</param>
/// <param name="Doubt">Takes a doubt about a field.</param>
/// <param name="Fault">Takes a fault of a field.</param>
internal sealed record RowAsked(
    Shop Shop,
    DateOnly On,
    Func<string, bool> Has,
    Func<string, Length?> Resolution,
    Action<string, string> Doubt,
    Action<string, string> Fault
);
