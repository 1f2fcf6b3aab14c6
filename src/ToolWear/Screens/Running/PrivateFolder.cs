using ToolWear.Storage.Disks;

namespace ToolWear.Screens.Running;

/// <summary>A folder that only this user can enter, gone when it is disposed of or the process ends.</summary>
internal sealed class PrivateFolder : IDisposable
{
    public PrivateFolder(IDisk disk, string under, string random)
    {
        Path = System.IO.Path.Combine(under, $"toolwear-demo-{random}");
        disk.MakeFolder(Path);
        // after a hang-up the process ends without coming back here
        AppDomain.CurrentDomain.ProcessExit += AtExit;
    }

    public string Path { get; }

    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= AtExit;
        Remove();
    }

    private void AtExit(object? sender, EventArgs e)
    {
        try
        {
            Remove();
        }
        catch (IOException)
        {
            // a file still open elsewhere: the system's own sweeping of its temporary folder gets it
        }
    }

    private void Remove()
    {
        if (Directory.Exists(Path))
        {
            Directory.Delete(Path, recursive: true);
        }
    }
}
