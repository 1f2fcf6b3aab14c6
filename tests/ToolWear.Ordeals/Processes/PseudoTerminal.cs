using System.Diagnostics;
using System.Text;

namespace ToolWear.Ordeals.Processes;

/// <summary>The program's screens in a terminal that is none, by way of script(1).</summary>
internal sealed class PseudoTerminal : IDisposable
{
    private readonly Process _script;
    private readonly StringBuilder _shown = new();
    private readonly Task _reading;

    /// <summary>Starts the screens.</summary>
    /// <param name="folder">The current folder.</param>
    /// <param name="store">The store.</param>
    public PseudoTerminal(string folder, string store)
    {
        string command = $"stty rows 24 cols 80; export TERM=xterm; exec '{Programs.ToolWear}' --store '{store}'";
        _script = Programs.Start("script", folder, "-qfec", command, "/dev/null");
        _reading = Task.Run(Read);
    }

    /// <summary>Whether there is such a thing here.</summary>
    public static bool IsThere => File.Exists("/usr/bin/script");

    /// <summary>All that was sent to the terminal so far.</summary>
    public string Shown
    {
        get
        {
            lock (_shown)
            {
                return _shown.ToString();
            }
        }
    }

    /// <summary>The program's process.</summary>
    public int Program
    {
        get
        {
            string children = $"/proc/{_script.Id}/task/{_script.Id}/children";
            return int.Parse(File.ReadAllText(children).Split(' ')[0], null);
        }
    }

    /// <summary>Waits until a text was sent.</summary>
    /// <param name="text">The text.</param>
    public void WaitFor(string text)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!Shown.Contains(text, StringComparison.Ordinal))
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(60), $"\"{text}\" did not come: {Shown}");
            Thread.Sleep(20);
        }
    }

    /// <summary>Presses a key.</summary>
    /// <param name="key">The key.</param>
    public void Press(char key)
    {
        _script.StandardInput.Write(key);
        _script.StandardInput.Flush();
    }

    /// <summary>Waits until the program has ended.</summary>
    /// <returns>Its exit code.</returns>
    public int End()
    {
        Assert.True(_script.WaitForExit(60_000), Shown);
        return _script.ExitCode;
    }

    public void Dispose()
    {
        if (!_script.HasExited)
        {
            _script.Kill(entireProcessTree: true);
        }

        _reading.Wait(TimeSpan.FromSeconds(10));
        _script.Dispose();
    }

    private void Read()
    {
        char[] some = new char[4096];
        for (int read; (read = _script.StandardOutput.Read(some)) > 0; )
        {
            lock (_shown)
            {
                _shown.Append(some, 0, read);
            }
        }
    }
}
