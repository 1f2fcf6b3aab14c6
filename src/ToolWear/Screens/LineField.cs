using System.Drawing;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ToolWear.Screens;

/// <summary>The library's text field on the line of whichever screen is shown: cursor keys, selection and paste are its own.</summary>
internal sealed class LineField : TextField
{
    private readonly Colours colours;
    private TypedLine? line;
    private int offers;
    private bool isOurs;

    public LineField(Colours colours)
    {
        this.colours = colours;
        (Visible, Width, Height) = (false, 1, 1);
        // its menu would take keys that the table of keys knows nothing of
        MouseBindings.Clear(Command.Context);
        KeyBindings.Clear(Command.Context);
        TextChanged += (_, _) => Changed();
    }

    /// <summary>What to do after a paste.</summary>
    public Action? Edited { get; set; }

    /// <summary>Lets a key edit a line, where it is one for that.</summary>
    /// <returns>True where it was.</returns>
    public bool Take(TypedLine of, KeyPress press, Key key)
    {
        if (!of.Takes(press))
        {
            return false;
        }

        Bind(of);
        isOurs = true;
        NewKeyDownEvent(key);
        isOurs = false;
        of.Edited(Text);
        return true;
    }

    /// <summary>Shows a line where the picture has it.</summary>
    public void Show(TypedLine? of, (int Column, int Row, int Width)? at)
    {
        if (of is null || at is not { } place)
        {
            (line, Visible) = (null, false);
            return;
        }

        int cursor = ReferenceEquals(line, of) && Text == of.Text ? InsertionPoint : of.Text.Length;
        Rectangle frame = new(place.Column, place.Row, place.Width, 1);
        if (Frame != frame)
        {
            // what was scrolled out of a field that was narrower comes back
            (Frame, line) = (frame, null);
        }

        Bind(of);
        if (!of.IsOffered)
        {
            InsertionPoint = cursor;
        }

        Cursor = Cursor with { Position = Text.Length == 0 ? frame.Location : Cursor.Position };
        Visible = true;
        SetFocus();
    }

    /// <inheritdoc />
    protected override bool OnGettingAttributeForRole(in VisualRole role, ref Attribute currentAttribute)
    {
        currentAttribute = colours.Of(role is VisualRole.Active or VisualRole.Highlight ? Ink.Chosen : Ink.Typed);
        return true;
    }

    private void Bind(TypedLine of)
    {
        if (ReferenceEquals(line, of) && Text == of.Text && offers == of.Offers)
        {
            return;
        }

        (line, offers, isOurs) = (of, of.Offers, true);
        (Text, InsertionPoint) = (of.Text, 0);
        MoveEnd();
        if (of.IsOffered)
        {
            SelectAll();
        }

        isOurs = false;
    }

    private void Changed()
    {
        // a paste comes to the field and not to the table of keys
        if (!isOurs && line is { } pasted && pasted.Text != Text)
        {
            pasted.Edited(Text);
            Edited?.Invoke();
        }
    }
}
