using System.Diagnostics;
using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Running;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The screens without a terminal: keys in, text out. Counts the keys it presses.</summary>
internal sealed class Evenings : IEvening
{
    private readonly IApplication app;
    private readonly SessionToken token;
    private readonly Bench bench;
    private readonly Sitting sitting;

    public Evenings(TestSite site, string? today = null, int width = 80, int height = 24)
    {
        using StringWriter nothing = new();
        Site world = new(
            nothing,
            nothing,
            site.Clock,
            new Storage.Disks.RealDisk(),
            () => new string('0', 32),
            site.Store,
            site.Folder
        );
        bench = Bench.ToWrite(world, site.Store);
        app = Application.Create(new VirtualTimeProvider());
        app.Init(DriverRegistry.Names.ANSI);
        app.Driver!.SetScreenSize(width, height);
        DateOnly? day = today is null ? null : DateOnly.Parse(today, null);
        sitting = new Sitting(world, bench, day, act => app.Invoke(act));
        Host = new Host(sitting, new Colours(plain: true), hasBraille: true, ScreenList.All);
        app.Keyboard.KeyDown += (_, key) => key.Handled = Host.Take(key);
        token = app.Begin(Host)!;
        app.LayoutAndDraw(true);
    }

    public Host Host { get; }

    public Sitting Sitting => sitting;

    /// <summary>Columns and rows.</summary>
    public (int Width, int Height) Size => (app.Driver!.Cols, app.Driver.Rows);

    /// <summary>How many keys were pressed so far.</summary>
    public int Pressed { get; private set; }

    /// <summary>The screen as text.</summary>
    public string Text
    {
        get
        {
            app.LayoutAndDraw(true);
            return string.Concat(Enumerable.Range(0, app.Driver!.Rows).Select(row => Line(row) + "\n"));
        }
    }

    /// <summary>Presses keys by their names: "h", "Enter", "Down".</summary>
    public void Press(params string[] names)
    {
        foreach (string name in names)
        {
            Pressed++;
            app.InjectKey(KeyOf(name));
        }

        app.LayoutAndDraw(true);
    }

    /// <summary>Types a text, a key a character.</summary>
    public void Type(string text) => Press([.. text.Select(each => each == ' ' ? "Space" : each.ToString())]);

    /// <summary>Changes the size of the terminal.</summary>
    public void Resize(int width, int height)
    {
        app.Driver!.SetScreenSize(width, height);
        app.LayoutAndDraw(true);
    }

    /// <summary>Waits until the forecasts of the shop as it is now are there.</summary>
    public void WaitForForecasts() =>
        WaitFor(() => sitting.Forecasts is not null && !sitting.Forecaster.IsBehind, "the forecasts");

    /// <summary>Waits until all that the screen shows is there; tallying and measuring wait for nothing.</summary>
    public void WaitForAll()
    {
        if (Host.Current.Name is not (ScreenName.Hammer or ScreenName.Closing) && Host.Current.Line is null)
        {
            WaitForForecasts();
        }

        // what is worked out may be asked for only when the screen is drawn
        app.LayoutAndDraw(true);
        WaitForPlans();
        WaitFor(
            () => !sitting.Trials.IsBehind && !sitting.Kept.IsBehind && !sitting.Charts.IsBehind,
            "what was asked for"
        );
    }

    /// <summary>Waits until forge lists and costs that were asked for are there.</summary>
    public void WaitForPlans() =>
        WaitFor(
            () =>
                !sitting.Plans.IsBehind
                && !sitting.Supposed.IsBehind
                && !sitting.Costs.IsBehind
                && !sitting.Years.IsBehind
                && !sitting.Forecaster.IsBehind,
            "forge list and costs"
        );

    private void WaitFor(Func<bool> isThere, string what)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!isThere())
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), $"{what} did not come");
            app.TimedEvents!.RunTimers();
            Thread.Sleep(5);
        }

        app.LayoutAndDraw(true);
    }

    public void Dispose()
    {
        app.End(token);
        Host.Dispose();
        sitting.Dispose();
        app.Dispose();
        bench.Dispose();
    }

    /// <summary>Clicks on a place of the screen.</summary>
    public void Click(int column, int row)
    {
        app.InjectSequence(InputInjectionExtensions.LeftButtonClick(new Point(column, row)));
        app.LayoutAndDraw(true);
    }

    /// <summary>Clicks on a text of the screen, the first that stands there.</summary>
    public void Click(string text)
    {
        string[] lines = Text.Split('\n');
        int row = Array.FindIndex(lines, line => line.Contains(text, StringComparison.Ordinal));
        Assert.True(row >= 0, $"{text} stands nowhere:\n{Text}");
        Click(lines[row].IndexOf(text, StringComparison.Ordinal), row);
    }

    /// <summary>Turns the wheel by a notch over a place of the screen.</summary>
    public void Wheel(bool down, int column, int row)
    {
        MouseFlags flags = down ? MouseFlags.WheeledDown : MouseFlags.WheeledUp;
        app.InjectMouse(new Mouse { Flags = flags, ScreenPosition = new Point(column, row) });
        app.LayoutAndDraw(true);
    }

    /// <summary>Pastes a text as a terminal hands it over.</summary>
    public void Paste(string text)
    {
        app.Driver!.GetInputProcessor().RaisePasteEvent(text);
        app.LayoutAndDraw(true);
    }

    // a line that is typed shows its cursor, as the terminal does
    private string Line(int row)
    {
        string[] cells =
        [
            .. Enumerable.Range(0, app.Driver!.Cols).Select(column => app.Driver.Contents![row, column].Grapheme),
        ];
        if (Host.MostFocused?.Cursor is { Position: { } at } && at.Y == row && cells[at.X] == " ")
        {
            cells[at.X] = "_";
        }

        return string.Concat(cells).TrimEnd();
    }

    /// <summary>The key of a name: "h", "Enter", "F5".</summary>
    public static Key KeyOf(string name) =>
        name switch
        {
            "Enter" => Key.Enter,
            "Esc" => Key.Esc,
            "Space" => Key.Space,
            "Backspace" => Key.Backspace,
            "Up" => Key.CursorUp,
            "Down" => Key.CursorDown,
            "PageUp" => Key.PageUp,
            "PageDown" => Key.PageDown,
            "Left" => Key.CursorLeft,
            "Right" => Key.CursorRight,
            "Home" => Key.Home,
            "End" => Key.End,
            "Insert" => Key.InsertChar,
            "Delete" => Key.Delete,
            "Tab" => Key.Tab,
            _ when name.Length > 1 && name[0] == 'F' => Key.TryParse(name, out Key? key)
                ? key
                : throw new ArgumentException(name, nameof(name)),
            "Ctrl+C" => Key.C.WithCtrl,
            _ => new Key(name[0]),
        };
}
