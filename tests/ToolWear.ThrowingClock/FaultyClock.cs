namespace ToolWear.ThrowingClock;

/// <summary>The time, until a file exists.</summary>
/// <param name="file">The file.</param>
internal sealed class FaultyClock(string file) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() =>
        File.Exists(file) ? throw new InvalidOperationException("the clock of this test is broken") : base.GetUtcNow();
}
