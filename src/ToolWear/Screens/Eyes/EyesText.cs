using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Eyes;

/// <summary>The text of the eyes and handles: the list to the left, the chosen one to the right, the caution below.</summary>
internal static class EyesText
{
    private const int Left = 15;
    private const int FactsWide = 36;
    private const int DrawingRows = 9;
    private const int CautionRows = 2;

    /// <summary>The rows that the chosen one has.</summary>
    /// <param name="room">Rows of the body.</param>
    /// <returns>Rows, at least one.</returns>
    public static int RowsFor(int room) => Math.Max(1, room - CautionRows);

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="rows">Eyes and handles.</param>
    /// <param name="place">Where one is in the list.</param>
    /// <param name="page">What is told of the chosen one.</param>
    /// <param name="first">The first line of it that is shown.</param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>How many lines there are of the chosen one.</returns>
    public static int Draw(
        Picture body,
        ImmutableArray<EyeOrHandle> rows,
        ListPlace place,
        EyePage page,
        int first,
        bool hasBraille,
        LengthUnit units
    )
    {
        int room = RowsFor(body.Height);
        DrawList(body, rows, place, room);
        int lines = DrawPage(body, page, first, room, hasBraille);
        int y = room;
        foreach (string line in Picture.Wrap($"{SizesIn(units)} {Cautions.EyeCaution}", Math.Max(20, body.Width)))
        {
            body.Put(0, y++, line, Ink.Warn);
        }

        return lines;
    }

    private static void DrawList(Picture body, ImmutableArray<EyeOrHandle> rows, ListPlace place, int room)
    {
        string NameOf(int row) => rows[row].Eye is null ? HandleRow(rows[row].Name) : EyeRow(rows[row].Name);
        body.PutList(
            0,
            room,
            rows.Length,
            place,
            width => [ListColumn.Mark(place), new("", width - 2, NameOf)],
            width: Left - 1
        );
    }

    private static int DrawPage(Picture body, EyePage page, int first, int room, bool hasBraille)
    {
        int wide = Math.Max(20, body.Width - Left);
        bool hasDrawing = !page.Outlines.IsEmpty && wide > FactsWide + 16;
        (string Line, Ink Ink)[] facts =
        [
            .. page
                .Facts.SelectMany(fact => Picture.Wrap(fact, hasDrawing ? FactsWide : wide))
                .Select((line, i) => (line, i == 0 ? Ink.Strong : Ink.Plain)),
        ];
        int head = hasDrawing ? Math.Max(facts.Length, DrawingRows) : facts.Length;
        (string Line, Ink Ink)[] lines =
        [
            .. facts,
            .. Enumerable.Repeat(("", Ink.Plain), head - facts.Length + 1),
            .. page.Told.SelectMany(told => Picture.Wrap(told.Line, wide).Select(line => (line, told.Ink))),
        ];
        Picture part = new(wide, room);
        for (int i = 0; i < room && first + i < lines.Length; i++)
        {
            part.Put(0, i, lines[first + i].Line, lines[first + i].Ink);
        }

        if (hasDrawing)
        {
            int across = Math.Min(40, wide - FactsWide - 1);
            OutlineDrawing.Draw(part, FactsWide + 1, -first, across, DrawingRows, page.Outlines, hasBraille);
        }

        body.Put(Left, 0, part);
        return lines.Length;
    }

    private static string EyeRow(string eye) => $"eye {eye}";

    private static string HandleRow(string handle) => $"h. {handle}";

    private static string SizesIn(LengthUnit units) => units == LengthUnit.Mm ? "Sizes in mm." : "Sizes in inches.";
}
