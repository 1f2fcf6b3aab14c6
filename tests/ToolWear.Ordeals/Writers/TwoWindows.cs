using System.Diagnostics;
using System.Globalization;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
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

        Window[] windows = [new(folder.Path, store, "1 R1", delayMs), new(folder.Path, store, "2 R2", delayMs)];
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

    private bool IsKill(int i) => kills > 0 && (i + 1) % Math.Max(2, entries / (kills + 1)) == 0;

    private void Press(Window window, int which)
    {
        for (int i = 0; i < entries; i++)
        {
            _tried[which]++;
            if (window.Heat(IsKill(i)) is { } wrong)
            {
                Add(wrong);
            }
            else if (!IsKill(i))
            {
                _told[which]++;
            }
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
            }
            else if (!IsKill(i))
            {
                Add($"{Tools[which]}: {error.GetAwaiter().GetResult().Trim()}");
            }
        }
    }

    private void See(string folder, string store, Window[] windows)
    {
        Window.Seen[] before = [.. windows.Select(window => window.Look("3 R3"))];
        _tried[2]++;
        (string program, string[] line) = Window.Slowed(delayMs, ["heats", Tools[2], "1", "--store", store]);
        if (Programs.End(program, folder, line).Exit == 0)
        {
            _told[2]++;
        }

        long end = Environment.TickCount64;
        SeenAfterMs =
        [
            .. windows.Select(
                (window, i) => window.WaitForOther("3 R3", before[i], SeenWithinMs) ? Environment.TickCount64 - end : -1
            ),
        ];
        using Window fresh = new(folder, store, "1 R1", 0);
        foreach (string tile in new[] { "1 R1", "2 R2", "3 R3", "4 R4" })
        {
            if (windows.Any(window => window.Look(tile) != fresh.Look(tile)))
            {
                Add($"{tile}: a window shows other heats than one that is opened now");
            }
        }
    }

    private void Compare(string store)
    {
        using Bench bench = Bench.ToRead(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null), store);
        for (int i = 0; i < Tools.Length; i++)
        {
            ToolMark mark = Texts.MarkOf(Tools[i]);
            int there = bench.Shop.Ledger.Count(each => each.What is HeatsWorked heats && heats.Tool == mark) - 1;
            Lost += Math.Max(0, _told[i] - there);
            if (there > _tried[i])
            {
                Add($"{Tools[i]}: {there} entries of {_tried[i]} tried");
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
