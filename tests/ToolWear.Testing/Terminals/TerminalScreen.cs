using System.Globalization;
using System.Text;

namespace ToolWear.Testing.Terminals;

/// <summary>
/// As much of a terminal as it takes to read what a program draws: text at places, and the modes that must be set back.
/// ECMA-48 for the sequences; the private modes are those of xterm.
/// </summary>
public sealed class TerminalScreen
{
    private const int Columns = 200;
    private const int Rows = 80;
    private static readonly HashSet<int> MouseModes = [1000, 1002, 1003, 1006, 1015];

    private readonly char[][] cells = [.. Enumerable.Range(0, Rows).Select(_ => Blank())];
    private readonly HashSet<int> modes = [];
    private readonly HashSet<string> styles = new(StringComparer.Ordinal);
    private readonly Decoder decoder = Encoding.UTF8.GetDecoder();
    private readonly StringBuilder sequence = new();
    private State state;
    private int row;
    private int column;
    private int settings;
    private int shownAt;
    private int leftAt;

    private enum State
    {
        Text,
        Escape,
        Control,
        Command,
    }

    /// <summary>Whether the other screen is shown, the one that leaves the shell's lines alone.</summary>
    public bool IsAlternate => modes.Contains(1049);

    /// <summary>Whether the cursor can be seen.</summary>
    public bool HasCursor { get; private set; } = true;

    /// <summary>Whether the mouse is reported.</summary>
    public bool ReportsMouse => modes.Overlaps(MouseModes);

    /// <summary>Whether the cursor was brought back after the other screen was left: before it, some terminals forget it.</summary>
    public bool HasCursorLast => shownAt > leftAt;

    /// <summary>The parameters of every SGR sequence so far: colours and styles.</summary>
    public IReadOnlySet<string> Styles => styles;

    /// <summary>Rows and columns that anything but a space was written to since it was cleared.</summary>
    public (int Rows, int Columns) Used { get; private set; }

    public void Clear()
    {
        foreach (char[] line in cells)
        {
            Array.Fill(line, ' ');
        }

        Used = (0, 0);
    }

    public void Take(ReadOnlySpan<byte> bytes)
    {
        char[] chars = new char[bytes.Length + 2];
        int count = decoder.GetChars(bytes, chars, flush: false);
        foreach (char each in chars.AsSpan(0, count))
        {
            Take(each);
        }
    }

    public override string ToString() => string.Join('\n', cells.Select(line => new string(line).TrimEnd())).TrimEnd();

    private static char[] Blank() => [.. Enumerable.Repeat(' ', Columns)];

    private void Take(char each)
    {
        switch (state)
        {
            case State.Text when each == '\e':
                state = State.Escape;
                break;
            case State.Text:
                Write(each);
                break;
            case State.Escape:
                sequence.Clear();
                state = each switch
                {
                    '[' => State.Control,
                    ']' or 'P' or '_' or '^' => State.Command,
                    _ => State.Text,
                };
                break;
            case State.Control when each is >= '@' and <= '~':
                state = State.Text;
                Obey(sequence.ToString(), each);
                break;
            case State.Command when each is '\a' or '\\':
                state = State.Text;
                break;
            default:
                sequence.Append(each);
                break;
        }
    }

    private void Write(char each)
    {
        switch (each)
        {
            case '\r':
                column = 0;
                break;
            case '\n':
                row = Math.Min(row + 1, Rows - 1);
                break;
            case '\b':
                column = Math.Max(0, column - 1);
                break;
            case >= ' ':
                if (row < Rows && column < Columns)
                {
                    cells[row][column] = each;
                    Used = each == ' ' ? Used : (Math.Max(Used.Rows, row + 1), Math.Max(Used.Columns, column + 1));
                }

                column++;
                break;
            default:
                break;
        }
    }

    private void Obey(string parameters, char command)
    {
        switch (command)
        {
            case 'H' or 'f':
                (row, column) = (Number(parameters, 0) - 1, Number(parameters, 1) - 1);
                break;
            case 'J' when parameters is "2" or "3":
                Clear();
                break;
            case 'm':
                foreach (string style in parameters.Split(';'))
                {
                    styles.Add(style);
                }

                break;
            case 'h' or 'l' when parameters.StartsWith('?'):
                foreach (string mode in parameters[1..].Split(';'))
                {
                    Set(int.Parse(mode, CultureInfo.InvariantCulture), command == 'h');
                }

                break;
            default:
                break;
        }
    }

    private void Set(int mode, bool isOn)
    {
        settings++;
        shownAt = mode == 25 && isOn ? settings : shownAt;
        leftAt = mode == 1049 && !isOn ? settings : leftAt;
        if (mode == 25)
        {
            HasCursor = isOn;
        }
        else if (isOn)
        {
            modes.Add(mode);
        }
        else
        {
            modes.Remove(mode);
        }
    }

    private static int Number(string parameters, int which) =>
        int.TryParse(
            parameters.Split(';').ElementAtOrDefault(which),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out int number
        )
        && number > 0
            ? number
            : 1;
}
