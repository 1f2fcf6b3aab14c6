using System.Collections.Immutable;
using System.Drawing;
using System.Globalization;
using System.Text;
using Terminal.Gui.Text;
using ToolWear.Pens;

namespace ToolWear.Screens.Drawing;

/// <summary>One cell of a picture.</summary>
/// <param name="Text">What stands in it; empty behind a wide character.</param>
/// <param name="Ink">Its ink.</param>
internal readonly record struct Spot(string Text, Ink Ink);

/// <summary>A screen as text in cells: what is drawn, without a terminal.</summary>
/// <remarks>What does not fit is cut and ends in an ellipsis; control characters never get in.</remarks>
internal sealed class Picture
{
    // the characters of a plain terminal, each one column wide: most of what is ever drawn
    private static readonly string[] Plain = [.. Enumerable.Range(0, 127).Select(each => ((char)each).ToString())];

    private readonly Spot[] spots;
    private readonly ImmutableArray<string>.Builder overlaps = ImmutableArray.CreateBuilder<string>();
    private readonly ImmutableArray<string>.Builder leftOut = ImmutableArray.CreateBuilder<string>();

    /// <summary>An empty picture.</summary>
    /// <param name="width">Columns, zero or more.</param>
    /// <param name="height">Rows, zero or more.</param>
    public Picture(int width, int height)
    {
        Width = Math.Max(0, width);
        Height = Math.Max(0, height);
        spots = new Spot[Width * Height];
        Array.Fill(spots, new Spot(" ", Ink.Plain));
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>What was written over something else: a fault of the layout.</summary>
    public IReadOnlyList<string> Overlaps => overlaps;

    /// <summary>What lay outside and was left out whole: a fault of the layout in a window large enough.</summary>
    public IReadOnlyList<string> LeftOut => leftOut;

    /// <summary>Where the line stands that is being typed, the place of its cursor included; null where none does.</summary>
    public (int Column, int Row, int Width)? Typed { get; private set; }

    /// <summary>The list that stands in it; null where none does.</summary>
    public ListPage? List { get; private set; }

    /// <summary>The cell at a place inside the picture.</summary>
    /// <param name="column">From 0.</param>
    /// <param name="row">From 0.</param>
    public Spot this[int column, int row] => spots[(row * Width) + column];

    /// <summary>The columns that a text takes.</summary>
    /// <param name="text">A text.</param>
    /// <returns>Columns.</returns>
    public static int ColumnsOf(string text) => IsPlain(text) ? text.Length : Elements(text).Sum(each => Columns(each));

    /// <summary>Writes a text; what lies outside the picture is left out.</summary>
    /// <param name="column">From 0.</param>
    /// <param name="row">From 0.</param>
    /// <param name="text">The text.</param>
    /// <param name="ink">Its ink.</param>
    /// <param name="room">The columns it may take at most.</param>
    /// <returns>The column behind it.</returns>
    public int Put(int column, int row, string text, Ink ink = Ink.Plain, int room = int.MaxValue)
    {
        if (row < 0 || row >= Height || column < 0 || column >= Width || room <= 0)
        {
            if (!string.IsNullOrWhiteSpace(text))
            {
                leftOut.Add($"{text} in row {row}, column {column}");
            }

            return column;
        }

        int at = column;
        foreach (string element in Elements(Fit(text, Math.Min(room, Width - column))))
        {
            at = Set(at, row, element, ink);
        }

        return at;
    }

    /// <summary>Writes a text over the whole width, broken at spaces.</summary>
    /// <param name="row">Its first row, from 0.</param>
    /// <param name="text">The text.</param>
    /// <param name="ink">Its ink.</param>
    /// <returns>The row below it.</returns>
    public int PutWrapped(int row, string text, Ink ink = Ink.Plain)
    {
        foreach (string line in Wrap(text, Math.Max(20, Width)))
        {
            Put(0, row++, line, ink);
        }

        return row;
    }

    /// <summary>Leaves room for a list, which the library draws.</summary>
    /// <param name="row">Its first row, from 0.</param>
    /// <param name="height">The rows it may take at most, headings included.</param>
    /// <param name="count">Rows of the list.</param>
    /// <param name="place">Where one is in it.</param>
    /// <param name="columns">Its columns for so many columns of the window; one fewer where a bar has to stand beside it.</param>
    /// <param name="width">The columns it may take at most.</param>
    /// <returns>The row below it.</returns>
    public int PutList(
        int row,
        int height,
        int count,
        ListPlace place,
        Func<int, IReadOnlyList<ListColumn>> columns,
        int width = int.MaxValue
    )
    {
        int wide = Math.Min(width, Width);
        IReadOnlyList<ListColumn> all = columns(wide);
        int headings = all.Any(column => column.Heading.Length > 0) ? 1 : 0;
        int rows = Math.Max(1, height - headings);
        place.Show(count, rows);
        int used = headings + Math.Min(count, rows);
        List = new(new Rectangle(0, row, wide, used), count > rows ? columns(wide - 1) : all, place);
        return row + used;
    }

    /// <summary>Writes what is being typed, with the mark of the cursor; of a long line its end is seen.</summary>
    /// <param name="column">From 0.</param>
    /// <param name="row">From 0.</param>
    /// <param name="typed">What stands in the line.</param>
    /// <param name="room">The columns it may take at most.</param>
    /// <returns>The column behind it.</returns>
    public int PutTyped(int column, int row, string typed, int room = int.MaxValue)
    {
        string text = typed + "_";
        int most = Math.Min(room, Width - column);
        while (most > 1 && ColumnsOf(text) > most)
        {
            // the ellipsis takes the place of what is cut off before it
            int[] elements = StringInfo.ParseCombiningCharacters(text);
            text = "…" + text[elements[Math.Min(2, elements.Length - 1)]..];
        }

        int end = Put(column, row, text, Ink.Typed, room);
        Typed = end > column ? (column, row, end - column) : Typed;
        return end;
    }

    /// <summary>Writes a text that ends before a column.</summary>
    /// <param name="end">The column behind it.</param>
    /// <param name="row">From 0.</param>
    /// <param name="text">The text.</param>
    /// <param name="ink">Its ink.</param>
    /// <param name="room">The columns it may take at most.</param>
    public void PutRight(int end, int row, string text, Ink ink = Ink.Plain, int room = int.MaxValue)
    {
        string fit = Fit(text, Math.Min(room, end));
        Put(end - ColumnsOf(fit), row, fit, ink);
    }

    /// <summary>Gives a row one ink from end to end, over whatever stands there.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="ink">The ink.</param>
    public void Tint(int row, Ink ink)
    {
        for (int i = row * Width; row >= 0 && row < Height && i < (row + 1) * Width; i++)
        {
            spots[i] = spots[i] with { Ink = ink };
        }
    }

    /// <summary>Puts a picture into this one.</summary>
    /// <param name="column">From 0.</param>
    /// <param name="row">From 0.</param>
    /// <param name="other">The picture.</param>
    public void Put(int column, int row, Picture other)
    {
        overlaps.AddRange(other.overlaps);
        leftOut.AddRange(other.leftOut);
        List = other.List is { } list
            ? list with
            {
                At = new Rectangle(column + list.At.X, row + list.At.Y, list.At.Width, list.At.Height),
            }
            : List;
        Typed = other.Typed is { } typed ? (column + typed.Column, row + typed.Row, typed.Width) : Typed;
        if (column + other.Width > Width || row + other.Height > Height)
        {
            leftOut.Add($"a part of a picture in row {row}, column {column}");
        }

        for (int y = 0; y < Math.Min(other.Height, Height - row); y++)
        {
            for (int x = 0; x < Math.Min(other.Width, Width - column); x++)
            {
                spots[((row + y) * Width) + column + x] = other[x, y];
            }
        }
    }

    /// <summary>Cuts a text to a number of columns; a cut one ends in an ellipsis, and no control character is left.</summary>
    /// <param name="text">The text.</param>
    /// <param name="room">Columns.</param>
    /// <returns>The text, or its beginning with an ellipsis.</returns>
    public static string Fit(string text, int room)
    {
        if (room <= 0 || ColumnsOf(text) <= room)
        {
            return room <= 0 ? ""
                : IsPlain(text) ? text
                : string.Concat(Elements(text));
        }

        StringBuilder cut = new();
        int used = 1;
        foreach (string element in Elements(text))
        {
            used += Columns(element);
            if (used > room)
            {
                break;
            }

            cut.Append(element);
        }

        return cut.Append('…').ToString();
    }

    /// <summary>Breaks a text into lines between words.</summary>
    /// <param name="text">The text; line ends in it are kept.</param>
    /// <param name="room">Columns, at least 1.</param>
    /// <returns>The lines.</returns>
    public static string[] Wrap(string text, int room) =>
        Wrapped.Lines(text.ReplaceLineEndings("\n"), room, ColumnsOf).Split('\n');

    /// <summary>Fills lines with items that are not broken.</summary>
    /// <param name="items">The items.</param>
    /// <param name="room">Columns.</param>
    /// <returns>The lines, two spaces between items.</returns>
    public static IEnumerable<string> Flow(IEnumerable<string> items, int room)
    {
        string line = "";
        foreach (string item in items)
        {
            if (line.Length > 0 && ColumnsOf(line) + 2 + ColumnsOf(item) > room)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? item : $"{line}  {item}";
        }

        yield return line;
    }

    /// <summary>The rows as text, without spaces at their ends.</summary>
    /// <returns>Lines with their ends.</returns>
    public override string ToString()
    {
        StringBuilder text = new();
        for (int y = 0; y < Height; y++)
        {
            int begin = text.Length;
            for (int x = 0; x < Width; x++)
            {
                text.Append(this[x, y].Text);
            }

            while (text.Length > begin && text[^1] == ' ')
            {
                text.Length--;
            }

            text.AppendLine();
        }

        return text.ToString();
    }

    private int Set(int column, int row, string element, Ink ink)
    {
        int columns = Columns(element);
        if (columns == 0 || column + columns > Width)
        {
            return column;
        }

        int at = (row * Width) + column;
        if (spots[at].Text is not (" " or "") && element != " ")
        {
            overlaps.Add($"{element} over {spots[at].Text} in row {row}, column {column}");
        }

        spots[at] = new(element, ink);
        if (columns == 2)
        {
            spots[at + 1] = new("", ink);
        }

        return column + columns;
    }

    private static bool IsPlain(string text) => !text.AsSpan().ContainsAnyExceptInRange(' ', '~');

    private static int Columns(string element) =>
        element.Length == 1 && element[0] < Plain.Length ? 1 : Math.Clamp(element.GetColumns(), 0, 2);

    private static IEnumerable<string> Elements(string text)
    {
        if (IsPlain(text))
        {
            foreach (char each in text)
            {
                yield return Plain[each];
            }

            yield break;
        }

        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            string element = elements.GetTextElement();
            yield return Rune.TryGetRuneAt(element, 0, out Rune rune) && !Rune.IsControl(rune) ? element : "\uFFFD";
        }
    }
}
