using System.Diagnostics;
using System.Text.RegularExpressions;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Ordeals.Processes;
using ToolWear.Storage;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Stores;
using ToolWear.Testing.Terminals;

namespace ToolWear.Ordeals;

/// <summary>Whole processes: two at once, in a hostile folder, and what they touch.</summary>
public sealed class ProcessTests
{
    // The library of views asks which(1) for a clipboard, over a pipe; pipes are local sockets to .NET. By hand strace shows
    // that nothing but the runtime's own local socket is ever made.
    private static readonly string[] OfPipes = ["System.Net.Sockets.dll", "System.Net.Primitives.dll"];

    [Fact]
    public void A_second_program_writes_and_reads_beside_the_first()
    {
        using TemporaryFolder folder = new();
        string store = folder.In("shop.db");
        // it pauses within each line, so that readers meet half a line again and again, and records without a rest
        using Process first = Programs.StartSelf("recorder", store, "3", "5");
        try
        {
            while (first.StandardOutput.ReadLine() != "a 4") { }
            foreach (
                string[] line in (string[][])
                    [
                        ["heats", "R1", "1"],
                        ["set", "units", "in"],
                    ]
            )
            {
                Ended written = Programs.Run(folder.Path, [.. line, "--store", store]);
                for (int i = 0; i < 10 && written.Exit != 0; i++)
                {
                    Assert.Equal((1, ""), (written.Exit, written.Output));
                    Assert.Contains("has been writing", written.Error, StringComparison.Ordinal);
                    written = Programs.Run(folder.Path, [.. line, "--store", store]);
                }

                Assert.StartsWith("entry ", written.Output, StringComparison.Ordinal);
            }

            foreach (
                string[] line in (string[][])
                    [
                        ["rack"],
                        ["card", "R1"],
                        ["export", folder.In("out")],
                    ]
            )
            {
                Ended read = Programs.Run(folder.Path, [.. line, "--store", store]);
                Assert.Equal((0, ""), (read.Exit, read.Error));
            }

            MustGrow(store, Read(store), 300);
            Assert.False(first.HasExited);
        }
        finally
        {
            first.Kill();
        }
    }

    [Fact]
    public void The_work_of_a_shop_touches_no_network()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("What a process touches is told by Linux.");
        }

        using TemporaryFolder folder = new();
        Ended ended = Programs.Self(folder.Path, "quiet", folder.Path);
        Assert.Equal((0, "", ""), (ended.Exit, ended.Output, ended.Error));
        // and this process, which has a socket, would be seen
        using System.Net.Sockets.UdpClient seen = new(0);
        Assert.Contains("System.Net.Sockets.dll", Network.TouchedBy(Environment.ProcessId));
        Assert.Contains(
            Network.TouchedBy(Environment.ProcessId),
            each => each.StartsWith("socket", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_screens_touch_no_network_and_obey_no_file_of_the_current_folder()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("a pseudo-terminal by the numbers of Linux");
        }

        using TemporaryFolder folder = new();
        string store = folder.In("shop.db");
        Assert.Equal(0, Programs.Run(folder.Path, "add-tool", "R3", "--form", "drift", "--store", store).Exit);
        string clean = folder.In("clean");
        string hostile = folder.In("hostile");
        Directory.CreateDirectory(clean);
        MakeHostile(hostile);

        string usual = Screens(clean, store);
        string among = Screens(hostile, store);

        Assert.Equal(Colours(usual), Colours(among));
        Assert.NotEmpty(Colours(usual));
    }

    [Fact]
    public void Commands_obey_no_file_of_the_current_folder()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such pipes.");
        }

        using TemporaryFolder folder = new();
        string clean = folder.In("clean");
        string hostile = folder.In("hostile");
        Directory.CreateDirectory(clean);
        MakeHostile(hostile);
        string store = folder.In("my.db");
        Assert.Equal(0, Programs.Run(hostile, "add-tool", "R3", "--form", "drift", "--store", store).Exit);
        foreach (
            string[] line in (string[][])
                [
                    ["rack", "--as", "csv"],
                    ["--help"],
                    ["rack", "--as", "xml"],
                ]
        )
        {
            Assert.Equal(
                Programs.Run(clean, [.. line, "--store", store]),
                Programs.Run(hostile, [.. line, "--store", store])
            );
        }

        Assert.Empty(Directory.GetFileSystemEntries(clean));
    }

    private static string Screens(string folder, string store)
    {
        Dictionary<string, string?> environment = new() { ["TERM"] = "xterm" };
        using PseudoTerminal terminal = new(Programs.ToolWear, ["--store", store], environment, folder);
        terminal.WaitFor("R3");
        terminal.Send("l");
        terminal.WaitFor("added");
        Assert.Empty(Network.TouchedBy(terminal.Pid).Except(OfPipes));
        terminal.Send("\e");
        Thread.Sleep(300);
        terminal.Send("q");
        Assert.Equal(0, terminal.WaitForExit());
        return terminal.Written;
    }

    // What a library of views, a runtime or a host would look for in a folder. Pipes without a writer: who opens one to
    // read it waits for ever.
    private static void MakeHostile(string folder)
    {
        string[] names =
        [
            ".tui/config.json",
            ".tui/toolwear.config.json",
            ".tui/Terminal.Gui.config.json",
            "config.json",
            "toolwear.config.json",
            "toolwear.json",
            "toolwear.ini",
            "toolwear.rsp",
            "toolwear.runtimeconfig.json",
            "runtimeconfig.template.json",
            "appsettings.json",
            "global.json",
            ".env",
            ".editorconfig",
            "shop.db",
            "seed-data/tools.csv",
        ];
        string[] paths = [.. names.Select(name => Path.Combine(folder, name))];
        foreach (string path in paths)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        }

        using Process made = Process.Start("mkfifo", paths);
        made.WaitForExit();
        Assert.All(paths, path => Assert.True(File.Exists(path), path));
    }

    private static string[] Colours(string shown) =>
        [
            .. Regex
                .Matches(shown, "\u001B\\[[0-9;:]*m")
                .Select(each => each.Value)
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];

    private static void MustGrow(string store, long from, int times)
    {
        long before = from;
        // on a quick machine that many readings are over before the first program has written again
        Stopwatch watch = Stopwatch.StartNew();
        for (int i = 0; i < times || (before == from && watch.Elapsed < TimeSpan.FromSeconds(30)); i++)
        {
            long now = Read(store);
            Assert.True(now >= before, $"{now} entries after {before}");
            before = now;
        }

        Assert.True(before > from, "the first program records nothing");
    }

    private static long Read(string store) =>
        Store
            .Read(
                new StorePaths(store),
                new RealDisk(),
                Bench.Settings(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null)).Kinds,
                _ => { }
            )
            .Seq;
}
