using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>A column of a result.</summary>
/// <param name="Name">Its pinned name in files; null where only people are shown it.</param>
/// <param name="Heading">What stands over it for people; null where people are not shown it.</param>
/// <param name="Unit">Its unit in files; empty for words and plain numbers.</param>
internal record Column(string? Name, string? Heading, string Unit = "")
{
    /// <summary>What it means, for the data dictionary; null where another column or field of that name says it.</summary>
    public string? Meaning { get; init; }

    /// <summary>How it stands on a printed sheet.</summary>
    public Print Print { get; init; }

    /// <summary>What a narrow screen leaves out: the highest first, of those alike the last.</summary>
    public int Rank { get; init; }
}

/// <summary>How a column stands on a printed sheet that is read from some steps away.</summary>
internal enum Print
{
    Plain,
    Big,
    Small,

    /// <summary>Small, in several lines where it is long.</summary>
    Wrapped,
}

/// <summary>A column of rows of one type: the one place that says how the cell of a row is made, for people in a unit.</summary>
internal sealed record Column<T>(string? Name, string? Heading, Func<T, LengthUnit, Cell> Of, string Unit = "")
    : Column(Name, Heading, Unit)
{
    /// <summary>The same in files alone.</summary>
    public Column<T> InFiles => this with { Heading = null };

    /// <summary>The same for people alone.</summary>
    public Column<T> ForPeople => this with { Name = null };

    /// <summary>Words, and what people read where there are none.</summary>
    public static Column<T> Text(string? name, string? heading, Func<T, string?> of, string none = "-") =>
        new(name, heading, (row, _) => Cell.Of(of(row), none: none));

    /// <summary>A number of some quantity; null is not known.</summary>
    public static Column<T> Number(string? name, string? heading, Func<T, double?> of, Quantity? quantity = null)
    {
        Quantity shown = quantity ?? Quantity.Plain;
        return new(name, heading, (row, units) => Cell.Of(of(row), number => shown.Show(number, units)), shown.Unit);
    }

    /// <summary>A day; null is not known.</summary>
    public static Column<T> Day(string? name, string? heading, Func<T, DateOnly?> of) =>
        new(name, heading, (row, _) => Cell.Of(of(row)));

    /// <summary>Yes or no; null is not known.</summary>
    public static Column<T> YesNo(string? name, string? heading, Func<T, bool?> of) =>
        Text(name, heading, row => of(row) is { } known ? (known ? "yes" : "no") : null);

    /// <summary>The place in the series; empty for none.</summary>
    public static Column<T> Place(string? heading, Func<T, Place?> of) =>
        Text(
            "place",
            heading,
            row => of(row) is { } place and not Core.Tools.Place.None ? Places.Words.Word(place) : null
        );

    /// <summary>A list or an object in JSON.</summary>
    public static Column<T> Part(string name, Func<T, Table?> of) => new(name, null, (row, _) => Cell.Of(of(row)));

    /// <summary>Eye, place and form in files, for people together in words.</summary>
    public static Column<T>[] Tools(string heading, Func<T, ToolPlace?> of) =>
        [
            Text("eye", null, row => of(row)?.Eye),
            Place(null, row => of(row)?.Place),
            Text("form", null, row => of(row)?.Form),
            Text(null, heading, row => of(row)?.ToString()),
        ];

    /// <summary>The same column of rows that hold such a row.</summary>
    public Column<TOuter> From<TOuter>(Func<TOuter, T> get) =>
        new(Name, Heading, (row, units) => Of(get(row), units), Unit)
        {
            Meaning = Meaning,
            Rank = Rank,
            Print = Print,
        };

    /// <summary>Says what it means in the data dictionary.</summary>
    public Column<T> Means(string meaning) => this with { Meaning = meaning };

    /// <summary>Says how soon a narrow screen leaves it out.</summary>
    public Column<T> Ranked(int rank) => this with { Rank = rank };
}
