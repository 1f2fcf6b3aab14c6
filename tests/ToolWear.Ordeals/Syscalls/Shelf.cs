using ToolWear.Commands;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Storage.Disks;
using ToolWear.Storage.Journal;
using ToolWear.Testing.Generators;

namespace ToolWear.Ordeals.Syscalls;

/// <summary>A folder in which a deed's shop is prepared, and copies of it are made.</summary>
/// <param name="folder">The folder.</param>
internal sealed class Shelf(string folder)
{
    /// <summary>What a store is told here; a document file so torn that reading it does not end is soon given up.</summary>
    public static StoreSettings Settings =>
        Bench.Settings(KilledRecorder.SiteOf(new RealDisk(), TextWriter.Null)) with
        {
            WatchLimit = TimeSpan.FromSeconds(3),
        };

    /// <summary>The mark of the tool in every shop here.</summary>
    public static ToolMark Tool { get; } = Texts.MarkOf("R3");

    public string In(string name) => Path.Combine(folder, name);

    /// <summary>Runs commands on the shop, which must succeed.</summary>
    /// <param name="lines">The command lines.</param>
    public void Run(params string[][] lines)
    {
        foreach (string[] line in lines)
        {
            using StringWriter said = new();
            Site site = KilledRecorder.SiteOf(new RealDisk(), said) with { UsualStore = In("shop.db") };
            Assert.True(Verbs.Run(site, line) == 0, $"{string.Join(' ', line)}: {said}");
        }
    }

    /// <summary>Makes a folder what a disk shows.</summary>
    /// <param name="target">The folder; what was in it goes.</param>
    /// <param name="files">Files by path; folders end with a slash.</param>
    public static void Put(string target, IReadOnlyDictionary<string, byte[]> files)
    {
        if (Directory.Exists(target))
        {
            Directory.Delete(target, recursive: true);
        }

        Directory.CreateDirectory(target);
        foreach ((string name, byte[] bytes) in files)
        {
            string path = Path.Combine(target, name);
            if (name.EndsWith('/'))
            {
                Directory.CreateDirectory(path);
            }
            else
            {
                File.WriteAllBytes(path, bytes);
            }
        }
    }
}
