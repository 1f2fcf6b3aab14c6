namespace ToolWear.Doors;

/// <summary>The terminal that the screens would be drawn on, handed in like the rest of the world.</summary>
/// <param name="IsThere">Whether standard input and output both are a terminal.</param>
/// <param name="Name">What TERM says; empty where it says nothing.</param>
/// <param name="HasManyColours">Whether COLORTERM promises more than sixteen colours.</param>
/// <param name="WantsNoColour">Whether NO_COLOR is set and not empty.</param>
/// <param name="WriteRaw">Writes bytes to the terminal past everything else.</param>
/// <param name="ExitNow">Ends the process with a code, where it cannot end by itself.</param>
public sealed record Tty(
    bool IsThere,
    string Name,
    bool HasManyColours,
    bool WantsNoColour,
    Action<ReadOnlyMemory<byte>> WriteRaw,
    Action<int> ExitNow
)
{
    /// <summary>Whether screens can be drawn on it.</summary>
    public bool CanDraw => IsThere && (OperatingSystem.IsWindows() || Name is not ("" or "dumb"));

    /// <summary>Whether its font can be trusted with braille; the console of the kernel cannot.</summary>
    public bool HasBraille => Name is not ("linux" or "vt100" or "vt220");

    /// <summary>Leaves the alternate screen, stops mouse reports, brings the cursor back, in that order.</summary>
    public void Restore()
    {
        try
        {
            WriteRaw("\e[?1003l\e[?1002l\e[?1000l\e[?1006l\e[?1015l\e[?2004l\e[<u\e[0m\e[?1049l\e[?25h"u8.ToArray());
        }
        catch (IOException)
        {
            // the window is gone: nobody is there to see it
        }
    }
}
