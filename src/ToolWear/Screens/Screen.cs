using System.Collections.Immutable;
using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens;

/// <summary>One screen: it paints a picture and does what the table of keys says; the host shows it.</summary>
/// <param name="host">Where it is shown.</param>
internal abstract class Screen(Host host)
{
    private const int MostTries = 3;

    /// <summary>Its name in the table of keys.</summary>
    public abstract ScreenName Name { get; }

    /// <summary>What stands over it.</summary>
    public abstract string Heading { get; }

    /// <summary>Where one is in its list.</summary>
    public ListPlace List { get; } = new();

    /// <summary>The line that is being typed; null where keys are keys.</summary>
    public virtual TypedLine? Line => null;

    /// <summary>Where it is shown.</summary>
    protected Host Host => host;

    /// <summary>The sitting.</summary>
    protected Sitting Sitting => Host.Sitting;

    /// <summary>The rows between title and foot when it was drawn last.</summary>
    protected int Room { get; private set; } = 20;

    /// <summary>How many rows of its list can be chosen now; none while something else is asked.</summary>
    protected virtual int Count => 0;

    /// <summary>Its keys as they are now.</summary>
    public virtual IEnumerable<KeyRow> KeyRows => KeyTable.Of(Name);

    /// <summary>Whether what a key needs is there.</summary>
    /// <param name="need">What it needs.</param>
    /// <returns>True where it is.</returns>
    public virtual bool Has(Need need) =>
        need switch
        {
            Need.Nothing => true,
            Need.Row => Count > 0,
            Need.Choice => Count > 1,
            Need.MorePages => Count > List.Room,
            Need.Typing => Line is not null,
            Need.Recorded => Sitting.CanTakeBack && Line is not { IsEmptied: true },
            Need.Tools => !Sitting.Shop.Tools.IsEmpty,
            Need.Pattern => !Sitting.Shop.Patterns.IsEmpty,
            _ => false,
        };

    /// <summary>What the foot says of a key now.</summary>
    /// <param name="row">The key.</param>
    /// <returns>The words of its row, or better ones while something is typed or done.</returns>
    public virtual string WordsOf(KeyRow row) => row.Words;

    /// <summary>The screen comes up.</summary>
    public virtual void Open() { }

    /// <summary>Does what a key of its own says: moves in the list, goes to another screen or home.</summary>
    /// <param name="act">What to do.</param>
    /// <param name="which">Which of the row's keys it was, from 0.</param>
    public virtual void Do(Act act, int which)
    {
        if (act is Act.Move or Act.Page)
        {
            List.Move(act, which, Count);
            Moved();
        }
        else if (act != Act.Enter)
        {
            Host.Go(act);
        }
    }

    /// <summary>Another row was chosen, by a key or by the mouse.</summary>
    public virtual void Moved() { }

    /// <summary>Goes a step back that recorded nothing.</summary>
    /// <returns>True where the last step was one.</returns>
    public virtual bool StepBack() => false;

    /// <summary>After something recorded was taken back.</summary>
    /// <param name="entries">What was taken back; never empty.</param>
    public virtual void TakenBack(ImmutableArray<Core.Ledger.Entered> entries) { }

    /// <summary>What can be taken back though it was recorded before this sitting.</summary>
    /// <returns>Entries of one tally; none where there are none.</returns>
    public virtual ImmutableArray<Core.Ledger.Entered> LastTally() => [];

    /// <summary>Draws what stands between title and foot.</summary>
    /// <param name="body">Where to.</param>
    public abstract void Compose(Picture body);

    /// <summary>The whole screen, title and foot included.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <returns>The picture.</returns>
    public Picture Whole(int width, int height)
    {
        IReadOnlyList<ImmutableArray<KeyRow>> foot = ScreenFrame.Foot(this, width, height);
        Picture body = Body(width, height, foot.Count);
        for (int i = 0; i < MostTries; i++)
        {
            // how long the body is shows only when it is drawn, and whether pages can be turned hangs on that
            IReadOnlyList<ImmutableArray<KeyRow>> after = ScreenFrame.Foot(this, width, height);
            bool isSettled = after.Count == foot.Count;
            foot = isSettled || i < MostTries - 1 ? after : foot;
            if (isSettled)
            {
                break;
            }

            body = Body(width, height, foot.Count);
        }

        return ScreenFrame.Around(this, Sitting, body, foot, height);
    }

    private Picture Body(int width, int height, int foot)
    {
        Room = ScreenFrame.BodyRows(Sitting.Said.Sentence, foot, width, height);
        Picture body = new(width, Room);
        Compose(body);
        return body;
    }
}
