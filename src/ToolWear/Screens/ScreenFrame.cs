using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens;

/// <summary>What every screen has round it: title, what was said last, the keys that work now.</summary>
public static class ScreenFrame
{
    private const int TitleRows = 1;
    private const int SaidRows = 1;

    /// <summary>The rows that are left between title and foot.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <returns>Rows, zero or more.</returns>
    public static int BodyRows(Screen screen, int width, int height) =>
        Math.Max(0, height - TitleRows - SaidRows - Foot(screen, width, height).Count);

    /// <summary>Puts the frame round a body.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="body">The body.</param>
    /// <param name="height">Rows of the whole.</param>
    /// <returns>The whole.</returns>
    public static Picture Around(Screen screen, Sitting sitting, Picture body, int height)
    {
        Picture whole = new(body.Width, height);
        string day = sitting.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string right = sitting.Forecaster.IsBehind ? $"{Words.WorkingOut}  {day}" : day;
        int room = body.Width - right.Length - 2;
        whole.Put(0, 0, $"{screen.Heading}{Words.DemoMark(sitting.Shop)}", Ink.Title, room);
        whole.PutRight(body.Width, 0, right, Ink.Title);
        whole.Tint(0, Ink.Title);
        whole.Put(0, TitleRows, body);
        int at = TitleRows + body.Height;
        whole.Put(0, at, sitting.Said.Sentence, sitting.Said.Ink);
        foreach (ImmutableArray<KeyRow> line in Foot(screen, body.Width, height))
        {
            at++;
            int column = 0;
            foreach (KeyRow row in line)
            {
                column = whole.Put(column, at, row.Shown, Ink.Key);
                column = whole.Put(column + 1, at, row.Words, Ink.Quiet) + 2;
            }
        }

        return whole;
    }

    /// <summary>The keys at the foot, line by line. What does not fit is in help, whose key always stands there.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows of the whole.</param>
    /// <returns>Lines of rows.</returns>
    public static IReadOnlyList<ImmutableArray<KeyRow>> Foot(Screen screen, int width, int height)
    {
        int most = height >= 20 ? 3 : 1;
        KeyRow[] rows = [.. Keys.Of(screen.Name).Where(row => !row.OnlyInHelp && Works(screen, row))];
        KeyRow? help = rows.FirstOrDefault(row => row.Act == Act.Help && screen.Name != ScreenName.Help);
        List<List<KeyRow>> lines =
        [
            [],
        ];
        int used = 0;
        int reserve = help is null ? 0 : Columns(help);
        foreach (KeyRow row in rows.Where(row => row.Act != Act.Help))
        {
            int room = lines.Count == most ? width - reserve : width;
            if (used + Columns(row) > room + 2)
            {
                if (lines.Count == most)
                {
                    break;
                }

                lines.Add([]);
                used = 0;
            }

            lines[^1].Add(row);
            used += Columns(row);
        }

        if (help is not null && used + reserve > width + 2 && lines.Count < most)
        {
            lines.Add([]);
        }

        if (help is not null)
        {
            lines[^1].Add(help);
        }

        return [.. lines.Select(line => line.ToImmutableArray())];
    }

    /// <summary>Whether a key does now what its row says: what it needs is there, and it is not typed instead.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="row">The key.</param>
    /// <returns>True where it does.</returns>
    public static bool Works(Screen screen, KeyRow row) =>
        screen.Has(row.Need) && !(screen.Line is { } line && row.Names.All(line.WouldTake));

    private static int Columns(KeyRow row) => Picture.ColumnsOf(row.Shown) + 1 + Picture.ColumnsOf(row.Words) + 2;
}
