using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Guided;

/// <summary>A screen on which things can be entered question by question; else it shows a list.</summary>
/// <param name="host">Where it is shown.</param>
internal abstract class GuidedScreen(Host host) : Screen(host)
{
    /// <inheritdoc />
    public sealed override string Heading => Entry?.Heading ?? ListHeading;

    /// <inheritdoc />
    public override TypedLine? Line => Entry?.Guided.Line;

    /// <summary>What is being entered; null where nothing is.</summary>
    protected GuidedEntry? Entry { get; private set; }

    /// <summary>What stands over the list.</summary>
    protected abstract string ListHeading { get; }

    /// <inheritdoc />
    public override void Open() => Entry = null;

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Recorded => Entry?.Guided.At > 0 || base.Has(need),
            Need.Choice => Entry?.Guided.HasChoice ?? base.Has(need),
            Need.Row => Entry is not null || base.Has(need),
            Need.MorePages => Entry is null && base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        Entry is null ? base.WordsOf(row)
        : row.Act == Act.TakeBack && Entry.Guided.At > 0 ? KeyWords.OneBack
        : KeyWords.GuidedKey(row, base.WordsOf(row));

    /// <inheritdoc />
    public sealed override void Do(Act act, int which)
    {
        if (Entry is not { } entry)
        {
            DoInList(act, which);
            return;
        }

        switch (act)
        {
            case Act.Move:
                entry.Guided.Choose(which == 0 ? -1 : 1);
                break;
            case Act.Enter when entry.Next():
                Take(entry);
                break;
            case Act.Back:
                Entry = null;
                Cancelled();
                break;
            default:
                break;
        }
    }

    /// <inheritdoc />
    public override bool StepBack() => Entry?.Guided.Back() == true;

    /// <inheritdoc />
    public sealed override void Compose(Picture body)
    {
        if (Entry is { } entry)
        {
            entry.Draw(body);
        }
        else
        {
            ComposeList(body);
        }
    }

    /// <summary>Begins to enter something.</summary>
    /// <param name="entry">What.</param>
    protected void Begin(GuidedEntry entry) => Entry = entry;

    /// <summary>Does what a key says while nothing is being entered.</summary>
    /// <param name="act">What to do.</param>
    /// <param name="which">Which of the row's keys it was, from 0.</param>
    protected virtual void DoInList(Act act, int which) => base.Do(act, which);

    /// <summary>Draws the list.</summary>
    /// <param name="body">Where to.</param>
    protected abstract void ComposeList(Picture body);

    /// <summary>Goes on after an entry was given up.</summary>
    protected virtual void Cancelled() { }

    /// <summary>Goes on after something was entered.</summary>
    /// <param name="entered">What.</param>
    protected abstract void Entered(GuidedEntry entered);

    private void Take(GuidedEntry entry)
    {
        AnswersRead read = new(entry.Guided);
        bool isTaken = entry.Take(read, Sitting);
        if (read.Refusal is { } wrong)
        {
            entry.Guided.Go(wrong.At);
            Sitting.Say(wrong.Why, Ink.Warn);
        }
        else if (isTaken)
        {
            Entry = null;
            Entered(entry);
        }
        else
        {
            // the last answer is offered: what is typed next takes its place
            entry.Guided.Go(entry.Guided.At);
        }
    }
}
