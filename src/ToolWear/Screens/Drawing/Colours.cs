using Terminal.Gui.Drawing;
using ToolWear.Pens;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ToolWear.Screens.Drawing;

/// <summary>What inks look like on a terminal: its own fore- and background, and few of its sixteen colours.</summary>
/// <param name="plain">True for no colour at all: bold, underlined and reversed only.</param>
internal sealed class Colours(bool plain)
{
    /// <summary>The look of an ink.</summary>
    /// <param name="ink">The ink.</param>
    /// <returns>Colours and style.</returns>
    public Attribute Of(Ink ink) =>
        ink switch
        {
            Ink.Quiet => Styled(TextStyle.Faint),
            Ink.Strong => Styled(TextStyle.Bold),
            Ink.Title => Styled(TextStyle.Reverse),
            Ink.Chosen => Styled(TextStyle.Reverse | TextStyle.Bold),
            Ink.Key => Coloured(ColorName16.Cyan, TextStyle.Bold),
            Ink.Warn => Coloured(ColorName16.Yellow, TextStyle.Bold),
            Ink.Done => Coloured(ColorName16.Green, TextStyle.None),
            Ink.Typed => Styled(TextStyle.Underline),
            _ => Styled(TextStyle.None),
        };

    private Attribute Coloured(ColorName16 colour, TextStyle style) =>
        plain ? Styled(style) : new Attribute(new Color(colour), Color.None, style);

    private static Attribute Styled(TextStyle style) => new(Color.None, Color.None, style);
}
