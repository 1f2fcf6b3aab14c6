using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.ToolTable;

namespace ToolWear.Screens.NewTool;

/// <summary>One tool, question by question.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class NewToolScreen(Host host) : Screen(host)
{
    private readonly SheetLine line = new([
        Asked.Mark,
        Asked.Form,
        Asked.Eye,
        Asked.Place,
        Asked.Steel,
        Asked.Start,
        Asked.Before,
        Asked.Size,
        Asked.Scrap,
    ]);
    private bool wasAsked;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.NewTool;

    /// <inheritdoc />
    public override string Heading => Words.NewToolHeading;

    /// <inheritdoc />
    public override TypedLine Line => line.Line;

    /// <inheritdoc />
    public override void Open()
    {
        wasAsked = false;
        line.Begin(ToolSheet.Empty.With(Asked.Form, "drift").With(Asked.Start, "new"));
    }

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.Recorded ? line.At > 0 || base.Has(need) : base.Has(need);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move:
                line.Choose(which == 0 ? -1 : 1);
                break;
            case Act.Enter when line.Next():
                Record();
                break;
            case Act.Back:
                Host.Go(Host.Home);
                break;
            default:
                break;
        }
    }

    /// <inheritdoc />
    public override bool StepBack() => line.Back();

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        int y = 0;
        for (int i = 0; i < line.Questions.Length && y < body.Height; i++)
        {
            Asked asked = line.Questions[i];
            bool isOpen = i == line.At;
            body.Put(0, y, isOpen ? ">" : "", Ink.Strong);
            body.Put(2, y, Words.Column(asked), isOpen ? Ink.Strong : Ink.Quiet, 16);
            body.Put(20, y++, isOpen ? line.Line.Text + "_" : line.Sheet[asked], isOpen ? Ink.Typed : Ink.Plain);
        }

        foreach (
            string text in Picture.Wrap(
                $"{Words.Question(line.Asked)}\n{Words.StruckEndCaution}",
                Math.Max(10, body.Width)
            )
        )
        {
            body.Put(0, ++y, text, Ink.Quiet);
        }
    }

    private void Record()
    {
        if (!wasAsked && line.Sheet.IsDoubtful(Sitting.Units))
        {
            wasAsked = true;
            Sitting.Say(Words.LimitDoubtful, Ink.Warn);
            return;
        }

        ImmutableArray<LedgerEntry> entries = line.Sheet.Entries(
            Sitting.Units,
            Sitting.Today,
            out (Asked At, string Why)? refusal
        );
        if (refusal is { } wrong)
        {
            line.Go(wrong.At);
            Sitting.Say(wrong.Why, Ink.Warn);
        }
        else if (Sitting.Record(entries))
        {
            string mark = line.Sheet[Asked.Mark];
            Host.Go(Host.Home);
            Sitting.Say(Words.ToolEntered(mark, 1), Ink.Done);
        }
    }
}
