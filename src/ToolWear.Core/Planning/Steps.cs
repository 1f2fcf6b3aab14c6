using System.Runtime.InteropServices;

namespace ToolWear.Core.Planning;

/// <summary>Lets long work be watched and stopped; the default does neither.</summary>
/// <param name="Stop">Stops it between two steps.</param>
/// <param name="Done">Is told the share that is done, from 0 to 1; null where nobody watches.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Steps(CancellationToken Stop, Action<double>? Done = null)
{
    /// <summary>A step is done.</summary>
    /// <param name="done">How many are.</param>
    /// <param name="of">How many there are, above zero.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public void At(int done, int of)
    {
        Stop.ThrowIfCancellationRequested();
        Done?.Invoke(done / (double)of);
    }
}
