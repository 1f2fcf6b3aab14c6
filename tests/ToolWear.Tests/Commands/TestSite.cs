using Microsoft.Extensions.Time.Testing;
using ToolWear.Commands;
using ToolWear.Storage.Disks;

namespace ToolWear.Tests.Commands;

/// <summary>A program in a folder of its own with a clock that stands still, driven by command lines.</summary>
internal sealed class TestSite : IDisposable
{
    public TestSite(string today = "2026-11-12")
    {
        Folder = Directory.CreateTempSubdirectory("toolwear-test-").FullName;
        Clock = new FakeTimeProvider(DateTimeOffset.Parse(today + "T18:30:00Z", null));
    }

    public string Folder { get; }

    public FakeTimeProvider Clock { get; }

    public string Store => In("shop.db");

    public string In(string name) => Path.Combine(Folder, name);

    /// <summary>Writes a file into the folder and gives its path.</summary>
    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(name))!);
        File.WriteAllText(In(name), text);
        return In(name);
    }

    /// <summary>Runs a command line on the store.</summary>
    public Ran Run(params string[] arguments)
    {
        if (Outside.Program is not null)
        {
            return Outside.Run(this, arguments);
        }

        using StringWriter output = new();
        using StringWriter error = new();
        Site site = new(output, error, Clock, new RealDisk(), () => new string('0', 32), Store, Folder);
        int exit = Verbs.Run(site, arguments);
        // the library names the program by its process, which is the test's here
        return new(
            exit,
            output.ToString().Replace("ToolWear.Tests", "toolwear", StringComparison.Ordinal),
            error.ToString()
        );
    }

    /// <summary>Runs a command line that must succeed.</summary>
    public string Done(params string[] arguments)
    {
        Ran ran = Run(arguments);
        Assert.True(ran.Exit == 0, $"{string.Join(' ', arguments)}: exit {ran.Exit}\n{ran.Output}{ran.Error}");
        return ran.Output;
    }

    /// <summary>Everything that lies in the folder, to see that nothing changed.</summary>
    public Dictionary<string, string> Bytes() =>
        Directory
            .GetFiles(Folder, "*", SearchOption.AllDirectories)
            .ToDictionary(
                path => path,
                path => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))
            );

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>What a command line came to.</summary>
internal sealed record Ran(int Exit, string Output, string Error);
