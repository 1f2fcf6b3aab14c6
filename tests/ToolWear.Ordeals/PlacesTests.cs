using System.Diagnostics;
using ToolWear.Ordeals.Processes;

namespace ToolWear.Ordeals;

/// <summary>The program writes into the shop's folder and where it is told to, and nowhere else.</summary>
public sealed class PlacesTests
{
    [Fact]
    public void Nothing_is_written_but_in_the_data_folder_and_where_the_command_line_says()
    {
        using TemporaryFolder folder = new();
        World world = new(folder.Path, hasDataFolder: true);
        world.Work();
        Assert.Equal(
            [
                "data/toolwear/shop.db",
                "data/toolwear/shop.db-lock",
                "data/toolwear/shop.db.backups",
                "data/toolwear/shop.db.journal",
                "data/toolwear/shop.db.lock",
                "named/wear.csv",
            ],
            world.Written()
        );
    }

    [Fact]
    public void Without_a_named_data_folder_the_shop_lies_in_the_usual_one_of_the_home()
    {
        using TemporaryFolder folder = new();
        World world = new(folder.Path, hasDataFolder: false);
        world.Run("add-tool", "R3", "--form", "drift");
        string usual = OperatingSystem.IsMacOS() ? "home/Library/Application Support" : "home/.local/share";
        Assert.All(
            world.Written(),
            path => Assert.StartsWith(usual + "/toolwear/shop.db", path, StringComparison.Ordinal)
        );
        Assert.NotEmpty(world.Written());
    }

    /// <summary>A home, a data folder, a temporary folder and a current folder of their own.</summary>
    private sealed class World
    {
        private readonly string root;
        private readonly bool hasDataFolder;

        public World(string root, bool hasDataFolder)
        {
            this.root = root;
            this.hasDataFolder = hasDataFolder;
            foreach (string each in new[] { "home", "data", "temporary", "current", "named" })
            {
                Directory.CreateDirectory(Path.Combine(root, each));
            }
        }

        /// <summary>An evening and the morning after, and a demo that nobody keeps and that finds no terminal.</summary>
        public void Work()
        {
            Run("add-tool", "R3", "--form", "drift", "--place", "rough", "--gauge", "width,smaller,60,14.0,12.8,");
            Run("heats", "R3", "6");
            Run("close-session");
            Run("measure", "R3", "width", "13.7");
            Run("rack", "--as", "html");
            Run("export-history", Path.Combine(root, "named", "wear.csv"));
            Assert.Equal(2, Exit("demo"));
        }

        public void Run(params string[] arguments) => Assert.Equal(0, Exit(arguments));

        /// <summary>What lies in the folders; of folders in the data folder only the name.</summary>
        public string[] Written() =>
            [
                .. Directory
                    .EnumerateFiles(root, "*", SearchOption.AllDirectories)
                    .Select(path => Path.GetRelativePath(root, path).Replace('\\', '/'))
                    .Select(path =>
                        path.Contains(".backups/", StringComparison.Ordinal) ? path[..path.LastIndexOf('/')] : path
                    )
                    .Distinct()
                    .Order(StringComparer.Ordinal),
            ];

        private int Exit(params string[] arguments)
        {
            ProcessStartInfo start = new(Programs.ToolWear, arguments)
            {
                WorkingDirectory = Path.Combine(root, "current"),
                UseShellExecute = false,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            start.Environment["HOME"] = Path.Combine(root, "home");
            start.Environment["TMPDIR"] = Path.Combine(root, "temporary");
            start.Environment.Remove("XDG_DATA_HOME");
            if (hasDataFolder)
            {
                start.Environment["XDG_DATA_HOME"] = Path.Combine(root, "data");
            }

            using Process process = Process.Start(start)!;
            process.StandardInput.Close();
            _ = process.StandardOutput.ReadToEndAsync();
            _ = process.StandardError.ReadToEndAsync();
            Assert.True(process.WaitForExit(60_000), $"{string.Join(' ', arguments)} does not end");
            return process.ExitCode;
        }
    }
}
