using System.Collections.Immutable;
using System.Text;
using ToolWear.Results;

namespace ToolWear.Pens;

/// <summary>Where a column of a table stands in lines of text.</summary>
/// <param name="Index">Which column of the table.</param>
/// <param name="Width">How many columns of the terminal it has.</param>
/// <param name="IsRight">Whether its cells stand at its right end, as numbers do.</param>
internal readonly record struct ColumnPlace(int Index, int Width, bool IsRight)
{
    /// <summary>A text in this place: cut where it is too long, on the side where it belongs.</summary>
    public string Set(string text)
    {
        string cell = Shortened.In(text, Width);
        string space = new(' ', Width - TextPen.Width(cell));
        return IsRight ? space + cell : cell + space;
    }
}

/// <summary>Draws results as text for people.</summary>
internal static class TextPen
{
    private const int Between = 2;
    private const int LeastWords = 18;
    private const int LeastSentence = 16;

    /// <summary>The table as lines of so many columns, wider only where its figures need them: headings over it, numbers
    /// to the right, names cut that are too long, figures never; words in the last column go on in the next line.</summary>
    public static string ToText(this Table table, int width = int.MaxValue)
    {
        if (table.IsOne)
        {
            return Figures(table, width);
        }

        ImmutableArray<ColumnPlace> places = table.Places(width);
        // closer together where that spares a column
        int between = places.Sum(place => place.Width + Between) - Between > width ? 1 : Between;
        StringBuilder text = new();
        Append(text, places, i => table.Columns[i].Heading!, between, width);
        foreach (ImmutableArray<Cell> row in table.Rows)
        {
            Append(text, places, i => row[i].Shown, between, width);
        }

        return text.ToString();
    }

    /// <summary>Says what the lines of a table leave out; empty where they leave out nothing.</summary>
    public static string LeftOut(this Table table, int width)
    {
        ImmutableArray<ColumnPlace> places = table.IsOne ? [] : table.Places(width);
        string[] gone =
        [
            .. table
                .Columns.Where((column, i) => column.Heading?.Length > 0 && places.All(place => place.Index != i))
                .Select(column => column.Heading!),
        ];
        bool isCut = places
            .SkipLast(1)
            .Any(place => table.Rows.Any(row => Width(row[place.Index].Shown) > place.Width));
        return places.IsEmpty || (gone.Length == 0 && !isCut)
            ? ""
            : $"({(gone.Length == 0 ? "Long words are cut" : $"Left out: {string.Join(", ", gone)}")}; --wide shows all.)\n";
    }

    /// <summary>Which columns a window of some width has room for and how wide they are, with so many between any two at least.</summary>
    public static ImmutableArray<ColumnPlace> Places(this Table table, int width, int between = 1)
    {
        List<ColumnPlace> places =
        [
            .. Enumerable
                .Range(0, table.Columns.Length)
                .Where(i => table.Columns[i].Heading is not null)
                .Select(i => new ColumnPlace(
                    i,
                    table.Rows.Select(row => Width(row[i].Shown)).Append(Width(table.Columns[i].Heading!)).Max(),
                    table.Rows.Any(row => row[i].IsNumber)
                )),
        ];
        // of those that nobody ranked the last goes first; what a row is of stays
        while (places.Count > 2 && places.Sum(place => Least(table, place, places[^1]) + between) - between > width)
        {
            places.Remove(places.Last(place => Rank(place) == places.Max(Rank)));
        }

        Narrow(table, places, width, between);
        return [.. places];

        int Rank(ColumnPlace place) => table.Columns[place.Index].Rank;
    }

    /// <summary>How many columns of a terminal a text has.</summary>
    public static int Width(string text) => text.EnumerateRunes().Count();

    private static int Least(Table table, ColumnPlace place, ColumnPlace last) =>
        place.IsRight || table.Rows.Any(row => row[place.Index].Shown.Any(char.IsDigit) && place.Index != last.Index)
            ? place.Width
            : Math.Min(
                place.Width,
                Math.Max(
                    place.Index == last.Index ? LeastSentence : LeastWords,
                    Width(table.Columns[place.Index].Heading!)
                )
            );

    // the widest column of words gives way, a column of the terminal at a time
    private static void Narrow(Table table, List<ColumnPlace> places, int width, int between)
    {
        int over = places.Sum(place => place.Width + between) - between - width;
        for (; over > 0; over--)
        {
            ColumnPlace[] givingWay = [.. places.Where(place => place.Width > Least(table, place, places[^1]))];
            if (givingWay.Length == 0)
            {
                return;
            }

            ColumnPlace widest = givingWay.MaxBy(place => place.Width);
            places[places.IndexOf(widest)] = widest with { Width = widest.Width - 1 };
        }
    }

    private static string Figures(Table table, int width)
    {
        int before = table.Columns.Max(column => column.Heading?.Length ?? 0) + Between;
        return string.Concat(
            table
                .Columns.Zip(table.Rows[0])
                .Where(each => each.First.Heading is not null)
                .Select(each =>
                    Wrapped.Of(each.Second.Shown, each.First.Heading!.PadRight(before), new(' ', before), width)
                )
        );
    }

    private static void Append(
        StringBuilder text,
        ImmutableArray<ColumnPlace> places,
        Func<int, string> cell,
        int between,
        int width
    )
    {
        ColumnPlace last = places[^1];
        string before = string.Concat(
            places.SkipLast(1).Select(place => place.Set(cell(place.Index)) + new string(' ', between))
        );
        text.Append(
            last.IsRight || Width(cell(last.Index)) <= last.Width
                ? $"{before}{last.Set(cell(last.Index))}".TrimEnd() + "\n"
                : Wrapped.Of(cell(last.Index), before, new(' ', Width(before)), width)
        );
    }
}
