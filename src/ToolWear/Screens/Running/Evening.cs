using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using ToolWear.Demo;
using ToolWear.Doors;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Running;

/// <summary>Runs the screens on a terminal, and brings the terminal back whatever ends them.</summary>
internal static class Evening
{
    private const string NoTerminal =
        "the screens need a terminal for input and output (and TERM other than dumb); without one use the verbs: "
        + "rack, heats TOOL N, measure TOOL GAUGE SIZE, look-over TOOL FINDING, card TOOL; \"toolwear --help\" lists them all";

    /// <summary>Runs the screens on a store.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="path">The store.</param>
    /// <param name="day">The shop's day where it is not today's.</param>
    /// <returns>The exit code: 0, or 128 + n after signal n.</returns>
    /// <exception cref="RefusedException">There is no terminal to draw on.</exception>
    public static int Run(Site site, string path, DateOnly? day)
    {
        NeedTerminal(site);
        while (true)
        {
            (int code, Afterwards afterwards) = RunOnce(site, path, day);
            if (afterwards != Afterwards.Demo || code != 0)
            {
                return code;
            }

            code = RunDemo(site, day ?? site.Today);
            if (code != 0)
            {
                return code;
            }
        }
    }

    /// <summary>Runs the screens on a fresh demo in a private folder that goes at the end.</summary>
    /// <param name="site">The world around.</param>
    /// <param name="on">The day the demo is for.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="RefusedException">There is no terminal to draw on.</exception>
    public static int RunDemo(Site site, DateOnly on)
    {
        NeedTerminal(site);
        using PrivateFolder folder = new(site.Disk, site.TemporaryFolder, site.NewShopId());
        string path = Path.Combine(folder.Path, "demo.db");
        using (Bench bench = Bench.ToWrite(site, path))
        {
            if (bench.RecordAll(DemoShop.Entries(on), on).Refusal is { } refusal)
            {
                throw RefusedException.WrongData(refusal);
            }
        }

        return RunOnce(site, path, on).Code;
    }

    private static void NeedTerminal(Site site)
    {
        if (site.Tty is not { CanDraw: true })
        {
            throw RefusedException.WrongUsage(NoTerminal);
        }

        Environment.SetEnvironmentVariable("TERM", site.Tty.Name);
        // here, since nothing that leads up to here names a type of the library
        Unconfigured.Load();
    }

    private static (int Code, Afterwards Afterwards) RunOnce(Site site, string path, DateOnly? day)
    {
        Tty terminal = site.Tty!;
        using Bench bench = Bench.ToWrite(site, path);
        Driver.Force16Colors = !terminal.HasManyColours;
        Application.MaximumIterationsPerSecond = 25;
        (int Code, Afterwards Afterwards) end = Shown(terminal, site, bench, day);
        foreach (string trouble in bench.BackUp())
        {
            site.Error.WriteLine(trouble);
        }

        return end;
    }

    private static (int Code, Afterwards Afterwards) Shown(Tty terminal, Site site, Bench bench, DateOnly? day)
    {
        using IApplication app = Application.Create();
        using WaysOut ways = new(terminal, app);
        app.Init();
        using Sitting sitting = new(site, bench, day, act => app.Invoke(act));
        using Host host = new(sitting, new Colours(terminal.WantsNoColour), terminal.HasBraille, ScreenList.All);
        app.Keyboard.KeyDown += (_, key) => key.Handled = host.Take(key);
        _ = app.AddTimeout(
            TimeSpan.FromSeconds(1),
            () =>
            {
                host.Look();
                return true;
            }
        );
        app.Run(host);
        return ways.Signal is { } signal ? (128 + signal, Afterwards.Nothing) : (host.ExitCode, host.Afterwards);
    }
}
