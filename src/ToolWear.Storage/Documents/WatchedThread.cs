using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ToolWear.Storage.Documents;

/// <summary>A thread that does steps one after the other for somebody who will not wait for ever.</summary>
/// <remarks>A rotten database can send its library round in circles, and a thread cannot be stopped: it is left behind.</remarks>
[SuppressMessage(
    "Usage",
    "CA2213:Disposable fields should be disposed",
    Justification = "the thread disposes of its own queue when it is done"
)]
internal sealed class WatchedThread : IDisposable
{
    /// <summary>How long a step may go on without a sign of life, where nobody says otherwise.</summary>
    internal static readonly TimeSpan UsualLimit = TimeSpan.FromSeconds(20);

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(20);

    private readonly BlockingCollection<(Action Step, TaskCompletionSource Done)> _work = [];
    private readonly TimeSpan _limit;
    private volatile bool _isStuck;

    // when the step at hand began or gave its last sign of life, 0 between steps
    private long _since;

    /// <summary>Starts the thread.</summary>
    /// <param name="limit">How long a step may go on without a sign of life.</param>
    internal WatchedThread(TimeSpan limit)
    {
        _limit = limit;
        new Thread(Work) { IsBackground = true, Name = "documents" }.Start();
    }

    /// <summary>Whether a step did not end; then none is done any more.</summary>
    internal bool IsStuck => _isStuck;

    /// <summary>The step at hand gives a sign of life.</summary>
    internal void Beat() => Volatile.Write(ref _since, Environment.TickCount64);

    /// <summary>Has a step done behind all others, and does not wait for it.</summary>
    /// <param name="step">The step.</param>
    /// <returns>What ends with it: as it threw, or cancelled where it is not done.</returns>
    internal Task Post(Action step)
    {
        var done = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        _work.Add((step, done));
        return done.Task;
    }

    /// <summary>Has a step done and waits for it.</summary>
    /// <param name="step">The step.</param>
    /// <returns>False where it threw or did not end.</returns>
    internal bool TryRun(Action step) => Wait(Post(step));

    /// <summary>Waits for a step.</summary>
    /// <param name="step">What <see cref="Post"/> gave.</param>
    /// <returns>False where it threw or did not end.</returns>
    internal bool Wait(Task step)
    {
        while (!_isStuck && Task.WaitAny([step], Look) < 0)
        {
            long since = Volatile.Read(ref _since);
            _isStuck = since != 0 && Environment.TickCount64 - since > _limit.TotalMilliseconds;
        }
        return step.IsCompletedSuccessfully;
    }

    /// <summary>Lets the thread end behind the last step.</summary>
    public void Dispose() => _work.CompleteAdding();

    [SuppressMessage(
        "Design",
        "CA1031:Do not catch general exception types",
        Justification = "a rotten database throws anything; whoever waits for the step is told, and the thread has to live"
    )]
    private void Work()
    {
        foreach ((Action step, TaskCompletionSource done) in _work.GetConsumingEnumerable())
        {
            if (_isStuck)
            {
                // another may hold the files by now
                done.SetCanceled();
                continue;
            }
            try
            {
                Beat();
                step();
                done.SetResult();
            }
            catch (Exception e)
            {
                done.SetException(e);
            }
            Volatile.Write(ref _since, 0);
        }
        _work.Dispose();
    }
}
