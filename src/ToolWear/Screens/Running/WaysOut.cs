using System.Runtime.InteropServices;
using Terminal.Gui.App;
using ToolWear.Doors;

namespace ToolWear.Screens.Running;

/// <summary>The ways out that are no key: signals, a closed window, an exception on another thread.</summary>
/// <remarks>What was recorded is on the disk already. After a hang-up the library may never come back from its
/// end: a thread of our own ends the process then.</remarks>
internal sealed class WaysOut : IDisposable
{
    private const int PatienceMs = 1500;
    private static readonly (PosixSignal Signal, int Number)[] Caught =
    [
        (PosixSignal.SIGTERM, 15),
        (PosixSignal.SIGHUP, 1),
        (PosixSignal.SIGINT, 2),
    ];

    private readonly Tty terminal;
    private readonly IApplication app;
    private readonly List<PosixSignalRegistration> kept = [];
    private volatile int signal;

    public WaysOut(Tty terminal, IApplication app)
    {
        this.terminal = terminal;
        this.app = app;
        AppDomain.CurrentDomain.UnhandledException += Restore;
        foreach ((PosixSignal caught, int number) in Caught)
        {
            kept.Add(PosixSignalRegistration.Create(caught, context => Stop(context, number)));
        }
    }

    /// <summary>The signal that ended the screens, null where none did.</summary>
    public int? Signal => signal == 0 ? null : signal;

    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= Restore;
        foreach (PosixSignalRegistration each in kept)
        {
            each.Dispose();
        }
    }

    private void Stop(PosixSignalContext context, int number)
    {
        context.Cancel = true;
        signal = number;
        Thread watch = new(() =>
        {
            Thread.Sleep(PatienceMs);
            terminal.Restore();
            terminal.ExitNow(128 + number);
        })
        {
            IsBackground = true,
        };
        watch.Start();
        app.Invoke(() => app.RequestStop());
    }

    private void Restore(object sender, UnhandledExceptionEventArgs e) => terminal.Restore();
}
