using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ToolWear.Storage.Documents;

/// <summary>A thread that does steps one after the other for somebody who will not wait for ever.</summary>
[SuppressMessage(
    "Usage",
    "CA2213:Disposable fields should be disposed",
    Justification = "the thread disposes of its own queue when it is done"
)]
internal sealed class PatientThread : IDisposable
{
    private readonly BlockingCollection<(Action Step, TaskCompletionSource Done)> _work = [];
    private readonly Patience _patience = new(Patience.Usual);
    private bool _isLost;

    /// <summary>Starts the thread.</summary>
    internal PatientThread() => new Thread(Work) { IsBackground = true, Name = "patient" }.Start();

    /// <summary>Does a step.</summary>
    /// <param name="step">The step.</param>
    /// <returns>False where it threw or did not end; after a step that did not end none is done any more.</returns>
    internal bool TryRun(Action step)
    {
        if (_isLost)
        {
            return false;
        }
        var done = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        _patience.Beat();
        _work.Add((step, done));
        _isLost = !_patience.WaitFor(done.Task);
        _patience.Rest();
        return !_isLost && done.Task.IsCompletedSuccessfully;
    }

    /// <inheritdoc />
    public void Dispose() => _work.CompleteAdding();

    [SuppressMessage(
        "Design",
        "CA1031:Do not catch general exception types",
        Justification = "a rotten source throws anything; whoever asked is told that it gave nothing"
    )]
    private void Work()
    {
        foreach ((Action step, TaskCompletionSource done) in _work.GetConsumingEnumerable())
        {
            try
            {
                step();
                done.SetResult();
            }
            catch (Exception e)
            {
                done.SetException(e);
            }
        }
        _work.Dispose();
    }
}
