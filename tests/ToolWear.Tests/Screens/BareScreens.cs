using System.Collections.Concurrent;
using System.Diagnostics;
using Terminal.Gui.Input;
using ToolWear.Doors;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Running;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The screens without a terminal and without the loop of the library: keys in, pictures out, many in a second.</summary>
internal sealed class BareScreens : IDisposable
{
    private readonly ConcurrentQueue<Action> waiting = new();
    private readonly Bench bench;

    public BareScreens(TestSite site, int width = 80, int height = 24, Tty? tty = null)
    {
        Site world = new(
            TextWriter.Null,
            TextWriter.Null,
            site.Clock,
            new Storage.Disks.RealDisk(),
            () => new string('0', 32),
            site.Store,
            site.Folder
        )
        {
            Tty = tty,
        };
        (Width, Height) = (width, height);
        bench = Bench.ToWrite(world, site.Store);
        Sitting = new Sitting(world, bench, null, waiting.Enqueue);
        Host = new Host(Sitting, new Colours(plain: true), hasBraille: true, ScreenList.All);
    }

    public Host Host { get; }

    public Sitting Sitting { get; }

    public int Width { get; set; }

    public int Height { get; set; }

    public Screen Current => Host.Current;

    /// <summary>The screen as it is drawn now.</summary>
    public Picture Drawn => Current.Whole(Width, Height).WithList();

    /// <summary>The screen as text.</summary>
    public string Text => Drawn.ToString();

    /// <summary>Presses keys one after another.</summary>
    public void Press(params string[] names)
    {
        foreach (string name in names)
        {
            Host.Take(Evenings.KeyOf(name));
        }
    }

    /// <summary>Types a text, a key a character.</summary>
    public void Type(string text) => Press([.. text.Select(each => each == ' ' ? "Space" : each.ToString())]);

    /// <summary>Waits until forecasts and all else that was asked for are there.</summary>
    public void Wait()
    {
        Pump(() => Sitting.Forecasts is null || Sitting.Forecaster.IsBehind);
        WaitForPages();
    }

    /// <summary>Waits until what pages asked for is there: plans, costs, trials, charts.</summary>
    public void WaitForPages() =>
        Pump(() =>
            Sitting.Plans.IsBehind
            || Sitting.Kept.IsBehind
            || Sitting.Supposed.IsBehind
            || Sitting.Costs.IsBehind
            || Sitting.Trials.IsBehind
            || Sitting.Years.IsBehind
            || Sitting.Charts.IsBehind
        );

    private void Pump(Func<bool> isBehind)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (isBehind())
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), "what was asked for did not come");
            if (waiting.TryDequeue(out Action? act))
            {
                act();
            }
            else
            {
                Thread.Sleep(2);
            }
        }
    }

    public void Dispose()
    {
        Host.Dispose();
        Sitting.Dispose();
        bench.Dispose();
    }
}
