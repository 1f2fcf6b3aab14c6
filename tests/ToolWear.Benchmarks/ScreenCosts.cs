using System.Diagnostics;
using System.Globalization;
using ToolWear.Testing.Terminals;

namespace ToolWear.Benchmarks;

/// <summary>The program's screens as whole processes in a pseudo-terminal of 80x24: how soon they are drawn, what memory they take.</summary>
internal static class ScreenCosts
{
    private const double MiB = 1024;
    private const int RestMs = 500;
    private const int Hands = 5;
    private const int Heats = 60;

    private static readonly Dictionary<string, string?> Environment = new() { ["TERM"] = "xterm-256color" };

    /// <summary>From the call to the first drawn tool rack, in turns with a bare window of the same library.</summary>
    /// <param name="folder">A folder for the store.</param>
    /// <param name="runs">How often each.</param>
    /// <param name="programs">The programs, each with its name and its goal.</param>
    /// <param name="said">Where to.</param>
    public static void Start(
        string folder,
        int runs,
        IReadOnlyList<(string Name, string Path, string Goal)> programs,
        TextWriter said
    )
    {
        string store = Path.Combine(folder, "demo.db");
        ProcessStartInfo demo = new(programs[0].Path, ["demo", "--no-screens", "--store", store])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        using (Process made = Process.Start(demo)!)
        {
            made.StandardOutput.ReadToEnd();
            made.WaitForExit();
        }

        string bare = Path.Combine(AppContext.BaseDirectory, "ToolWear.BareWindow");
        Dictionary<string, List<double>> took = [];
        Dictionary<string, string> shown = [];
        // the first round only warms up the disk's memory
        for (int run = -1; run < runs; run++)
        {
            foreach ((string name, string path, _) in programs)
            {
                Drawn(name, path, ["--store", store], IsRack, run);
                Drawn("bare " + name, bare, [], text => text.Contains("a bare window", StringComparison.Ordinal), run);
            }
        }

        foreach ((string name, _, string goal) in programs)
        {
            double ours = Measuring.Median(took[name]);
            double other = Measuring.Median(took["bare " + name]);
            Measuring.Row(
                said,
                $"start, {name}; bare window",
                runs,
                ours,
                other,
                ours / other,
                goal,
                Measuring.Hash(shown[name])
            );
        }

        void Drawn(string name, string path, string[] arguments, Func<string, bool> isSo, int run)
        {
            using PseudoTerminal terminal = new(path, arguments, Environment, folder);
            terminal.WaitFor(isSo, "its first screen");
            if (run >= 0)
            {
                took.TryAdd(name, []);
                took[name].Add(Stopwatch.GetElapsedTime(terminal.Begun).TotalMilliseconds);
            }

            shown[name] = terminal.Text;
            Left(terminal, name);
        }
    }

    /// <summary>The resident memory of the screens of a large shop.</summary>
    /// <param name="folder">A folder for the store.</param>
    /// <param name="tools">Tools in service.</param>
    /// <param name="entries">About how many entries.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="programs">The programs, each with its name and its goal.</param>
    /// <param name="said">Where to.</param>
    public static void Memory(
        string folder,
        int tools,
        int entries,
        int seed,
        IReadOnlyList<(string Name, string Path, string Goal)> programs,
        TextWriter said
    )
    {
        string store = Path.Combine(folder, "crowded.db");
        DateOnly today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        long written = StoreMade.Crowded(store, tools, entries, seed, today);
        foreach ((string name, string path, string goal) in programs)
        {
            using PseudoTerminal terminal = new(path, ["--store", store], Environment, folder);
            terminal.WaitFor(IsRack, "the tool rack");
            Settle(terminal);
            Say("on the rack");
            foreach (string key in (string[])["f", "o", "y", "c", "l", "k", "\r"])
            {
                terminal.Send(key);
                Settle(terminal);
                terminal.Send("\e");
                Settle(terminal);
            }

            Say("after seven screens");
            Forge(terminal);
            Say("after an evening of 60 heats");
            Left(terminal, name);

            void Say(string when)
            {
                string hash = Measuring.Hash(terminal.Text);
                Measuring.Row(
                    said,
                    $"memory, {name}, {when}: MiB now; most",
                    written,
                    Resident(terminal.Pid, "VmRSS"),
                    Resident(terminal.Pid, "VmHWM"),
                    null,
                    goal,
                    hash
                );
            }
        }
    }

    // each heat on another tool of the session, the rack looked at after each
    private static void Forge(PseudoTerminal terminal)
    {
        terminal.Send("h");
        Settle(terminal);
        foreach (string key in (string[])[.. Enumerable.Repeat(" \e[B", Hands), "\r"])
        {
            terminal.Send(key);
        }

        Settle(terminal);
        for (int heat = 0; heat < Heats; heat++)
        {
            terminal.Send(((heat % Hands) + 1).ToString(CultureInfo.InvariantCulture));
            Settle(terminal);
            terminal.Send("\e");
            Settle(terminal);
            terminal.Send("h");
            Settle(terminal);
        }

        terminal.Send("\e");
        Settle(terminal);
    }

    private static bool IsRack(string text) =>
        text.Contains("Tool rack", StringComparison.Ordinal) && text.Contains("? help", StringComparison.Ordinal);

    // nothing is worked out any more and nothing is drawn
    private static void Settle(PseudoTerminal terminal)
    {
        string before;
        do
        {
            before = terminal.Text;
            Thread.Sleep(RestMs);
        } while (terminal.Text != before || terminal.Text.Contains("being worked out", StringComparison.Ordinal));
    }

    private static void Left(PseudoTerminal terminal, string name)
    {
        terminal.Send(name.StartsWith("bare", StringComparison.Ordinal) ? "\e" : "q");
        terminal.WaitForExit();
    }

    private static double Resident(int process, string line)
    {
        string text = File.ReadLines($"/proc/{process}/status")
            .First(each => each.StartsWith(line + ":", StringComparison.Ordinal));
        return double.Parse(
                text.Split(':')[1].Replace("kB", "", StringComparison.Ordinal),
                CultureInfo.InvariantCulture
            ) / MiB;
    }
}
