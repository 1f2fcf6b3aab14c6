namespace ToolWear.Ordeals.Processes;

/// <summary>A folder of one test, gone at its end.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("toolwear-ordeal-").FullName;

    /// <summary>A path in it.</summary>
    public string In(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
