using ToolWear.Screens.Drawing;
using ToolWear.Screens.ToolTable;

namespace ToolWear.Screens.NewTool;

/// <summary>One tool, question by question.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class NewToolScreen(Host host)
    : SheetScreen(
        host,
        [
            Asked.Mark,
            Asked.Form,
            Asked.Eye,
            Asked.Place,
            Asked.Steel,
            Asked.Start,
            Asked.Before,
            Asked.Size,
            Asked.Scrap,
        ]
    )
{
    /// <inheritdoc />
    public override ScreenName Name => ScreenName.NewTool;

    /// <inheritdoc />
    public override string Heading => Words.NewToolHeading;

    /// <inheritdoc />
    public override void Open() => Begin(ToolSheet.Empty.With(Asked.Form, "drift").With(Asked.Start, "new"));

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        int y = 0;
        for (int i = 0; i < Sheet.Questions.Length && y < body.Height; i++)
        {
            Asked asked = Sheet.Questions[i];
            bool isOpen = i == Sheet.At;
            body.Put(0, y, isOpen ? ">" : "", Ink.Strong);
            body.Put(2, y, Words.Column(asked), isOpen ? Ink.Strong : Ink.Quiet, 16);
            if (isOpen)
            {
                body.PutTyped(20, y++, Sheet.Line.Text);
            }
            else
            {
                body.Put(20, y++, Sheet.Sheet[asked]);
            }
        }

        foreach (
            string text in Picture.Wrap(
                $"{Words.Question(Sheet.Asked)}\n{Words.StruckEndCaution}",
                Math.Max(10, body.Width)
            )
        )
        {
            body.Put(0, ++y, text, Ink.Quiet);
        }
    }

    /// <inheritdoc />
    protected override void Entered(ToolSheet entered)
    {
        Host.Go(Host.Home);
        Sitting.Say(Words.ToolEntered(entered[Asked.Mark], 1), Ink.Done);
    }
}
