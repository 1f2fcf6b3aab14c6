using Terminal.Gui.Input;

namespace ToolWear.Screens;

/// <summary>A key as the table of keys names it.</summary>
/// <param name="Name">Its name: "h", "Enter", "PageUp"; letters small, whatever Caps Lock says.</param>
/// <param name="Typed">The text it types; empty where it types none.</param>
internal readonly record struct KeyPress(string Name, string Typed)
{
    private static readonly (Key Key, string Name)[] Named =
    [
        (Key.Enter, "Enter"),
        (Key.Esc, "Esc"),
        (Key.Backspace, "Backspace"),
        (Key.Delete, "Delete"),
        (Key.CursorUp, "Up"),
        (Key.CursorDown, "Down"),
        (Key.CursorLeft, "Left"),
        (Key.CursorRight, "Right"),
        (Key.Home, "Home"),
        (Key.End, "End"),
        (Key.PageUp, "PageUp"),
        (Key.PageDown, "PageDown"),
        (Key.F1, "F1"),
        (Key.F2, "F2"),
        (Key.F3, "F3"),
        (Key.F4, "F4"),
        (Key.F5, "F5"),
        (Key.F6, "F6"),
        (Key.F7, "F7"),
        (Key.F8, "F8"),
        (Key.F9, "F9"),
        (Key.F10, "F10"),
        (Key.F11, "F11"),
        (Key.F12, "F12"),
    ];

    /// <summary>Names a key.</summary>
    /// <param name="key">The key as the library has it.</param>
    /// <returns>The press; the default where the program has no use for it.</returns>
    public static KeyPress Of(Key key)
    {
        if (key == Key.C.WithCtrl)
        {
            return new("Ctrl+C", "");
        }

        foreach ((Key known, string name) in Named)
        {
            if (key.NoShift == known)
            {
                return new(name, "");
            }
        }

        string typed = key.AsGrapheme;
        return typed.Length == 0 || char.IsControl(typed[0]) ? default
            : typed == " " ? new("Space", " ")
            : new(typed.ToLowerInvariant(), typed);
    }
}
