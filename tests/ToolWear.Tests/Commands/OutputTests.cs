using System.IO.Pipes;
using System.Text.Json;

namespace ToolWear.Tests.Commands;

/// <summary>Where results go: streams, pipes, links and files.</summary>
public sealed class OutputTests(DemoFixture demo)
{
    [Theory]
    [InlineData("-")]
    [InlineData("/dev/stdout")]
    public void The_standard_output_gets_the_table_and_nothing_else(string name)
    {
        using TestSite site = new();
        demo.Site.Done("export-history", site.In("wear.csv"));
        Assert.Equal(File.ReadAllText(site.In("wear.csv")), demo.Site.Done("export-history", name));
        Assert.False(File.Exists("-"));
    }

    [Fact]
    public void A_link_is_written_through_and_a_file_keeps_its_rights()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using TestSite site = new();
        const UnixFileMode Shared =
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.OtherRead;
        demo.Site.Done("export-history", site.In("wear.csv"));
        string whole = File.ReadAllText(site.In("wear.csv"));
        File.SetUnixFileMode(site.In("wear.csv"), Shared);
        File.CreateSymbolicLink(site.In("link"), "wear.csv");
        File.CreateSymbolicLink(site.In("ahead"), "later.csv");
        demo.Site.Done("export-history", site.In("link"));
        demo.Site.Done("export-history", site.In("ahead"));
        Assert.Equal("wear.csv", new FileInfo(site.In("link")).LinkTarget);
        Assert.Equal("later.csv", new FileInfo(site.In("ahead")).LinkTarget);
        Assert.Equal(whole, File.ReadAllText(site.In("wear.csv")));
        Assert.Equal(whole, File.ReadAllText(site.In("later.csv")));
        Assert.Equal(Shared, File.GetUnixFileMode(site.In("wear.csv")));
        // what a link leads to is judged as the file itself
        File.WriteAllText(site.In("mine.txt"), "mine");
        File.CreateSymbolicLink(site.In("other"), "mine.txt");
        Assert.Contains("--force", demo.Site.Refused(1, "export-history", site.In("other")), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(site.In("mine.txt")));
    }

    [Fact]
    public void A_link_in_the_folder_of_an_export_is_written_through()
    {
        using TestSite site = new();
        Directory.CreateDirectory(site.In("out"));
        File.CreateSymbolicLink(site.In("out/tools.csv"), "../elsewhere.csv");
        Assert.Contains(
            "written by no export",
            demo.Site.Refused(1, "export", site.In("out")),
            StringComparison.Ordinal
        );
        Assert.False(File.Exists(site.In("elsewhere.csv")));
        demo.Site.Done("export", site.In("out"), "--force");
        demo.Site.Done("export", site.In("out"));
        Assert.Equal("../elsewhere.csv", new FileInfo(site.In("out/tools.csv")).LinkTarget);
        Assert.StartsWith("tool,form,", File.ReadAllText(site.In("elsewhere.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pipe_gets_all_of_it_and_stays_a_pipe()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using TestSite site = new();
        string pipe = site.In("pipe");
        await System.Diagnostics.Process.Start("mkfifo", pipe).WaitForExitAsync(TestContext.Current.CancellationToken);
        Task<string> got = Task.Run(() => File.ReadAllText(pipe), TestContext.Current.CancellationToken);
        demo.Site.Done("export-history", pipe);
        Assert.Equal(demo.Site.Done("export-history", "-"), await got);
        Assert.Equal([pipe], Directory.GetFiles(site.Folder));
    }

    // what a shell makes of >(...)
    [Fact]
    public async Task A_pipe_without_a_name_gets_all_of_it()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using AnonymousPipeServerStream reading = new(PipeDirection.In);
        using StreamReader reader = new(reading);
        Task<string> got = reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        string name = $"/dev/fd/{reading.ClientSafePipeHandle.DangerousGetHandle()}";
        demo.Site.Done("export-history", name);
        Assert.Contains("no plain file", demo.Site.Refused(1, "import", name), StringComparison.Ordinal);
        reading.DisposeLocalCopyOfClientHandle();
        Assert.Equal(demo.Site.Done("export-history", "-"), await got);
    }

    [Fact]
    public void A_device_that_is_full_is_told_and_ends_with_1()
    {
        if (OperatingSystem.IsLinux())
        {
            Assert.Contains("space", demo.Site.Refused(1, "export-history", "/dev/full"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_whole_shop_is_one_document_that_says_what_the_CSV_set_says()
    {
        using TestSite site = new();
        using JsonDocument document = JsonDocument.Parse(demo.Site.Done("export", "-", "--as", "json"));
        demo.Site.Done("export", site.In("out"));
        foreach (string file in Directory.GetFiles(site.In("out"), "*.csv"))
        {
            List<List<string>> csv = CsvCells.Of(File.ReadAllText(file));
            JsonElement rows = document.RootElement.GetProperty(
                Path.GetFileNameWithoutExtension(file).Replace('-', '_')
            );
            Assert.Equal(csv.Count - 1, rows.GetArrayLength());
            foreach ((List<string> cells, JsonElement row) in csv.Skip(1).Zip(rows.EnumerateArray()))
            {
                Assert.Equal(csv[0], row.EnumerateObject().Select(member => member.Name));
                Assert.Equal(
                    cells,
                    row.EnumerateObject()
                        .Zip(cells)
                        .Select(each =>
                            IsSame(each.First.Value, each.Second) ? each.Second : each.First.Value.ToString()
                        )
                );
            }
        }
    }

    private static bool IsSame(JsonElement value, string cell) =>
        value.ValueKind == JsonValueKind.Number
            ? value.GetDouble() == double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture)
            : (value.GetString() ?? "") == cell;

    [Fact]
    public void Semicolons_bring_decimal_commas_and_go_with_csv_alone()
    {
        string points = demo.Site.Done("export-history", "-");
        string commas = demo.Site.Done("export-history", "-", "--semicolon");
        Assert.Equal(
            points.Split('\n').Select(line => line.Split(',').Length),
            commas.Split('\n').Select(line => line.Split(';').Length)
        );
        Assert.Contains(";23,9;0,5;", commas, StringComparison.Ordinal);
        Assert.Contains("--as csv", demo.Site.Refused(2, "rack", "--semicolon"), StringComparison.Ordinal);
        Assert.Contains("--as csv", demo.Site.Refused(2, "export", "x", "--semicolon"), StringComparison.Ordinal);
    }
}
