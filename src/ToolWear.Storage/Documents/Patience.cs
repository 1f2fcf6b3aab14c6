namespace ToolWear.Storage.Documents;

/// <summary>Watches work that may never end: a rotten database can send its library round in circles.</summary>
/// <param name="limit">How long the work may go on without a sign of life.</param>
internal sealed class Patience(TimeSpan limit)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(20);
    private long _since;

    /// <summary>How long work on documents may go on without a sign of life, where nobody says otherwise.</summary>
    internal static TimeSpan Usual { get; } = TimeSpan.FromSeconds(20);

    /// <summary>Whether the work has gone on too long without a sign of life.</summary>
    internal bool IsOver =>
        Volatile.Read(ref _since) is var since and not 0 && Environment.TickCount64 - since > limit.TotalMilliseconds;

    /// <summary>Work begins, or gives a sign of life.</summary>
    internal void Beat() => Volatile.Write(ref _since, Environment.TickCount64);

    /// <summary>Work has ended.</summary>
    internal void Rest() => Volatile.Write(ref _since, 0);

    /// <summary>Waits until a task is done or patience is over.</summary>
    /// <param name="task">The task.</param>
    /// <returns>True where it is done.</returns>
    internal bool WaitFor(Task task)
    {
        while (Task.WaitAny([task], Look) < 0)
        {
            if (IsOver)
            {
                return false;
            }
        }
        return true;
    }

    /// <summary>Waits until a thread has ended or patience is over.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>True where it has ended.</returns>
    internal bool WaitFor(Thread thread)
    {
        while (!thread.Join(Look))
        {
            if (IsOver)
            {
                return false;
            }
        }
        return true;
    }
}
