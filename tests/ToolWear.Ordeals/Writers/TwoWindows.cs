using System.Diagnostics;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Ordeals.Processes;
using ToolWear.Ordeals.Syscalls;
using ToolWear.Storage.Disks;
using ToolWear.Testing.Generators;

namespace ToolWear.Ordeals.Writers;

/// <summary>Two windows at the hammer and two loops of commands on one shop, each with a tool of its own; some are killed.</summary>
/// <param name="entries">How many entries each tries.</param>
/// <param name="kills">How often each window is killed, and so many commands too.</param>
/// <param name="delayMs">How long each sync takes longer than it does, 0 for not at all.</param>
internal sealed class TwoWindows(int entries, int kills, int delayMs)
{
    public const int SeenWithinMs = 5000;

    private static readonly string[] Tools = ["R1", "R2", "R3", "R4"];

    private readonly int[] _told = new int[Tools.Length];
    private readonly int[] _tried = new int[Tools.Length];
    private readonly List<(long Number, int Tool)> _numbers = [];

    public List<string> Wrong { get; } = [];

    /// <summary>How many acknowledged entries are not there.</summary>
    public int Lost { get; private set; }

    /// <summary>How long the windows took to show what a command recorded last (ms), from the end of the command.</summary>
    public IReadOnlyList<long> SeenAfterMs { get; private set; } = [];

    public static int ByHand(int entries, int kills, int delayMs)
    {
        TwoWindows two = new(entries, kills, delayMs);
        two.Run();
        Console.WriteLine(two.ToString());
        return two.Lost == 0 && two.Wrong.Count == 0 ? 0 : 1;
    }

    public void Run()
    {
        using TemporaryFolder folder = new();
        string store = folder.In("shop.db");
        Shelf shelf = new(folder.Path);
        foreach (string tool in Tools)
        {
            shelf.Run(
                ["add-tool", tool, "--form", "drift", "--gauge", "width,smaller,60,14.0,12.8,"],
                ["heats", tool, "1"]
            );
        }

#pragma warning disable CA2000 // closed below, whatever happens
        Window[] windows = [new(folder.Path, store, "1 R1", delayMs), new(folder.Path, store, "2 R2", delayMs)];
#pragma warning restore CA2000
        try
        {
            Parallel.Invoke(
                new ParallelOptions { MaxDegreeOfParallelism = Tools.Length },
                () => Press(windows[0], 0),
                () => Press(windows[1], 1),
                () => Command(folder.Path, store, 2),
                () => Command(folder.Path, store, 3)
            );
            See(folder.Path, store, windows);
        }
        finally
        {
            Array.ForEach(windows, window => window.Dispose());
        }

        Compare(store);
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"sync +{delayMs} ms: tried {string.Join(", ", _tried)}, acknowledged {string.Join(", ", _told)}, lost {Lost}, seen after {string.Join(", ", SeenAfterMs)} ms, wrong {Wrong.Count}"
        ) + string.Concat(Wrong.Take(5).Select(wrong => "\n  " + wrong));

    private bool IsKill(int i) => kills > 0 && i + 1 < entries && (i + 1) % Math.Max(2, entries / (kills + 1)) == 0;

    private void Press(Window window, int which)
    {
        for (int i = 0; i < entries; i++)
        {
            _tried[which]++;
            int shown = window.Heat(IsKill(i)) - 1;
            if (shown == _told[which] && !IsKill(i))
            {
                Add($"{Tools[which]}: no heat more is shown:\n{window.Text}");
            }

            _told[which] = shown;
        }
    }

    private void Command(string folder, string store, int which)
    {
        for (int i = 0; i < entries; i++)
        {
            _tried[which]++;
            (string program, string[] line) = Window.Slowed(delayMs, ["heats", Tools[which], "1", "--store", store]);
            using Process process = Programs.Start(program, folder, line);
            if (IsKill(i))
            {
                Thread.Sleep(i % 7 * 50);
                process.Kill(entireProcessTree: true);
            }

            Task<string> error = process.StandardError.ReadToEndAsync();
            string said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (said.StartsWith("entry ", StringComparison.Ordinal))
            {
                _told[which]++;
                Take(said, which);
            }
            else if (!IsKill(i))
            {
                Add($"{Tools[which]}: {error.GetAwaiter().GetResult().Trim()}");
            }
        }
    }

    private void Take(string said, int which)
    {
        lock (_numbers)
        {
            _numbers.Add((long.Parse(said.Split(' ')[1], CultureInfo.InvariantCulture), which));
        }
    }

    private void See(string folder, string store, Window[] windows)
    {
        _tried[2]++;
        (string program, string[] line) = Window.Slowed(delayMs, ["heats", Tools[2], "1", "--store", store]);
        if (Programs.End(program, folder, line) is { Exit: 0 } ended)
        {
            _told[2]++;
            Take(ended.Output, 2);
        }

        long end = Environment.TickCount64;
        int[] there = InLedger(store);
        SeenAfterMs =
        [
            .. windows.Select(window =>
                window.WaitFor("3 R3", there[2], SeenWithinMs) ? Environment.TickCount64 - end : -1
            ),
        ];
        // another was the last to record: undo takes back what this window did
        windows[1].Undo();
        there[1]--;
        for (int i = 0; i < Tools.Length; i++)
        {
            string tile = string.Create(CultureInfo.InvariantCulture, $"{i + 1} {Tools[i]}");
            foreach (Window window in windows.Where(window => !window.WaitFor(tile, there[i], SeenWithinMs)))
            {
                Add($"{Tools[i]} has {there[i]} heats in the ledger, but in a window:\n{window.Text}");
            }
        }
    }

    private static int[] InLedger(string store)
    {
        using Bench bench = Bench.ToRead(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null), store);
        return
        [
            .. Tools.Select(tool =>
                bench.Shop.Ledger.Count(each => each.What is HeatsWorked heats && heats.Tool == Texts.MarkOf(tool))
            ),
        ];
    }

    private void Compare(string store)
    {
        using Bench bench = Bench.ToRead(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null), store);
        Lost += _numbers.Count(told =>
            bench.Shop.Ledger.ElementAtOrDefault((int)told.Number - 1)?.What is not HeatsWorked heats
            || heats.Tool != Texts.MarkOf(Tools[told.Tool])
        );
        int[] there = InLedger(store);
        for (int i = 0; i < Tools.Length; i++)
        {
            // one was there before
            Lost += Math.Max(0, _told[i] - (there[i] - 1));
            if (there[i] - 1 > _tried[i])
            {
                Add($"{Tools[i]}: {there[i] - 1} entries of {_tried[i]} tried");
            }
        }
    }

    private void Add(string wrong)
    {
        lock (Wrong)
        {
            Wrong.Add(wrong);
        }
    }
}
