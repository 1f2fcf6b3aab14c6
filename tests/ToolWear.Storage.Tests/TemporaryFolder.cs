namespace ToolWear.Storage.Tests;

/// <summary>A folder of this test alone, gone at its end.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("toolwear-test-").FullName;

    internal StorePaths Store => new(System.IO.Path.Combine(Path, "shop.db"));

    internal string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
