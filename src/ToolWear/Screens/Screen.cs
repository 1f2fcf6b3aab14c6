using System.Collections.Immutable;
using Terminal.Gui.ViewBase;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens;

/// <summary>One screen: a view that paints a picture and does what the table of keys says.</summary>
public abstract class Screen : View
{
    private const int MostTries = 3;
    private readonly Colours colours;

    /// <summary>Makes the screen, not yet shown.</summary>
    /// <param name="host">Where it is shown.</param>
    protected Screen(Host host)
    {
        Host = host;
        colours = host.Colours;
    }

    /// <summary>Its name in the table of keys.</summary>
    public abstract ScreenName Name { get; }

    /// <summary>What stands over it.</summary>
    public abstract string Heading { get; }

    /// <summary>The line that is being typed; null where keys are keys.</summary>
    public virtual TypedLine? Line => null;

    /// <summary>Where it is shown.</summary>
    protected Host Host { get; }

    /// <summary>The sitting.</summary>
    protected Sitting Sitting => Host.Sitting;

    /// <summary>The rows between title and foot when it was drawn last.</summary>
    protected int Room { get; private set; } = 20;

    /// <summary>Its keys as they are now.</summary>
    public virtual IEnumerable<KeyRow> KeyRows => Keys.Of(Name);

    /// <summary>Whether what a key needs is there.</summary>
    /// <param name="need">What it needs.</param>
    /// <returns>True where it is.</returns>
    public virtual bool Has(Need need) =>
        need switch
        {
            Need.Nothing => true,
            Need.Typing => Line is not null,
            Need.Recorded => Sitting.CanTakeBack && Line is not { IsEmptied: true },
            Need.Tools => !Sitting.Shop.Tools.IsEmpty,
            Need.EmptyStore => Sitting.Shop.Ledger.IsEmpty,
            Need.Pattern => !Sitting.Shop.Patterns.IsEmpty,
            _ => false,
        };

    /// <summary>What the foot says of a key now.</summary>
    /// <param name="row">The key.</param>
    /// <returns>The words of its row, or better ones while something is typed or done.</returns>
    public virtual string WordsOf(KeyRow row) => row.Words;

    /// <summary>The screen comes up.</summary>
    public virtual void Open() { }

    /// <summary>Does what a key of its own says.</summary>
    /// <param name="act">What to do.</param>
    /// <param name="which">Which of the row's keys it was, from 0.</param>
    public abstract void Do(Act act, int which);

    /// <summary>Goes a step back that recorded nothing.</summary>
    /// <returns>True where the last step was one.</returns>
    public virtual bool StepBack() => false;

    /// <summary>After something recorded was taken back.</summary>
    /// <param name="entries">What was taken back; never empty.</param>
    public virtual void TakenBack(System.Collections.Immutable.ImmutableArray<Core.Ledger.Entered> entries) { }

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

    /// <inheritdoc />
    protected override bool OnDrawingContent(DrawContext? context)
    {
        Picture picture = Whole(Viewport.Width, Viewport.Height);
        for (int y = 0; y < picture.Height; y++)
        {
            for (int x = 0; x < picture.Width; x++)
            {
                Spot spot = picture[x, y];
                if (spot.Text.Length > 0)
                {
                    SetAttribute(colours.Of(spot.Ink));
                    AddStr(x, y, spot.Text);
                }
            }
        }

        return true;
    }
}
