using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using ToolWear.Ordeals.Processes;
using ToolWear.Testing.Terminals;

namespace ToolWear.Ordeals.Writers;

/// <summary>The program's screens on a terminal, at the hammer; killed ones are opened again.</summary>
internal sealed class Window : IDisposable
{
    private const char Ink = '█';
    private const int HalfWidth = 40;
    private const int Dots = 5;
    private const int DotWidth = 2;
    private const int PatienceMs = 20_000;

    // three dots wide, five high, read from the top
    private static readonly string[] Digits =
    [
        "#### ## ## ####",
        " # ##  #  # ###",
        "###  #####  ###",
        "###  # ##  ####",
        "# ## ####  #  #",
        "####  ###  ####",
        "####  #### ####",
        "###  #  # #  # ",
        "#### ##### ####",
        "#### ####  ####",
    ];

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
        Open();
    }

    /// <summary>What the window shows.</summary>
    public string Text => _terminal.Text;

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
    /// <returns>How many heats of the tool the window shows then; as before where no more came.</returns>
    public int Heat(bool isKilled)
    {
        int before = Look(_tile) ?? throw new InvalidOperationException(Text);
        _terminal.Send(_tile[..1]);
        if (isKilled)
        {
            Kill();
            Open();
        }

        WaitFor(_tile, before + 1, isKilled ? PatienceMs / 20 : PatienceMs);
        return Look(_tile) ?? before;
    }

    /// <summary>Presses the key that takes the last thing recorded here back.</summary>
    public void Undo() => _terminal.Send("\x7f");

    /// <summary>How many heats of a tool the window shows.</summary>
    /// <param name="tile">The tool's key and mark.</param>
    /// <returns>The number; null while it is being drawn.</returns>
    public int? Look(string tile)
    {
        string[] lines = _terminal.Text.Split('\n');
        for (int i = 0; i + Dots < lines.Length; i++)
        {
            int at = (lines[i] + " ").IndexOf(tile + " ", StringComparison.Ordinal);
            if (at is 0 or HalfWidth)
            {
                return Number([.. lines.Skip(i + 1).Take(Dots).Select(line => Half(line, at).PadRight(HalfWidth))]);
            }
        }

        return null;
    }

    /// <summary>Waits until a tool has so many heats.</summary>
    /// <param name="tile">Its key and mark.</param>
    /// <param name="number">How many.</param>
    /// <param name="patienceMs">How long at most.</param>
    /// <returns>Whether they came.</returns>
    public bool WaitFor(string tile, int number, int patienceMs)
    {
        long end = Environment.TickCount64 + patienceMs;
        while (Look(tile) != number)
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

    // a dot of a figure is two columns wide and one row high, and one dot parts two digits
    private static int? Number(string[] lines)
    {
        string number = "";
        for (int at = 2; at + (Dots * DotWidth) < HalfWidth; at += 4 * DotWidth)
        {
            string dots = string.Concat(
                lines.SelectMany(line => new[] { line[at], line[at + DotWidth], line[at + (2 * DotWidth)] })
            );
            if (string.IsNullOrWhiteSpace(dots))
            {
                break;
            }

            number += Array.IndexOf(Digits, dots.Replace(Ink, '#'));
        }

        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int read) ? read : null;
    }

    private static string Half(string line, int at) =>
        line.Length <= at ? "" : line[at..Math.Min(line.Length, at + HalfWidth)].TrimEnd();

    [MemberNotNull(nameof(_terminal))]
    private void Open()
    {
        (string program, string[] line) = Slowed(_delayMs, ["--store", _store]);
        _terminal = new PseudoTerminal(program, line, new Dictionary<string, string?> { ["TERM"] = "xterm" }, _folder);
        _terminal.WaitFor("Verdict");
        _terminal.Send("h");
        _terminal.WaitFor("1-9 heat");
        long end = Environment.TickCount64 + PatienceMs;
        while (Look(_tile) is null && Environment.TickCount64 < end)
        {
            Thread.Sleep(5);
        }
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
