using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ToolTable;

/// <summary>The table of the tools that are there.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class ToolTableScreen(Host host) : Screen(host)
{
    private readonly SheetLine line = new([
        Asked.Mark,
        Asked.Form,
        Asked.Eye,
        Asked.Place,
        Asked.Steel,
        Asked.Size,
        Asked.Scrap,
    ]);
    private readonly List<ToolSheet> rows = [];
    private bool wasAsked;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ToolTable;

    /// <inheritdoc />
    public override string Heading => Words.TableHeading;

    /// <inheritdoc />
    public override TypedLine Line => line.Line;

    /// <inheritdoc />
    public override void Open()
    {
        rows.Clear();
        line.Begin(ToolSheet.Empty.With(Asked.Form, "drift"));
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
    public override void TakenBack(ImmutableArray<Entered> entries)
    {
        if (rows.Count > 0)
        {
            line.Begin(rows[^1]);
            rows.RemoveAt(rows.Count - 1);
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) => ToolTableText.Draw(body, rows, line);

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
            rows.Add(line.Sheet);
            wasAsked = false;
            Sitting.Say(Words.ToolEntered(line.Sheet[Asked.Mark], rows.Count), Ink.Done);
            line.Begin(line.Sheet.CarriedDown());
        }
    }
}
