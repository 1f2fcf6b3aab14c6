using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Guided;

/// <summary>The text of a guided entry: a row a question, and below what to type for the open one.</summary>
internal static class GuidedText
{
    private const int Answer = 20;

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="guided">The entry.</param>
    /// <param name="below">What stands below the meaning of the open question, empty for nothing.</param>
    /// <returns>The row behind it.</returns>
    public static int Draw(Picture body, GuidedLine guided, string below = "")
    {
        int y = 0;
        for (int i = 0; i < guided.Questions.Length; i++, y++)
        {
            bool isOpen = i == guided.At;
            body.Put(0, y, isOpen ? ">" : "", Ink.Strong);
            body.Put(2, y, guided.Questions[i].Name, isOpen ? Ink.Strong : Ink.Quiet, Answer - 4);
            if (isOpen)
            {
                body.PutTyped(Answer, y, guided.Line.Text);
            }
            else
            {
                body.Put(Answer, y, guided[i]);
            }
        }

        string text = guided.Questions[guided.At].Meaning + (below.Length > 0 ? "\n" + below : "");
        foreach (string line in Picture.Wrap(text, Math.Max(10, body.Width)))
        {
            body.Put(0, ++y, line, Ink.Quiet);
        }

        return y + 1;
    }
}
