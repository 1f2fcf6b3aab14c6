using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens;

/// <summary>What to do after the screens close.</summary>
internal enum Afterwards
{
    /// <summary>Nothing: the program ends.</summary>
    Nothing,

    /// <summary>The demo is looked at, and then this shop again.</summary>
    Demo,
}

/// <summary>The one view that holds every screen, side by side, one of them visible; keys come in here.</summary>
[SuppressMessage(
    "Usage",
    "CA2213:Disposable fields should be disposed",
    Justification = "a view disposes of the views that were added to it"
)]
internal sealed class Host : Runnable
{
    private readonly Dictionary<ScreenName, Screen> screens = [];
    private readonly LineField field;
    private readonly ListTable list;
    private readonly Colours colours;
    private Picture picture = new(0, 0);

    /// <summary>Makes the screens and shows the first.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="colours">What inks look like.</param>
    /// <param name="hasBraille">Whether the font can be trusted with braille.</param>
    /// <param name="all">Makes every screen.</param>
    public Host(Sitting sitting, Colours colours, bool hasBraille, Func<Host, IEnumerable<Screen>> all)
    {
        Sitting = sitting;
        this.colours = colours;
        HasBraille = hasBraille;
        CanFocus = true;
        field = new LineField(colours) { Edited = Changed };
        list = new ListTable(colours) { Chosen = Moved };
        Add(list, field);
        Sitting.WhenFurther(Redraw);
        foreach (Screen screen in all(this))
        {
            screens.Add(screen.Name, screen);
        }

        Current = screens[ScreenName.ToolRack];
        Go(Home);
        if (sitting.Shop.OpenSession is { } open)
        {
            sitting.Say(StillOpen(open), Ink.Warn);
        }
    }

    /// <summary>The sitting.</summary>
    public Sitting Sitting { get; }

    /// <summary>Whether the font can be trusted with braille.</summary>
    public bool HasBraille { get; }

    /// <summary>The screen that is shown.</summary>
    public Screen Current { get; private set; }

    /// <summary>The screen that was shown before.</summary>
    public Screen? Before { get; private set; }

    /// <summary>The tool that the screens speak of, by its number; null for none.</summary>
    public long? ToolInHand { get; set; }

    /// <summary>The eye that the screens speak of, by its name; null for none.</summary>
    public string? EyeInHand { get; set; }

    /// <summary>What stands at the hammer.</summary>
    public Board Board { get; set; } = Board.Empty;

    /// <summary>The session that the board was made for, null while it is only being chosen.</summary>
    public string? BoardOf { get; private set; }

    /// <summary>The exit code that leaving comes to.</summary>
    public int ExitCode { get; private set; }

    /// <summary>What to do afterwards.</summary>
    public Afterwards Afterwards { get; private set; }

    /// <summary>Shows a screen.</summary>
    /// <param name="name">Which.</param>
    public void Go(ScreenName name)
    {
        Before = Current;
        Current = screens[name];
        Current.Open();
        WantForecasts();
        Redraw();
    }

    /// <summary>Shows the screen that a key leads to.</summary>
    /// <param name="act">What the key does.</param>
    public void Go(Act act) =>
        Go(
            act switch
            {
                Act.GoHammer => Sitting.Shop.OpenSession is null ? ScreenName.Choosing : ScreenName.Hammer,
                Act.GoMeasure => ScreenName.CaliperRound,
                Act.GoForge => ScreenName.ForgeList,
                Act.GoOrders => ScreenName.Orders,
                Act.GoCosts => ScreenName.Costs,
                Act.GoEyes => ScreenName.Eyes,
                Act.GoBars => ScreenName.StockRack,
                Act.GoYear => ScreenName.Year,
                Act.GoLosses => ScreenName.Losses,
                Act.GoTool => ScreenName.ToolPage,
                Act.GoHandOver => ScreenName.HandOver,
                Act.GoLoans => ScreenName.Loans,
                Act.GoStockTake => ScreenName.StockTake,
                Act.GoTrials => ScreenName.TrialPages,
                Act.GoLedger => ScreenName.LedgerPages,
                Act.GoShop => ScreenName.ShopPage,
                Act.GoNewTool => ScreenName.NewTool,
                Act.GoTable => ScreenName.ToolTable,
                Act.Import => ScreenName.Import,
                Act.GoPatterns => ScreenName.Patterns,
                _ => Home,
            }
        );

    /// <summary>The screen one comes home to: the rack, or the first start while there is no tool.</summary>
    public ScreenName Home => Sitting.Shop.Tools.IsEmpty ? ScreenName.FirstStart : ScreenName.ToolRack;

    /// <summary>Puts tools at the hammer.</summary>
    /// <param name="board">The board.</param>
    /// <param name="session">The session it is for, null while it is only being chosen.</param>
    public void Take(Board board, string? session)
    {
        Board = board;
        BoardOf = session;
    }

    /// <summary>Shows the screen before again, as it was.</summary>
    public void Return() => Return(Before?.Name ?? ScreenName.ToolRack);

    /// <summary>Shows a screen again, as it was.</summary>
    /// <param name="name">Which.</param>
    public void Return(ScreenName name)
    {
        Current = screens[name];
        Redraw();
    }

    /// <summary>Gives a screen.</summary>
    /// <param name="name">Which.</param>
    /// <returns>The screen.</returns>
    public Screen Find(ScreenName name) => screens[name];

    /// <summary>Closes the screens.</summary>
    /// <param name="afterwards">What to do then.</param>
    public void Leave(Afterwards afterwards)
    {
        Afterwards = afterwards;
        App?.RequestStop(this);
    }

    /// <summary>Takes a key. Every key ends here, so that the library's own bindings never act.</summary>
    /// <param name="key">The key.</param>
    /// <returns>True; false only for the key that suspends the program.</returns>
    public bool Take(Key key)
    {
        if (key == Key.Z.WithCtrl)
        {
            return false;
        }

        // a terminal sends Esc and a letter that follows at once as one key with Alt
        if (key.IsAlt)
        {
            Take(Key.Esc);
        }

        KeyPress press = KeyPress.Of(key.NoAlt);
        if (press.Name is not null && Current.Line is { } line && field.Take(line, press, key.NoAlt))
        {
            Changed();
        }
        else if (press.Name is not null)
        {
            Take(press);
            LeaveClosedSession();
            WantForecasts();
            Redraw();
        }

        return true;
    }

    /// <summary>Shows what other windows and commands have entered meanwhile.</summary>
    public void Look()
    {
        if (!Sitting.Look())
        {
            return;
        }

        LeaveClosedSession();
        WantForecasts();
        Redraw();
    }

    // the session that a screen is about can have been closed elsewhere
    private void LeaveClosedSession()
    {
        if (Current.Name is ScreenName.Hammer or ScreenName.Closing && Sitting.Shop.OpenSession is null)
        {
            Go(Home);
        }
    }

    /// <inheritdoc />
    protected override void OnSubViewLayout(LayoutEventArgs args)
    {
        base.OnSubViewLayout(args);
        picture = Current.Whole(Viewport.Width, Viewport.Height);
        list.Show(picture.List);
        list.Enabled = Current.Has(Need.Choice);
        field.Show(Current.Line, picture.Typed);
    }

    /// <inheritdoc />
    protected override bool OnDrawingContent(DrawContext? context)
    {
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

    /// <summary>A click on a key at the foot presses it; the wheel goes up and down where the arrows do.</summary>
    /// <inheritdoc />
    protected override bool OnMouseEvent(Mouse mouse)
    {
        (KeyRow Row, int Which)? pressed = mouse switch
        {
            { IsSingleClicked: true, Position: { } at } => ScreenFrame.KeyAt(Current, Viewport.Size, at),
            { IsWheel: true } => Current.KeyRows.FirstOrDefault(row => row.Act == Act.Move) is { } move
                ? (move, mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? 1 : 0)
                : null,
            _ => null,
        };
        if (pressed is not { } key)
        {
            return base.OnMouseEvent(mouse);
        }

        Press(key.Row, key.Which);
        Redraw();
        return true;
    }

    private void Take(KeyPress press)
    {
        KeyRow? row = Current.KeyRows.FirstOrDefault(each => IndexOf(each, press) >= 0);
        if (row is null)
        {
            return;
        }

        Press(row, IndexOf(row, press));
    }

    private void Press(KeyRow row, int which)
    {
        if (!Current.Has(row.Need))
        {
            bool isHeld = row.Act == Act.TakeBack && Current.Line is { IsEmptied: true };
            Sitting.Say(isHeld ? KeyWords.LineIsEmpty : KeyWords.WhyNot(row.Need), Ink.Warn);
            return;
        }

        Sitting.Say("");
        Do(row, which);
    }

    private static int IndexOf(KeyRow row, KeyPress press) => row.Names.IndexOf(press.Name, StringComparer.Ordinal);

    private void Do(KeyRow row, int which)
    {
        switch (row.Act)
        {
            case Act.Help when Current.Name != ScreenName.Help:
                Go(ScreenName.Help);
                break;
            case Act.TakeBack:
                TakeBack();
                break;
            case Act.Leave:
                ExitCode = row.Where is null ? 128 + 2 : 0;
                Leave(Afterwards.Nothing);
                break;
            default:
                Current.Do(row.Act, which);
                break;
        }
    }

    private void TakeBack()
    {
        if (Current.StepBack())
        {
            return;
        }

        ImmutableArray<Entered> entries = Sitting.CanTakeBack ? Sitting.TakeBack() : TakeBackTally();
        if (entries.IsEmpty)
        {
            return;
        }

        Sitting.Say(TakenBack(entries, Sitting.Units), Ink.Done);
        Current.TakenBack(entries);
    }

    // a heat or a head of an evening that ended in a crash can still be taken back
    private ImmutableArray<Entered> TakeBackTally()
    {
        ImmutableArray<Entered> last = Current.LastTally();
        return !last.IsEmpty && Sitting.TakeBack(last) ? last : [];
    }

    // a tally never waits: at the hammer the two cores belong to the keys
    private void WantForecasts()
    {
        if (Current.Name != ScreenName.Hammer)
        {
            Sitting.Forecaster.Want(Sitting.Shop);
        }
    }

    private void Moved()
    {
        Current.Moved();
        Changed();
    }

    private void Changed()
    {
        Sitting.Say("");
        Redraw();
    }

    private void Redraw()
    {
        SetNeedsLayout();
        SetNeedsDraw();
    }

    private static string StillOpen(Session open) =>
        $"Session {open.Name} is still open and nothing of it is lost: press h to go on with it.";

    private static string TakenBack(ImmutableArray<Entered> entries, LengthUnit units) =>
        $"Undone: {Tools(entries)}{EntryWords.Of(entries[0].What, units)}"
        + (entries.Length > 1 ? $" and {entries.Length - 1} more" : "");

    internal static string Tools(ImmutableArray<Entered> entries)
    {
        string marks = string.Join(", ", entries.SelectMany(each => each.What.Tools).Distinct().Take(4));
        return marks.Length == 0 ? "" : marks + ": ";
    }
}
