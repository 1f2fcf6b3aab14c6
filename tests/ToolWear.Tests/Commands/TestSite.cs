using System.Collections.Concurrent;
using Microsoft.Extensions.Time.Testing;
using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Storage.Disks;

namespace ToolWear.Tests.Commands;

/// <summary>A program in a folder of its own with a clock that stands still, driven by command lines.</summary>
internal sealed class TestSite : IDisposable
{
    private static readonly ConcurrentDictionary<DateTimeOffset, Lazy<(string Name, byte[] Bytes)[]>> Demos = new();

    public TestSite(string today = "2026-11-12")
    {
        Folder = Directory.CreateTempSubdirectory("toolwear-test-").FullName;
        Clock = new FakeTimeProvider(DateTimeOffset.Parse(today + "T18:30:00Z", null));
    }

    public string Folder { get; }

    public FakeTimeProvider Clock { get; private init; }

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
    public Ran Run(params string[] arguments) => Run(80, arguments);

    /// <summary>Runs a command line on a terminal of so many columns.</summary>
    public Ran Run(int width, params string[] arguments)
    {
        if (Outside.Program is not null)
        {
            return Outside.Run(this, arguments);
        }

        using StringWriter output = new();
        using StringWriter error = new();
        Site site = new(output, error, Clock, new RealDisk(), () => new string('0', 32), Store, Folder)
        {
            Width = width,
        };
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

    /// <summary>The demo shop in the store: made once for each moment of the clock, then copied.</summary>
    public void Demo()
    {
        foreach ((string name, byte[] bytes) in Demos.GetOrAdd(Clock.GetUtcNow(), MakeDemo).Value)
        {
            File.WriteAllBytes(In(name), bytes);
        }
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

    private static Lazy<(string Name, byte[] Bytes)[]> MakeDemo(DateTimeOffset now) =>
        new(() =>
        {
            using TestSite site = new() { Clock = new FakeTimeProvider(now) };
            site.Done("demo", "--no-screens", "--store", site.Store);
            return
            [
                .. Directory.GetFiles(site.Folder).Select(path => (Path.GetFileName(path), File.ReadAllBytes(path))),
            ];
        });
}

/// <summary>What a command line came to.</summary>
internal sealed record Ran(int Exit, string Output, string Error);
