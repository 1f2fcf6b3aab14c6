using System.Globalization;
using System.Text;
using ToolWear.Ordeals.Processes;
using ToolWear.Testing.Terminals;

namespace ToolWear.Ordeals.Writers;

/// <summary>The program's screens on a terminal, at the hammer; killed ones are opened again.</summary>
internal sealed class Window : IDisposable
{
    private const char Ink = '█';
    private const int HalfWidth = 40;
    private const int PatienceMs = 20_000;

    private readonly string _folder;
    private readonly string _store;
    private readonly string _tile;
    private readonly int _delayMs;
    private PseudoTerminal _terminal;

    /// <summary>Opens a window.</summary>
    /// <param name="folder">The current folder.</param>
    /// <param name="store">The store; a session is open with the tool in it.</param>
    /// <param name="tile">The key and the mark of its tool, as they stand over the tool's heats.</param>
    /// <param name="delayMs">How long each sync takes longer than it does.</param>
    public Window(string folder, string store, string tile, int delayMs)
    {
        (_folder, _store, _tile, _delayMs) = (folder, store, tile, delayMs);
        _terminal = Open();
    }

    /// <summary>The large figure under a tool.</summary>
    public readonly record struct Seen(string Figure);

    /// <summary>A program's command line where each sync takes longer.</summary>
    /// <param name="delayMs">How much longer, 0 for not at all.</param>
    /// <param name="line">The command line.</param>
    /// <returns>What to start.</returns>
    public static (string Program, string[] Line) Slowed(int delayMs, string[] line) =>
        delayMs == 0
            ? (Programs.ToolWear, line)
            : (
                "/usr/bin/strace",
                [
                    "-f",
                    "-qq",
                    "-o",
                    "/dev/null",
                    "-e",
                    "trace=fsync,fdatasync",
                    "-e",
                    string.Create(CultureInfo.InvariantCulture, $"inject=fsync,fdatasync:delay_exit={delayMs}ms"),
                    "--",
                    Programs.ToolWear,
                    .. line,
                ]
            );

    /// <summary>Presses the key of the window's tool once.</summary>
    /// <param name="isKilled">Whether the window is killed right after, and opened again.</param>
    /// <returns>What was wrong, or null: the window shows one heat more.</returns>
    public string? Heat(bool isKilled)
    {
        Seen before = Look(_tile);
        _terminal.Send(_tile[..1]);
        if (isKilled)
        {
            Kill();
            _terminal = Open();
            return null;
        }

        return WaitForOther(_tile, before, PatienceMs) ? null : $"{_tile}: no heat more is shown:\n{_terminal.Text}";
    }

    /// <summary>The figure of a tool.</summary>
    /// <param name="tile">Its key and mark.</param>
    /// <returns>The figure as it is drawn.</returns>
    public Seen Look(string tile)
    {
        string[] lines = _terminal.Text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            int at = (lines[i] + " ").IndexOf(tile + " ", StringComparison.Ordinal);
            if (at is 0 or HalfWidth)
            {
                StringBuilder figure = new();
                for (int j = i + 1; j < lines.Length && Half(lines[j], at).Trim(' ', Ink).Length == 0; j++)
                {
                    figure.AppendLine(Half(lines[j], at));
                }

                return new Seen(figure.ToString());
            }
        }

        return new Seen("");
    }

    /// <summary>Waits until a figure is another.</summary>
    /// <param name="tile">Whose.</param>
    /// <param name="before">What it was.</param>
    /// <param name="patienceMs">How long at most.</param>
    /// <returns>Whether it came.</returns>
    public bool WaitForOther(string tile, Seen before, int patienceMs)
    {
        long end = Environment.TickCount64 + patienceMs;
        while (Look(tile) is var seen && (seen == before || !seen.Figure.Contains(Ink, StringComparison.Ordinal)))
        {
            if (Environment.TickCount64 > end)
            {
                return false;
            }

            Thread.Sleep(5);
        }

        return true;
    }

    public void Dispose()
    {
        Kill();
    }

    private static string Half(string line, int at) =>
        line.Length <= at ? "" : line[at..Math.Min(line.Length, at + HalfWidth)].TrimEnd();

    private PseudoTerminal Open()
    {
        (string program, string[] line) = Slowed(_delayMs, ["--store", _store]);
        PseudoTerminal terminal = new(program, line, new Dictionary<string, string?> { ["TERM"] = "xterm" }, _folder);
        terminal.WaitFor("Verdict");
        terminal.Send("h");
        terminal.WaitFor("1-9 heat");
        return terminal;
    }

    // under strace the program is its child, and outlives it
    private void Kill()
    {
        string children = string.Create(
            CultureInfo.InvariantCulture,
            $"/proc/{_terminal.Pid}/task/{_terminal.Pid}/children"
        );
        if (_delayMs > 0 && File.Exists(children))
        {
            foreach (string child in File.ReadAllText(children).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                using System.Diagnostics.Process process = System.Diagnostics.Process.GetProcessById(
                    int.Parse(child, CultureInfo.InvariantCulture)
                );
                process.Kill();
            }
        }

        _terminal.Dispose();
    }
}
