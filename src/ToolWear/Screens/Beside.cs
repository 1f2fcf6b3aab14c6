using System.Diagnostics;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;

namespace ToolWear.Screens;

/// <summary>What works something out beside the screens.</summary>
internal interface IBeside : IDisposable
{
    /// <summary>What to do when it is further.</summary>
    Action? Ready { get; set; }
}

/// <summary>Works something out of the shop beside the screens, which never wait for it.</summary>
/// <typeparam name="T">What is worked out.</typeparam>
/// <param name="onScreen">Does something on the screens' thread.</param>
/// <param name="work">Works it out; stops where it is told to, and says how far it is.</param>
internal class Beside<T>(Action<Action> onScreen, Func<Shop, Steps, T> work) : Beside<Shop, T>(onScreen, work)
    where T : class
{
    /// <summary>Without a word on how far it is.</summary>
    /// <param name="onScreen">Does something on the screens' thread.</param>
    /// <param name="work">Works it out; stops where it is told to.</param>
    public Beside(Action<Action> onScreen, Func<Shop, CancellationToken, T> work)
        : this(onScreen, (shop, steps) => work(shop, steps.Stop)) { }
}

/// <summary>Works something out beside the screens, which never wait for it.</summary>
/// <typeparam name="TOf">What it is worked out of; another one is another instance.</typeparam>
/// <typeparam name="T">What is worked out.</typeparam>
/// <param name="onScreen">Does something on the screens' thread.</param>
/// <param name="work">Works it out; stops where it is told to, and says how far it is.</param>
internal class Beside<TOf, T>(Action<Action> onScreen, Func<TOf, Steps, T> work) : IBeside
    where TOf : class
    where T : class
{
    // what takes longer than this shows a bar
    private static readonly TimeSpan Long = TimeSpan.FromMilliseconds(500);

    private readonly Stopwatch watch = new();
    private double share;
    private CancellationTokenSource stop = new();
    private TOf? wanted;
    private bool isRunning;
    private bool isEnded;
    private bool isStopped;
    private TOf? latestOf;

    /// <summary>What was last worked out, null before the first.</summary>
    public T? Latest { get; private set; }

    /// <summary>Whether that of a newer one is being worked out.</summary>
    public bool IsBehind => !isStopped && wanted is not null && !ReferenceEquals(wanted, latestOf);

    /// <summary>Whether it was stopped before it was done.</summary>
    public bool IsStopped => isStopped;

    /// <summary>The share that is done, once it takes long enough to be worth showing; null before.</summary>
    public double? Share => IsBehind && watch.Elapsed > Long ? Volatile.Read(ref share) : null;

    /// <inheritdoc />
    public Action? Ready { get; set; }

    /// <summary>Asks for that of one; that of an older one is not worth ending.</summary>
    /// <param name="of">What to work it out of.</param>
    public void Want(TOf of)
    {
        if (ReferenceEquals(of, wanted) && !isStopped)
        {
            return;
        }

        wanted = of;
        isStopped = false;
        if (isRunning)
        {
            stop.Cancel();
            return;
        }

        Begin();
    }

    /// <summary>Stops what is being worked out, until it is asked for again.</summary>
    public void Stop()
    {
        if (IsBehind)
        {
            isStopped = true;
            stop.Cancel();
        }
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
        Steps steps = new(stop.Token, Said);
        share = 0;
        watch.Restart();
        _ = ShowLong(steps.Stop);
        _ = Task.Run(
            () =>
            {
                try
                {
                    T made = work(of, steps);
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

    // a bar comes up by itself once it takes long
    private async Task ShowLong(CancellationToken token)
    {
        await Task.Delay(Long, token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!token.IsCancellationRequested)
        {
            onScreen(() => Ready?.Invoke());
        }
    }

    // told often and shown seldom: a screen is drawn anew for a step that can be seen
    private void Said(double done)
    {
        const double visible = 0.02;
        if (done >= Volatile.Read(ref share) + visible)
        {
            Volatile.Write(ref share, done);
            onScreen(() => Ready?.Invoke());
        }
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
