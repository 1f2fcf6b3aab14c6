using System.Collections.Concurrent;
using System.Diagnostics;
using Terminal.Gui.Input;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Screens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Running;
using static ToolWear.Benchmarks.Measuring;

namespace ToolWear.Benchmarks;

/// <summary>How long each key of each screen takes on the screen's thread, its drawing and what is posted back included.</summary>
internal sealed class KeyTimes : IDisposable
{
    private const int Width = 80;
    private const int Height = 24;
    private const int Times = 5;
    private static readonly DateOnly Today = new(2026, 11, 12);

    /// <summary>How every screen is come by, from the home screen; what records comes last.</summary>
    private static readonly string[][] Ways =
    [
        [],
        ["Enter"],
        ["Enter", "w"],
        ["Enter", "x"],
        ["?"],
        ["f"],
        ["f", "s"],
        ["o"],
        ["o", "a"],
        ["o", "p"],
        ["c"],
        ["y"],
        ["y", "a"],
        ["y", "p"],
        ["b"],
        ["b", "a"],
        ["r"],
        ["v"],
        ["l"],
        ["l", "/"],
        ["s"],
        ["a"],
        ["t"],
        ["n"],
        ["k"],
        ["m"],
        ["m", "s", "Esc"],
        ["h"],
        ["h", "o"],
        ["h", "Enter"],
        ["h", "Enter", "s"],
    ];

    private readonly ConcurrentQueue<Action> posted = new();
    private readonly Bench bench;
    private readonly Sitting sitting;
    private readonly Host host;
    private readonly List<(ScreenName Screen, string Key, double Ms)> pressed = [];
    private readonly List<(ScreenName Screen, double Ms)> first = [];
    private readonly List<double> back = [];

    private KeyTimes(string store)
    {
        Site site = StoreMade.SiteOf(store);
        bench = Bench.ToWrite(site, store);
        sitting = new Sitting(site, bench, Today, posted.Enqueue);
        host = new Host(sitting, new Colours(plain: true), hasBraille: true, ScreenList.All);
    }

    /// <summary>Makes a crowded shop, presses every key several times and says what it took.</summary>
    /// <param name="tools">Tools in service.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="said">Where to.</param>
    public static void Measure(int tools, int entries, int seed, TextWriter said)
    {
        string folder = Directory.CreateTempSubdirectory("toolwear-keys-").FullName;
        try
        {
            string path = Path.Combine(folder, "shop.db");
            said.WriteLine(
                Invariant($"{StoreMade.Crowded(path, tools, entries, seed, Today)} entries, {tools} tools in service")
            );
            Stopwatch watch = Stopwatch.StartNew();
            using KeyTimes times = new(path);
            said.WriteLine(Invariant($"opened and folded: {watch.Elapsed.TotalMilliseconds:0} ms"));
            times.All();
            times.Say(said);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    public void Dispose()
    {
        host.Dispose();
        sitting.Dispose();
        bench.Dispose();
    }

    private void All()
    {
        // compiled code is what a shop waits for: the first round only warms up
        foreach (bool isCounted in new[] { false, true })
        {
            foreach (string[] way in Ways)
            {
                PressAll(way, isCounted);
            }
        }
    }

    private void PressAll(string[] way, bool isCounted)
    {
        GoTo(way);
        if (isCounted)
        {
            first.Add((host.Current.Name, Timed(() => host.Current.Whole(Width, Height))));
        }

        ScreenName screen = host.Current.Name;
        KeyRow[] rows =
        [
            .. host.Current.KeyRows.Where(row => row.Act != Act.Leave && ScreenFrame.Works(host.Current, row)),
        ];
        foreach (KeyRow row in rows)
        {
            foreach (string name in row.Names.Take(2))
            {
                for (int i = 0; i < (isCounted ? Times : 1); i++)
                {
                    GoTo(way);
                    double ms = Timed(() =>
                    {
                        host.Take(KeyOf(name));
                        host.Current.Whole(Width, Height);
                    });
                    if (isCounted)
                    {
                        pressed.Add((screen, name, ms));
                    }
                }
            }
        }
    }

    private void GoTo(string[] way)
    {
        if (sitting.Shop.OpenSession is { } open && (way is ["h"] or ["h", "o"]))
        {
            sitting.Record(new SessionClosed(open.Name, null));
        }

        host.Go(host.Home);
        foreach (string key in way)
        {
            host.Take(KeyOf(key));
            host.Current.Whole(Width, Height);
            Pump();
        }

        Pump();
    }

    /// <summary>Waits until nothing is worked out beside the screens any more; what is posted back is timed as well.</summary>
    private void Pump()
    {
        while (
            sitting.Forecaster.IsBehind
            || sitting.Plans.IsBehind
            || sitting.Supposed.IsBehind
            || sitting.Costs.IsBehind
            || sitting.Trials.IsBehind
            || sitting.Years.IsBehind
            || sitting.Charts.IsBehind
            || !posted.IsEmpty
        )
        {
            if (posted.TryDequeue(out Action? act))
            {
                back.Add(
                    Timed(() =>
                    {
                        act();
                        host.Current.Whole(Width, Height);
                    })
                );
            }
            else
            {
                Thread.Sleep(1);
            }
        }
    }

    private void Say(TextWriter said)
    {
        said.WriteLine("screen          first draw   median    worst   of keys  worst key");
        foreach (
            IGrouping<ScreenName, (ScreenName, string Key, double Ms)> group in pressed.GroupBy(each => each.Screen)
        )
        {
            (_, string key, double worst) = group.MaxBy(each => each.Ms);
            double draw = first.Where(each => each.Screen == group.Key).Max(each => each.Ms);
            said.WriteLine(
                Invariant(
                    $"{group.Key, -15} {draw, 10:0.0} {Median(group.Select(each => each.Ms)), 8:0.0} {worst, 8:0.0} {group.Count(), 9}  {key}"
                )
            );
        }

        said.WriteLine();
        said.WriteLine("keys whose worst is over 20 ms: median, worst");
        foreach (
            var group in pressed
                .GroupBy(each => (each.Screen, each.Key))
                .Where(group => group.Max(each => each.Ms) > 20)
                .OrderByDescending(group => group.Max(each => each.Ms))
        )
        {
            said.WriteLine(
                Invariant(
                    $"{group.Key.Screen, -15} {group.Key.Key, -10} {Median(group.Select(each => each.Ms)), 8:0.0} {group.Max(each => each.Ms), 8:0.0}"
                )
            );
        }

        said.WriteLine();
        said.WriteLine(
            Invariant(
                $"{pressed.Count} keys, worst {pressed.Max(each => each.Ms):0.0} ms, median {Median(pressed.Select(each => each.Ms)):0.0} ms; {back.Count} results posted back, worst {back.DefaultIfEmpty(0).Max():0.0} ms"
            )
        );
    }

    private static Key KeyOf(string name) =>
        name switch
        {
            "Enter" => Key.Enter,
            "Esc" => Key.Esc,
            "Space" => Key.Space,
            "Backspace" => Key.Backspace,
            "Delete" => Key.Delete,
            "Up" => Key.CursorUp,
            "Down" => Key.CursorDown,
            "PageUp" => Key.PageUp,
            "PageDown" => Key.PageDown,
            "F1" => Key.F1,
            _ => new Key(name[0]),
        };
}
