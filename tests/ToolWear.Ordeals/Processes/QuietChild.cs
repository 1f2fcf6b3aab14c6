using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Ordeals.Kills;
using ToolWear.Storage.Disks;

namespace ToolWear.Ordeals.Processes;

/// <summary>The child that does a shop's whole work by commands, and then says what of the network it has touched.</summary>
internal static class QuietChild
{
    /// <summary>Does the work.</summary>
    /// <param name="folder">An empty folder.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string folder)
    {
        string Path(string name) => System.IO.Path.Combine(folder, name);
        string[] gauge = ["--gauge", "width,smaller,60,14.0,12.8,"];
        string[][] lines =
        [
            ["add-tool", "R3", "--form", "drift", .. gauge],
            ["heats", "R3", "2"],
            ["close-session"],
            ["measure", "R3", "width", "13.8"],
            ["rack", "--as", "json"],
            ["card", "R3"],
            ["export", Path("out")],
            ["import", Path("out"), "--store", Path("other.db")],
            ["backup", Path("copy")],
            ["restore", Path("copy"), "--yes"],
            ["check"],
            ["section", "round", "--d", "20"],
            ["--help"],
        ];
        using StringWriter said = new();
        Site site = KilledRecorder.SiteOf(new RealDisk(), said) with { UsualStore = Path("shop.db") };
        foreach (string[] line in lines)
        {
            if (Verbs.Run(site, line) != 0)
            {
                Console.Error.WriteLine(string.Join(' ', line) + ": " + said);
                return 1;
            }
        }

        foreach (string touched in Network.TouchedBy(Environment.ProcessId))
        {
            Console.WriteLine(touched);
        }

        return 0;
    }
}
