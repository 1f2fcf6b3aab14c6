using System.Collections.Immutable;
using System.Drawing;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Hammer;

/// <summary>What is said of one tool at the hammer.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="What">What it is and what it does: "rough, cheeks".</param>
/// <param name="Heats">Heats of this session.</param>
/// <param name="More">How many more it should do today, null where nobody can say.</param>
/// <param name="Dress">When it is to be dressed, or that it is not to be used; null where neither is to be said.</param>
internal sealed record PanelFacts(string Mark, string What, string Heats, int? More, string? Dress);

/// <summary>The tools at the hammer side by side, each with its figure as large as the window allows.</summary>
/// <remarks>The figure comes first: what is said of the tool stands where the figure leaves room.</remarks>
internal static class Panels
{
    private const int Narrow = 60;
    private const int LeastBeside = 8;

    /// <summary>Draws them.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="room">The rows they may take, from the top.</param>
    /// <param name="tools">The tools in the order of their keys.</param>
    public static void Draw(Picture body, int room, ImmutableArray<PanelFacts> tools)
    {
        if (tools.IsEmpty || room <= 0)
        {
            return;
        }

        int columns =
            body.Width < Narrow ? 1
            : tools.Length <= 4 ? Math.Min(tools.Length, 2)
            : 3;
        int rows = (tools.Length + columns - 1) / columns;
        if (room / rows < BigDigits.Dots)
        {
            DrawLines(body, room, tools);
            return;
        }

        Size size = new(body.Width / columns, room / rows);
        for (int i = 0; i < tools.Length; i++)
        {
            Rectangle at = new(i % columns * size.Width, i / columns * size.Height, size.Width - 2, size.Height);
            DrawPanel(body, at, i + 1, tools[i]);
        }
    }

    /// <summary>A line a tool, side by side where there are more tools than rows.</summary>
    private static void DrawLines(Picture body, int room, ImmutableArray<PanelFacts> tools)
    {
        int columns = (tools.Length + room - 1) / room;
        int rows = (tools.Length + columns - 1) / columns;
        int width = body.Width / columns;
        for (int i = 0; i < tools.Length; i++)
        {
            PanelFacts tool = tools[i];
            int at = body.Put(i / rows * width, i % rows, $"{i + 1} ", Ink.Key);
            string line = IsWarned(tool)
                ? $"{tool.Heats}  {tool.Mark} {Shortly(tool)}; {tool.What}"
                : $"{tool.Heats}  {tool.Mark} {tool.What}  {Today(tool)}".TrimEnd();
            body.Put(at, i % rows, line, IsWarned(tool) ? Ink.Warn : Ink.Strong, width - 4);
        }
    }

    private static void DrawPanel(Picture body, Rectangle at, int key, PanelFacts tool)
    {
        int column = body.Put(at.X, at.Y, $"{key} ", Ink.Key);
        bool hasHead = at.Height > BigDigits.Dots;
        bool hasFoot = at.Height > BigDigits.Dots + 1;
        Ink ink = IsWarned(tool) ? Ink.Warn : Ink.Quiet;
        if (hasHead)
        {
            body.Put(column, at.Y, Shortened.In($"{tool.Mark} {tool.What}", at.Right - column));
        }

        int top = at.Y + (hasHead ? 1 : 0);
        int height = at.Height - (hasHead ? 1 : 0) - (hasFoot ? 1 : 0);
        Size drawn = BigDigits.Draw(body, at.X + 2, top, at.Width - 2, height, tool.Heats, Ink.Strong);
        if (hasFoot)
        {
            string foot = Today(tool).Length > at.Width - 2 ? Shortly(tool) : Today(tool);
            body.Put(at.X + 2, top + drawn.Height, foot, ink, at.Width - 2);
            return;
        }

        int left = at.X + 2 + drawn.Width + 2;
        string name = hasHead ? "" : $"{tool.Mark} {tool.What}\n";
        DrawBeside(body, new Rectangle(left, top, at.Right - left, height), name, tool, ink);
    }

    private static void DrawBeside(Picture body, Rectangle at, string name, PanelFacts tool, Ink ink)
    {
        if (at.Width < LeastBeside)
        {
            return;
        }

        string[] lines = [.. Picture.Wrap(name + Today(tool), at.Width)];
        if (lines.Length > at.Height)
        {
            lines = [.. Picture.Wrap(name + Shortly(tool), at.Width)];
        }

        for (int i = 0; i < Math.Min(lines.Length, at.Height); i++)
        {
            bool isCut = i == at.Height - 1 && lines.Length > at.Height;
            body.Put(at.X, at.Y + i, isCut ? lines[i] + " …" : lines[i], ink, at.Width);
        }
    }

    private static bool IsWarned(PanelFacts tool) => tool.More == 0 || tool.Dress?.StartsWith('!') == true;

    private static string Shortly(PanelFacts tool) => tool.Dress ?? (tool.More is { } left ? MoreTodayShort(left) : "");

    // dressing comes long before the limit, but for one that has done enough
    private static string Today(PanelFacts tool) =>
        string.Join(
            "; ",
            new[] { tool.More == 0 ? MoreToday(0) : null, tool.Dress }
                .OfType<string>()
                .DefaultIfEmpty(tool.More is { } left ? MoreToday(left) : "")
        );

    private static string MoreToday(int left) =>
        left switch
        {
            0 => "! enough for today",
            >= 200 => "",
            _ => $"{left} more before it is near its limit",
        };

    private static string MoreTodayShort(int left) => left is 0 or >= 200 ? MoreToday(left) : $"{left} more";
}
