using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ToolRack;

/// <summary>A column of the rack: where it begins, how wide it is, and on which side its text stands.</summary>
/// <param name="From">The first column, from 0.</param>
/// <param name="Width">Columns; 0 where the window has no room for it.</param>
/// <param name="IsRight">Whether the text stands at its right end, as figures do.</param>
internal readonly record struct RackColumn(int From, int Width, bool IsRight = false)
{
    /// <summary>Writes into it.</summary>
    public void Put(Picture body, int row, string text, Ink ink = Ink.Plain)
    {
        if (Width > 0 && IsRight)
        {
            body.PutRight(From + Width, row, text, ink, Width);
        }
        else if (Width > 0)
        {
            body.Put(From, row, text, ink, Width);
        }
    }
}

/// <summary>The columns of the rack in a window of some width. The first two stand for the mark of the next to take.</summary>
internal sealed record RackColumns(
    RackColumn Eye,
    RackColumn Tool,
    RackColumn What,
    RackColumn Worn,
    RackColumn Of,
    RackColumn Left,
    RackColumn Range,
    RackColumn EyeNow,
    RackColumn Verdict,
    RackColumn Why
)
{
    /// <summary>From so many columns on it is complete.</summary>
    public const int Complete = 80;

    private const int WhyFrom = 81;

    /// <summary>Complete from 80 columns on; a narrow window keeps tool, heats left and verdict.</summary>
    public static RackColumns For(int width) =>
        width >= Complete
            ? new(
                new(2, 3),
                new(6, 6),
                new(13, 10),
                new(23, 6, IsRight: true),
                new(30, 5, IsRight: true),
                new(36, 5, IsRight: true),
                new(41, 10, IsRight: true),
                new(52, 11),
                new(64, 16),
                new(WhyFrom, Math.Max(0, width - WhyFrom))
            )
            : new(
                default,
                new(2, 6),
                default,
                default,
                default,
                new(8, 5, IsRight: true),
                new(13, 10, IsRight: true),
                default,
                new(24, Math.Min(16, Math.Max(0, width - 24))),
                default
            );
}
