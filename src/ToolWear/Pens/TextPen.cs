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
    private const int LeastWords = 6;

    /// <summary>The table as lines of so many columns, wider only where its figures need them: headings over it, numbers
    /// to the right, names cut that are too long, figures never.</summary>
    public static string ToText(this Table table, int width = int.MaxValue)
    {
        if (table.IsOne)
        {
            return Figures(table);
        }

        ImmutableArray<ColumnPlace> places = table.Places(width);
        StringBuilder text = new();
        Append(text, places, i => table.Columns[i].Heading!);
        foreach (ImmutableArray<Cell> row in table.Rows)
        {
            Append(text, places, i => row[i].Shown);
        }

        return text.ToString();
    }

    /// <summary>Which columns a window of some width has room for and how wide they are, with two between any two.</summary>
    public static ImmutableArray<ColumnPlace> Places(this Table table, int width)
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
        while (places.Sum(place => Least(table, place) + Between) - Between > width)
        {
            ColumnPlace first = places.Last(place => Rank(place) == places.Max(Rank));
            if (Rank(first) == 0)
            {
                break;
            }

            places.Remove(first);
        }

        Narrow(table, places, width);
        return [.. places];

        int Rank(ColumnPlace place) => table.Columns[place.Index].Rank;
    }

    /// <summary>How many columns of a terminal a text has.</summary>
    public static int Width(string text) => text.EnumerateRunes().Count();

    private static int Least(Table table, ColumnPlace place) =>
        place.IsRight
            ? place.Width
            : Math.Min(place.Width, Math.Max(LeastWords, Width(table.Columns[place.Index].Heading!)));

    // the widest column of words gives way, a column of the terminal at a time
    private static void Narrow(Table table, List<ColumnPlace> places, int width)
    {
        int over = places.Sum(place => place.Width + Between) - Between - width;
        for (; over > 0; over--)
        {
            ColumnPlace[] givingWay = [.. places.Where(place => place.Width > Least(table, place))];
            if (givingWay.Length == 0)
            {
                return;
            }

            ColumnPlace widest = givingWay.MaxBy(place => place.Width);
            places[places.IndexOf(widest)] = widest with { Width = widest.Width - 1 };
        }
    }

    private static string Figures(Table table)
    {
        int width = table.Columns.Max(column => column.Heading?.Length ?? 0) + Between;
        return string.Concat(
            table
                .Columns.Zip(table.Rows[0])
                .Where(each => each.First.Heading is not null)
                .Select(each => $"{each.First.Heading!.PadRight(width)}{each.Second.Shown}\n")
        );
    }

    private static void Append(StringBuilder text, ImmutableArray<ColumnPlace> places, Func<int, string> cell) =>
        text.AppendLine(
            string.Join(new string(' ', Between), places.Select(place => place.Set(cell(place.Index)))).TrimEnd()
        );
}
