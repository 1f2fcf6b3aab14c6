using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace ToolWear.Testing.Terminals;

/// <summary>
/// A program on a real pseudo-terminal of Linux: in a session of its own, the terminal its controlling one, as in a window.
/// </summary>
public sealed class PseudoTerminal : IDisposable
{
    private const int PatienceMs = 60_000;
    private const int PollMs = 20;

    private readonly Thread reader;
    private readonly TerminalScreen screen = new();
    private readonly List<byte> written = [];
    private readonly int slave;
    private readonly int master;
    private volatile bool isClosing;
    private int? exit;

    public PseudoTerminal(
        string program,
        IEnumerable<string> arguments,
        IReadOnlyDictionary<string, string?> environment,
        string folder,
        int width = 80,
        int height = 24
    )
    {
        ErrorFile = Path.Combine(folder, $"error-{Guid.NewGuid():N}.txt");
        master = Sure(Libc.posix_openpt(Libc.ReadWrite | Libc.NoControlling | Libc.NotInherited), "posix_openpt");
        Sure(Libc.grantpt(master), "grantpt");
        Sure(Libc.unlockpt(master), "unlockpt");
        byte[] name = new byte[128];
        Sure(Libc.ptsname_r(master, name, (nuint)name.Length), "ptsname_r");
        string path = Encoding.ASCII.GetString(name).TrimEnd('\0');
        Resize(width, height);
        // kept open here, so that its settings can be read after the program has gone
        slave = Sure(Libc.open(path, Libc.ReadWrite | Libc.NoControlling | Libc.NotInherited), "open");
        Before = Settings();
        Begun = Stopwatch.GetTimestamp();
        Pid = Spawned.Program(program, [program, .. arguments], environment, folder, path, ErrorFile);
        reader = new Thread(Read) { IsBackground = true };
        reader.Start();
    }

    public int Pid { get; }

    /// <summary>When the program was begun, by the stopwatch.</summary>
    public long Begun { get; }

    /// <summary>Where what the program says beside the screen goes.</summary>
    public string ErrorFile { get; }

    /// <summary>The terminal's settings before the program began, as the system holds them.</summary>
    public byte[] Before { get; }

    /// <summary>What the terminal shows, and in which modes it is.</summary>
    public TerminalScreen Screen
    {
        get
        {
            lock (written)
            {
                return screen;
            }
        }
    }

    /// <summary>Everything the program wrote so far.</summary>
    public string Written
    {
        get
        {
            lock (written)
            {
                return Encoding.UTF8.GetString([.. written]);
            }
        }
    }

    public string Text
    {
        get
        {
            lock (written)
            {
                return screen.ToString();
            }
        }
    }

    /// <summary>The terminal's settings now: echo, line by line or key by key, signals.</summary>
    public byte[] Settings()
    {
        byte[] settings = new byte[64];
        Sure(Libc.tcgetattr(slave, settings), "tcgetattr");
        return settings;
    }

    public void Send(string keys)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(keys);
        Sure((int)Libc.write(master, bytes, (nuint)bytes.Length), "write");
    }

    public void Signal(int signal) => Sure(Libc.kill(Pid, signal), "kill");

    public void Resize(int width, int height)
    {
        lock (written)
        {
            screen.Clear();
        }

        Sure(Libc.ioctl(master, Libc.SetWindowSize, [(ushort)height, (ushort)width, 0, 0]), "ioctl");
    }

    /// <summary>Closes the window: the terminal is gone.</summary>
    public void Close()
    {
        isClosing = true;
        reader.Join();
        _ = Libc.close(slave);
        _ = Libc.close(master);
    }

    /// <summary>Waits until the screen is as wanted, and returns as soon as it is.</summary>
    public void WaitFor(Func<string, bool> isSo, string what)
    {
        long end = Environment.TickCount64 + PatienceMs;
        lock (written)
        {
            while (!isSo(Text))
            {
                if (Environment.TickCount64 > end || HasEnded())
                {
                    throw new TimeoutException($"{what} did not come:\n{Text}\n{Error()}");
                }

                Monitor.Wait(written, PollMs);
            }
        }
    }

    public void WaitFor(string words) =>
        WaitFor(text => text.Contains(words, StringComparison.Ordinal), $"\"{words}\"");

    /// <summary>Waits for the end of the program.</summary>
    /// <returns>Its exit code, or 128 and the number of the signal that ended it.</returns>
    public int WaitForExit()
    {
        long end = Environment.TickCount64 + PatienceMs;
        while (!HasEnded())
        {
            if (Environment.TickCount64 > end)
            {
                throw new TimeoutException($"The program did not end:\n{Text}\n{Error()}");
            }

            Thread.Sleep(10);
        }

        // what it wrote last is read too
        Thread.Sleep(50);
        return exit!.Value;
    }

    public string Error() => File.Exists(ErrorFile) ? File.ReadAllText(ErrorFile) : "";

    public void Dispose()
    {
        if (!HasEnded())
        {
            _ = Libc.kill(Pid, Signals.Kill);
            _ = Libc.waitpid(Pid, out _, 0);
        }

        if (!isClosing)
        {
            Close();
        }
    }

    private bool HasEnded()
    {
        if (exit is null && Libc.waitpid(Pid, out int status, Libc.NoHang) == Pid)
        {
            exit = (status & 0x7f) == 0 ? (status >> 8) & 0xff : 128 + (status & 0x7f);
        }

        return exit is not null;
    }

    private void Read()
    {
        byte[] buffer = new byte[65536];
        while (!isClosing)
        {
            // a read that waits would hold the terminal open when it is closed here
            Libc.Polled polled = new(master, Libc.HasInput);
            if (Libc.poll(ref polled, 1, PollMs) == 0)
            {
                continue;
            }

            nint read = Libc.read(master, buffer, (nuint)buffer.Length);
            if (read <= 0)
            {
                return;
            }

            lock (written)
            {
                written.AddRange(buffer.AsSpan(0, (int)read));
                screen.Take(buffer.AsSpan(0, (int)read));
                Monitor.PulseAll(written);
            }
        }
    }

    private static int Sure(int result, string what) =>
        result >= 0 ? result : throw new InvalidOperationException($"{what}: error {Marshal.GetLastPInvokeError()}");
}
