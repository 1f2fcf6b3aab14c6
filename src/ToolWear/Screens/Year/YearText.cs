using System.Collections.Immutable;
using ToolWear.Core.Planning.Years;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Year;

/// <summary>The text of a year: tools, causes, heads, measuring, one below the other.</summary>
internal static class YearText
{
    private const string YearBasisShort =
        "Half last: the heats from new by which half of such tools were done, by all records to the end of the year (in brackets: nineteen times in twenty between).";

    private const int Steel = 18;
    private const int InUse = 33;
    private const int New = 38;
    private const int Scrapped = 48;
    private const int WornOut = 54;
    private const int Life = 79;
    private const int Wide = 48;

    /// <summary>Draws a year.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="year">The year.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ShopYear year, int first)
    {
        ImmutableArray<Action<int>> lines =
        [
            .. Tools(body, year.Tools),
            .. Causes(body, year.Causes),
            .. Heads(body, year.Heads),
            .. Measured(body, YearTables.Measured.Of(year.Measured).Rows[0], RangeWords.Kept(year.Ranges)),
        ];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            lines[first + i](i);
        }

        return lines.Length;
    }

    private static IEnumerable<Action<int>> Tools(Picture body, ImmutableArray<YearOfTools> tools)
    {
        yield return y =>
        {
            body.Put(0, y, "Tools", Ink.Strong);
            body.Put(Steel, y, "Steel", Ink.Strong);
            body.PutRight(InUse, y, "In use", Ink.Strong);
            body.PutRight(New, y, "New", Ink.Strong);
            body.PutRight(Scrapped, y, "Scrapped", Ink.Strong);
            body.PutRight(WornOut, y, "Worn", Ink.Strong);
            body.PutRight(Life, y, "Half last (heats)", Ink.Strong);
        };
        foreach (ImmutableArray<Cell> row in YearTables.Lives.Over(tools).Rows)
        {
            yield return y =>
            {
                body.Put(0, y, row[0].Shown, Ink.Strong, Steel - 1);
                body.Put(Steel, y, row[3].Shown, Ink.Plain, InUse - Steel - 7);
                body.PutRight(InUse, y, row[4].Shown);
                body.PutRight(New, y, row[5].Shown);
                body.PutRight(Scrapped, y, row[6].Shown);
                body.PutRight(WornOut, y, row[7].Shown);
                body.PutRight(Life, y, Lasting(row[9], row[10], row[11]));
            };
        }

        if (tools.IsEmpty)
        {
            yield return y => body.Put(2, y, YearWords.NoToolsThen, Ink.Quiet);
        }

        foreach (string line in Picture.Wrap(YearBasisShort, Math.Max(20, body.Width - 2)))
        {
            yield return y => body.Put(2, y, line, Ink.Quiet);
        }
    }

    private static IEnumerable<Action<int>> Causes(Picture body, ImmutableArray<YearOfCause> causes)
    {
        yield return _ => { };
        string said = string.Join(
            ", ",
            YearTables
                .Causes.Over(causes)
                .Rows.Select(row => $"{row[0].Shown} {row[1].Shown}{(row[2].Shown == "-" ? "" : $" ({row[2].Shown})")}")
        );
        yield return y =>
        {
            int at = body.Put(0, y, YearWords.YearCauses + ": ", Ink.Strong);
            body.Put(at, y, said.Length > 0 ? said : YearWords.NothingScrapped);
        };
    }

    private static IEnumerable<Action<int>> Heads(Picture body, ImmutableArray<YearOfHeads> heads)
    {
        yield return _ => { };
        foreach (string line in Picture.Wrap(YearWords.YearHeads, Math.Max(20, body.Width)))
        {
            yield return y => body.Put(0, y, line, Ink.Strong);
        }

        foreach (ImmutableArray<Cell> row in YearTables.Heads.Over(heads).Rows)
        {
            yield return y =>
            {
                body.Put(2, y, row[0].Shown, Ink.Strong, Steel - 3);
                body.Put(Steel, y, HeadsInSessions(row[2], row[1], row[3]), Ink.Plain, Wide);
                body.PutRight(Life, y, HeadCosts(row[4]), Ink.Plain, Life - Steel - Wide);
            };
        }

        if (heads.IsEmpty)
        {
            yield return y => body.Put(2, y, YearWords.NothingForged, Ink.Quiet);
        }
    }

    private static IEnumerable<Action<int>> Measured(Picture body, ImmutableArray<Cell> measured, string kept)
    {
        yield return _ => { };
        string said = MeasuredInYear(measured);
        foreach (
            (string line, int i) in Picture
                .Wrap($"{YearWords.YearMeasuredHeading}: {said}", Math.Max(20, body.Width))
                .Select((line, i) => (line, i))
        )
        {
            yield return y => body.Put(0, y, line, i == 0 ? Ink.Strong : Ink.Plain);
        }

        foreach (string line in Picture.Wrap(kept, Math.Max(20, body.Width)))
        {
            yield return y => body.Put(0, y, line);
        }
    }

    private static string Lasting(Cell median, Cell low, Cell high) =>
        !median.IsNumber || !low.IsNumber ? median.Shown
        : high.IsNumber ? $"{median.Shown} ({low.Shown}-{high.Shown})"
        : $"{median.Shown} (over {low.Shown})";

    private static string HeadsInSessions(Cell heads, Cell sessions, Cell uncounted) =>
        $"{(heads.IsNumber ? $"{heads.Shown} heads" : "heads not counted")} in {sessions.Shown} "
        + (sessions.Number is 1 ? "session" : "sessions")
        + (heads.IsNumber && uncounted.Number > 0 ? $", {uncounted.Shown} not counted" : "");

    private static string HeadCosts(Cell cost) => cost.IsNumber ? $"{cost.Shown} each" : "no cost";

    private static string MeasuredInYear(System.Collections.Immutable.ImmutableArray<Cell> measured) =>
        $"{measured[0].Shown} readings, looked over {measured[1].Shown} times; of {measured[2].Shown} heats worked a reading followed {measured[3].Shown}"
        + (measured[4].IsNumber ? $", {measured[4].Shown} in 100" : "")
        + ". Heats are weighted by their work.";
}
