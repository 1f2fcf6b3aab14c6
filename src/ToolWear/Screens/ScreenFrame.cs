using System.Collections.Immutable;
using System.Drawing;
using System.Globalization;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens;

/// <summary>What every screen has round it: title, what was said last, the keys that work now.</summary>
/// <remarks>Each of them takes the rows that it needs, measured; the body has the rest.</remarks>
internal static class ScreenFrame
{
    private const string DemoMarkShort = "  [demo]";

    private const int TitleRows = 1;
    private const int Gap = 2;

    /// <summary>The rows that are left between title and foot.</summary>
    /// <param name="said">What was said last.</param>
    /// <param name="foot">Lines of the foot.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <returns>Rows, zero or more.</returns>
    public static int BodyRows(string said, int foot, int width, int height) =>
        Math.Max(0, height - TitleRows - Said(said, width, height).Length - foot);

    /// <summary>Puts the frame round a body.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="body">The body.</param>
    /// <param name="foot">The foot that it leaves room for.</param>
    /// <param name="height">Rows of the whole.</param>
    /// <returns>The whole.</returns>
    public static Picture Around(
        Screen screen,
        Sitting sitting,
        Picture body,
        IReadOnlyList<ImmutableArray<KeyRow>> foot,
        int height
    )
    {
        Picture whole = new(body.Width, height);
        DrawTitle(whole, screen.Heading, sitting);
        whole.Put(0, TitleRows, body);
        int at = TitleRows + body.Height;
        foreach (string line in Said(sitting.Said.Sentence, body.Width, height))
        {
            whole.Put(0, at++, line, sitting.Said.Ink);
        }

        foreach (ImmutableArray<KeyRow> line in foot)
        {
            int column = 0;
            foreach (KeyRow row in line)
            {
                column = whole.Put(column, at, row.Shown, Ink.Key);
                column = whole.Put(column + 1, at, row.Words, Ink.Quiet) + Gap;
            }

            at++;
        }

        return whole;
    }

    /// <summary>The keys at the foot, line by line: all that work now, where the window has room for them.</summary>
    /// <remarks>
    /// Up to a sixth of the rows: four lines of 24. What a smaller window has no room for is in help, whose key always
    /// stands there; moving about is left out first, taking back last.
    /// </remarks>
    /// <param name="screen">The screen.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows of the whole.</param>
    /// <returns>Lines of rows.</returns>
    public static IReadOnlyList<ImmutableArray<KeyRow>> Foot(Screen screen, int width, int height) =>
        Lines(
            [
                .. screen
                    .KeyRows.Where(row => !row.OnlyInHelp && Works(screen, row))
                    .Select(row => row with { Words = screen.WordsOf(row) }),
            ],
            width,
            height
        );

    /// <summary>The key at the foot that stands at a place of the window.</summary>
    /// <remarks>
    /// The foot is ours and not the library's status bar: that has one line, and the keys of the rack need three; as three
    /// bars its 21 shortcuts were 84 views, 6 to 32 ms more to make and 6 to 13 ms more at each key.
    /// </remarks>
    /// <param name="screen">The screen.</param>
    /// <param name="size">Columns and rows of the window.</param>
    /// <param name="at">The place.</param>
    /// <returns>The row, and which of its keys; null where no single key stands.</returns>
    public static (KeyRow Row, int Which)? KeyAt(Screen screen, Size size, Point at)
    {
        IReadOnlyList<ImmutableArray<KeyRow>> foot = Foot(screen, size.Width, size.Height);
        int line = at.Y - (size.Height - foot.Count);
        int column = 0;
        foreach (KeyRow row in line < 0 ? [] : foot[line])
        {
            int shown = Picture.ColumnsOf(row.Shown);
            int end = column + shown + 1 + Picture.ColumnsOf(row.Words);
            if (at.X >= column && at.X < end && row.Names.Length <= 2)
            {
                bool isSecond = row.Names.Length == 2 && at.X < column + shown && at.X - column >= (shown + 1) / 2;
                return (row, isSecond ? 1 : 0);
            }

            column = end + Gap;
        }

        return null;
    }

    /// <summary>Lays keys out line by line.</summary>
    /// <param name="rows">The keys that work.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows of the whole window.</param>
    /// <returns>Lines of rows; none where there is no row.</returns>
    public static IReadOnlyList<ImmutableArray<KeyRow>> Lines(ImmutableArray<KeyRow> rows, int width, int height)
    {
        int most = Math.Max(1, height / 6);
        // help closes the foot
        List<KeyRow> kept = [.. rows.OrderBy(row => row.Act == Act.Help)];
        List<ImmutableArray<KeyRow>> lines = Flow(kept, width);
        while (lines.Count > most && kept.Count > 1)
        {
            kept.Remove(LeastNeeded(kept));
            lines = Flow(kept, width);
        }

        return lines;
    }

    /// <summary>Whether a key does now what its row says: what it needs is there, and it is not typed instead.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="row">The key.</param>
    /// <returns>True where it does.</returns>
    public static bool Works(Screen screen, KeyRow row) =>
        !(row.Act == Act.Help && screen.Name == ScreenName.Help)
        && screen.Has(row.Need)
        && !(screen.Line is { } line && row.Names.All(line.WouldTake));

    private static KeyRow LeastNeeded(List<KeyRow> rows) =>
        rows.FindLast(row => row.Act == Act.Page)
        ?? rows.FindLast(row => row.Act == Act.Move)
        ?? rows.FindLast(row => row.Where is not null && row.Act != Act.Help)
        ?? rows.FindLast(row => row.Act != Act.Help)
        ?? rows[^1];

    private static List<ImmutableArray<KeyRow>> Flow(List<KeyRow> rows, int width)
    {
        List<List<KeyRow>> lines = [];
        int used = 0;
        foreach (KeyRow row in rows)
        {
            int columns = Picture.ColumnsOf(row.Shown) + 1 + Picture.ColumnsOf(row.Words);
            if (lines.Count == 0 || used + Gap + columns > width)
            {
                lines.Add([]);
                used = -Gap;
            }

            lines[^1].Add(row);
            used += Gap + columns;
        }

        return [.. lines.Select(line => line.ToImmutableArray())];
    }

    /// <summary>What was said, in up to three lines: a caution is not cut short. One empty line where nothing was.</summary>
    private static string[] Said(string sentence, int width, int height) =>
        [.. Picture.Wrap(sentence, Math.Max(1, width)).Take(height >= 20 ? 3 : 2)];

    /// <summary>Heading, mark of the demo, day. The mark stands whole; the heading gives way, the day before it.</summary>
    private static void DrawTitle(Picture whole, string heading, Sitting sitting)
    {
        string day = sitting.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string mark = Words.DemoMark(sitting.Shop);
        string shortMark = mark.Length == 0 ? "" : DemoMarkShort;
        (string Mark, string Right)[] ways = sitting.Forecaster.IsBehind
            ?
            [
                (mark, $"{Words.WorkingOut}  {day}"),
                (mark, Words.WorkingOut),
                (shortMark, Words.WorkingOut),
                (shortMark, ""),
            ]
            : [(mark, day), (shortMark, day), (shortMark, "")];
        int Room((string Mark, string Right) way) =>
            whole.Width - way.Mark.Length - way.Right.Length - (way.Right.Length == 0 ? 0 : Gap);
        (string Mark, string Right) taken = ways.FirstOrDefault(
            way => Room(way) >= Picture.ColumnsOf(heading),
            ways[^1]
        );
        int at = whole.Put(0, 0, heading, Ink.Title, Math.Max(0, Room(taken)));
        whole.Put(at, 0, taken.Mark, Ink.Title);
        whole.PutRight(whole.Width, 0, taken.Right, Ink.Title);
        whole.Tint(0, Ink.Title);
    }
}
