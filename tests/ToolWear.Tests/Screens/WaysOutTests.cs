using System.Diagnostics;
using System.Text.RegularExpressions;
using ToolWear.Doors;
using ToolWear.Testing.Terminals;
using ToolWear.Tests.Commands;
using ToolWear.Tests.Screens.Terminals;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>
/// Every way out of the screens, on a real pseudo-terminal, a heat just tallied: how the program ends, how it leaves the
/// terminal, and that the heat is in the store. All of them begin at once, since each spends most of its time waiting.
/// </summary>
[Collection(ScreenLibrary.Name)]
public sealed partial class WaysOutTests(WaysOutTests.AllOpened terminals) : IClassFixture<WaysOutTests.AllOpened>
{
    private const string NeedsLinux = "a pseudo-terminal by the numbers of Linux";

    [Fact]
    public void The_key_for_leaving()
    {
        Opened opened = terminals.Get("Ctrl-C");
        opened.Terminal.Send("\u0003");
        opened.Judge(130);
    }

    [Fact]
    public void An_interrupt_after_the_window_became_small_and_large_again()
    {
        Opened opened = terminals.Get("SIGINT");
        opened.Terminal.Resize(40, 12);
        opened.Terminal.WaitFor(text => IsDrawn(text, opened.Terminal.Screen, 40, 12), "the small window");
        opened.Terminal.Resize(80, 24);
        opened.Terminal.WaitFor(text => IsDrawn(text, opened.Terminal.Screen, 80, 24), "the large window");
        opened.Terminal.Signal(Signals.Interrupt);
        opened.Judge(130);
    }

    [Fact]
    public void A_termination_and_no_colour_was_ever_used_where_none_is_wanted()
    {
        Opened opened = terminals.Get("SIGTERM");
        opened.Terminal.Signal(Signals.Terminate);
        opened.Judge(143);
        // ECMA-48, SGR: bold, faint, underlined, reversed, their ends, and the terminal's own colours
        string[] plain = ["", "0", "1", "2", "4", "7", "22", "24", "27", "39", "49"];
        Assert.Empty(opened.Terminal.Screen.Styles.Except(plain, StringComparer.Ordinal));
        Assert.Contains("7", opened.Terminal.Screen.Styles);
    }

    [Fact]
    public void A_hang_up_and_a_console_without_braille_gets_a_chart_in_plain_marks()
    {
        Opened opened = terminals.Get("SIGHUP");
        opened.Terminal.Send("\e");
        opened.Terminal.WaitFor("Verdict");
        opened.Terminal.Send("\r");
        opened.Terminal.WaitFor("-- -- -- --");
        Assert.DoesNotMatch(Braille(), opened.Terminal.Written);
        opened.Terminal.Signal(Signals.HangUp);
        opened.Judge(129);
    }

    [Fact]
    public void The_window_is_closed()
    {
        Opened opened = terminals.Get("closed");
        opened.Terminal.Close();
        opened.JudgeStore(129);
    }

    [Fact]
    public void An_exception_while_a_screen_is_drawn()
    {
        Opened opened = terminals.Get("exception");
        File.WriteAllText(opened.Site.In("flag"), "");
        opened.Terminal.Send("z");
        opened.Judge(70);
        string said = Assert.Single(opened.Terminal.Error().TrimEnd().Split('\n'));
        Assert.Contains("the clock of this test is broken", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_is_left_by_its_key_and_leaves_nothing_behind()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), NeedsLinux);
        using TestSite site = new();
        Dictionary<string, string?> environment = new() { ["TERM"] = "xterm", ["TMPDIR"] = site.Folder };
        using PseudoTerminal demo = new(Opened.Program, ["demo"], environment, site.Folder);
        demo.WaitFor("Tool rack  [demo: an invented shop]");
        Assert.Single(Directory.GetDirectories(site.Folder, "toolwear-demo-*"));
        demo.Send("q");
        Assert.Equal(0, demo.WaitForExit());
        Assert.False(demo.Screen.IsAlternate, "the other screen is still shown");
        Assert.Equal(demo.Before, demo.Settings());
        Assert.Empty(Directory.GetDirectories(site.Folder));
    }

    [Fact]
    public void A_terminal_that_can_draw_nothing_gets_a_sentence()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), NeedsLinux);
        using TestSite site = new();
        using PseudoTerminal dumb = Opened.Begin(site, new() { ["TERM"] = "dumb" });
        Assert.Equal(2, dumb.WaitForExit());
        Assert.Contains("measure TOOL GAUGE SIZE", dumb.Error(), StringComparison.Ordinal);
        Assert.Equal("", dumb.Written);
        Assert.False(File.Exists(site.Store + ".journal"));
    }

    [Fact]
    public void Without_a_terminal_there_is_a_sentence_and_no_screen()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), NeedsLinux);
        using TestSite site = new();
        ProcessStartInfo start = new(Opened.Program, ["--store", site.Store])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        string said = process.StandardError.ReadToEnd();
        Assert.Equal("", process.StandardOutput.ReadToEnd());
        process.WaitForExit();
        Assert.Equal(2, process.ExitCode);
        Assert.Contains("measure TOOL GAUGE SIZE", said, StringComparison.Ordinal);
    }

    private static bool IsDrawn(string text, TerminalScreen screen, int width, int height) =>
        text.StartsWith("At the hammer", StringComparison.Ordinal)
        && text.Contains("? help", StringComparison.Ordinal)
        && screen.Used.Rows == height
        && screen.Used.Columns <= width
        && screen.Used.Columns > width / 2;

    [GeneratedRegex("[\u2801-\u28ff]")]
    private static partial Regex Braille();

    /// <summary>A program at the hammer, a heat tallied.</summary>
    internal sealed class Opened : IDisposable
    {
        public Opened(Dictionary<string, string?> environment, bool throws)
        {
            DateTimeOffset now = TimeProvider.System.GetLocalNow();
            Site = new TestSite(now.ToString("yyyy-MM-dd", null));
            Site.Done("add-tool", "R1", "--form", "drift", "--place", "rough", "--gauge", "width,smaller,,14,12.8,");
            Site.Done("open-session");
            Hostile.Into(Site.Folder);
            environment["TUI_CONFIG"] = Hostile.Configuration;
            environment["TERM"] = environment.GetValueOrDefault("TERM") ?? "xterm-256color";
            Terminal = Begin(Site, environment, throws);
            Terminal.WaitFor("Tool rack");
            // the hostile files and the variable would draw among the shell's lines and leave the mouse alone
            Assert.True(Terminal.Screen.IsAlternate, "a configuration of the current folder was obeyed");
            Assert.True(Terminal.Screen.ReportsMouse, "a configuration of the current folder was obeyed");
            Terminal.Send("h");
            Terminal.WaitFor("At the hammer");
            Terminal.Send("t");
            Terminal.WaitFor("Pattern: none");
            Terminal.Send(" ");
            Terminal.WaitFor("[1]");
            Terminal.Send("\r");
            Terminal.WaitFor("1 R1 rough");
            Terminal.Send("1");
            Terminal.WaitFor(" saved.");
        }

        /// <summary>The program as it was built beside the tests, or the one that was named for them.</summary>
        public static string Program => Outside.Program ?? Path.Combine(AppContext.BaseDirectory, "toolwear");

        public TestSite Site { get; }

        public PseudoTerminal Terminal { get; }

        public static PseudoTerminal Begin(
            TestSite site,
            Dictionary<string, string?> environment,
            bool throws = false
        ) =>
            throws
                ? new(
                    Path.Combine(AppContext.BaseDirectory, "ToolWear.ThrowingClock"),
                    [site.In("flag"), "--store", site.Store],
                    environment,
                    site.Folder
                )
                : new(Program, ["--store", site.Store], environment, site.Folder);

        /// <summary>The exit code, the terminal as it was found, the store.</summary>
        public void Judge(int exit)
        {
            JudgeStore(exit);
            Assert.False(Terminal.Screen.IsAlternate, "the other screen is still shown");
            Assert.True(Terminal.Screen.HasCursor && Terminal.Screen.HasCursorLast, "the cursor is hidden");
            Assert.False(Terminal.Screen.ReportsMouse, "the mouse is still reported");
            Assert.Equal(Terminal.Before, Terminal.Settings());
        }

        public void JudgeStore(int exit)
        {
            Assert.Equal(exit, Terminal.WaitForExit());
            Assert.Contains("heats-worked", File.ReadAllText(Site.Store + ".journal"), StringComparison.Ordinal);
            Assert.Equal(0, Site.Run("check").Exit);
            Assert.Contains("R1", Site.Done("forecast", "--as", "csv"), StringComparison.Ordinal);
        }

        public void Dispose()
        {
            Terminal.Dispose();
            Site.Dispose();
        }
    }

    /// <summary>The terminals of all ways, begun together.</summary>
    public sealed class AllOpened : IDisposable
    {
        private readonly Dictionary<string, Task<Opened>> opened = [];

        public AllOpened()
        {
            if (OperatingSystem.IsLinux())
            {
                Begin("Ctrl-C");
                Begin("SIGINT");
                Begin("SIGTERM", new() { ["NO_COLOR"] = "1" });
                Begin("SIGHUP", new() { ["TERM"] = "linux" });
                Begin("closed");
                Begin("exception", throws: true);
            }
        }

        internal Opened Get(string way)
        {
            Assert.SkipUnless(OperatingSystem.IsLinux(), NeedsLinux);
            return opened[way].GetAwaiter().GetResult();
        }

        public void Dispose()
        {
            foreach (Task<Opened> each in opened.Values)
            {
                each.ContinueWith(
                        made => made.Result.Dispose(),
                        CancellationToken.None,
                        TaskContinuationOptions.OnlyOnRanToCompletion,
                        TaskScheduler.Default
                    )
                    .Wait();
            }
        }

        private void Begin(string way, Dictionary<string, string?>? environment = null, bool throws = false) =>
            opened[way] = Task.Run(() => new Opened(environment ?? [], throws));
    }
}
