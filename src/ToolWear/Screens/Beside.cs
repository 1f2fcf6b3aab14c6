using ToolWear.Core.Shops;

namespace ToolWear.Screens;

/// <summary>Works something out of the shop beside the screens, which never wait for it.</summary>
/// <typeparam name="T">What is worked out.</typeparam>
/// <param name="onScreen">Does something on the screens' thread.</param>
/// <param name="work">Works it out; stops where it is told to.</param>
public class Beside<T>(Action<Action> onScreen, Func<Shop, CancellationToken, T> work) : Beside<Shop, T>(onScreen, work)
    where T : class;

/// <summary>Works something out beside the screens, which never wait for it.</summary>
/// <typeparam name="TOf">What it is worked out of; another one is another instance.</typeparam>
/// <typeparam name="T">What is worked out.</typeparam>
/// <param name="onScreen">Does something on the screens' thread.</param>
/// <param name="work">Works it out; stops where it is told to.</param>
public class Beside<TOf, T>(Action<Action> onScreen, Func<TOf, CancellationToken, T> work) : IDisposable
    where TOf : class
    where T : class
{
    private CancellationTokenSource stop = new();
    private TOf? wanted;
    private bool isRunning;
    private bool isEnded;
    private TOf? latestOf;

    /// <summary>What was last worked out, null before the first.</summary>
    public T? Latest { get; private set; }

    /// <summary>Whether that of a newer one is being worked out.</summary>
    public bool IsBehind => wanted is not null && !ReferenceEquals(wanted, latestOf);

    /// <summary>What to do when it is there.</summary>
    public Action? Ready { get; set; }

    /// <summary>Asks for that of one; that of an older one is not worth ending.</summary>
    /// <param name="of">What to work it out of.</param>
    public void Want(TOf of)
    {
        if (ReferenceEquals(of, wanted))
        {
            return;
        }

        wanted = of;
        if (isRunning)
        {
            stop.Cancel();
            return;
        }

        Begin();
    }

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Stops what is being worked out.</summary>
    /// <param name="disposing">True: it is being disposed of.</param>
    protected virtual void Dispose(bool disposing)
    {
        if (disposing)
        {
            isEnded = true;
            stop.Cancel();
            stop.Dispose();
        }
    }

    private void Begin()
    {
        if (isEnded || wanted is not { } of)
        {
            return;
        }

        isRunning = true;
        stop.Dispose();
        stop = new CancellationTokenSource();
        CancellationToken token = stop.Token;
        _ = Task.Run(
            () =>
            {
                try
                {
                    T made = work(of, token);
                    onScreen(() => End(of, made));
                }
                catch (OperationCanceledException)
                {
                    onScreen(() => End(of, null));
                }
#pragma warning disable CA1031 // an exception here is a bug: it goes on where the program ends properly
                catch (Exception e)
#pragma warning restore CA1031
                {
                    onScreen(() => throw new InvalidOperationException(e.Message, e));
                }
            },
            CancellationToken.None
        );
    }

    private void End(TOf of, T? made)
    {
        isRunning = false;
        if (made is not null)
        {
            Latest = made;
            latestOf = of;
        }

        if (IsBehind)
        {
            Begin();
        }

        Ready?.Invoke();
    }
}
