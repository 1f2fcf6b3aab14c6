using System.Diagnostics;
using System.Globalization;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The screens of a program built elsewhere, in a terminal of tmux.</summary>
internal sealed class EveningOutside : IEvening
{
    private const int PatienceSeconds = 60;
    private const string WorkingOut = "being worked out";
    private readonly string server = $"toolwear-{Guid.NewGuid():N}";
    private readonly string process;

    public EveningOutside(TestSite site, int width, int height)
    {
        string[] size = ["-x", Invariant(width), "-y", Invariant(height)];
        string[] world = ["-e", "TZ=UTC", "-e", $"TMPDIR={site.Folder}"];
        Tmux([
            "-f",
            "/dev/null",
            "new-session",
            "-d",
            .. size,
            .. world,
            .. Outside.Called(site),
            "--store",
            site.Store,
        ]);
        Tmux(["set-option", "-g", "status", "off"]);
        Tmux(["resize-window", .. size]);
        // faketime waits for the program that it has begun
        string faketime = Tmux(["display-message", "-p", "#{pane_pid}"]).Trim();
        process = File.ReadAllText($"/proc/{faketime}/task/{faketime}/children").Trim();
        Assert.NotEqual("", process);
    }

    /// <summary>What the terminal shows once it shows the same a while.</summary>
    public string Text
    {
        get
        {
            string now = Captured();
            for (int same = 0; same < 4; same++)
            {
                Thread.Sleep(250);
                string later = Captured();
                same = later == now ? same : -1;
                now = later;
            }

            return now;
        }
    }

    public void Press(params string[] names)
    {
        foreach (string name in names)
        {
            Tmux(["send-keys", .. KeyOf(name)]);
            // a key at once behind Escape would be taken for one with Alt held
            Thread.Sleep(name == "Esc" ? 300 : 30);
        }

        _ = Text;
    }

    public void Type(string text) => Press([.. text.Select(each => each == ' ' ? "Space" : each.ToString())]);

    public void WaitForForecasts() => WaitUntilNotShown(WorkingOut);

    public void WaitForAll() => WaitUntilNotShown(WorkingOut);

    public void Dispose()
    {
        // the last session may have taken the server with it
        Tmux(["kill-server"], mayFail: true);
        Stopwatch watch = Stopwatch.StartNew();
        while (Directory.Exists($"/proc/{process}"))
        {
            Assert.True(watch.Elapsed.TotalSeconds < PatienceSeconds, "the program did not end with its terminal");
            Thread.Sleep(50);
        }
    }

    private void WaitUntilNotShown(string words)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (Text is var text && (text.Trim().Length == 0 || text.Contains(words, StringComparison.Ordinal)))
        {
            Assert.True(watch.Elapsed.TotalSeconds < PatienceSeconds, $"\"{words}\" did not go away:\n{text}");
        }
    }

    /// <summary>What stands in the terminal, with "_" where the cursor stands on a blank, as in the goldens.</summary>
    private string Captured()
    {
        string[] lines = [.. Tmux(["capture-pane", "-p"])[..^1].Split('\n').Select(line => line.TrimEnd())];
        string[] cursor = Tmux(["display-message", "-p", "#{cursor_flag} #{cursor_x} #{cursor_y}"]).Trim().Split(' ');
        int x = int.Parse(cursor[1], CultureInfo.InvariantCulture);
        int y = int.Parse(cursor[2], CultureInfo.InvariantCulture);
        string line = y < lines.Length ? lines[y].PadRight(x + 1) : "";
        if (cursor[0] == "1" && line.Length > x && line[x] == ' ')
        {
            lines[y] = $"{line[..x]}_{line[(x + 1)..]}".TrimEnd();
        }

        return string.Concat(lines.Select(line => line + "\n"));
    }

    private string Tmux(string[] arguments, bool mayFail = false)
    {
        ProcessStartInfo start = new("tmux", ["-L", server, .. arguments])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process tmux = Process.Start(start)!;
        string output = tmux.StandardOutput.ReadToEnd();
        tmux.WaitForExit();
        Assert.True(mayFail || tmux.ExitCode == 0, $"tmux {string.Join(' ', arguments)}: exit {tmux.ExitCode}");
        return output;
    }

    private static string[] KeyOf(string name) =>
        name switch
        {
            "Esc" => ["Escape"],
            "Backspace" => ["BSpace"],
            "PageUp" => ["PPage"],
            "PageDown" => ["NPage"],
            "Ctrl+C" => ["C-c"],
            { Length: > 1 } => [name],
            _ => ["-l", name],
        };

    private static string Invariant(int number) => number.ToString(CultureInfo.InvariantCulture);
}
