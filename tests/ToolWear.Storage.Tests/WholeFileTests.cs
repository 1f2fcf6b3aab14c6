using System.Text;
using ToolWear.Storage.Disks;
using ToolWear.Testing.Disks;
using Xunit;

namespace ToolWear.Storage.Tests;

public sealed class WholeFileTests
{
    private const string Card = CrashingDisk.Folder + "/card.svg";

    [Fact]
    public void Wherever_the_power_is_cut_the_old_file_is_there_or_the_new_one()
    {
        int points = 0;
        for (int at = 1; at <= 5; at++)
        {
            var disk = new CrashingDisk { CutPowerAt = at };
            disk.Put(Card, "old"u8.ToArray());
            Assert.Throws<PowerCutException>(() => WholeFile.Write(disk, Card, "new and longer"u8));
            for (int names = 0; names <= disk.PendingNames; names++)
            {
                for (int bytes = 0; bytes <= 14; bytes++)
                {
                    CrashingDisk dark = disk.AfterPowerCut(new Tear(new FirstBytes(bytes), names));
                    Assert.True(Encoding.UTF8.GetString(dark.Bytes(Card)) is "old" or "new and longer");
                    points++;
                }
            }
        }
        Assert.InRange(points, 100, 1000);
    }

    [Fact]
    public void When_it_returns_the_new_file_stays_through_a_power_cut()
    {
        var disk = new CrashingDisk();
        WholeFile.Write(disk, Card, "new"u8);
        Assert.Equal("new"u8.ToArray(), disk.AfterPowerCut(new Tear(new FirstBytes(0), Names: 0)).Bytes(Card));
    }

    [Fact]
    public void On_a_real_disk_nothing_is_left_beside()
    {
        using var folder = new TemporaryFolder();
        var disk = new RealDisk();
        WholeFile.Write(disk, folder.File("card.svg"), "old"u8);
        WholeFile.Write(disk, folder.File("card.svg"), "new and longer"u8);
        Assert.Equal("new and longer"u8.ToArray(), File.ReadAllBytes(folder.File("card.svg")));
        Assert.Single(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void A_sync_that_the_system_refuses_is_an_error()
    {
        // /dev/full takes no sync: fsync(2) answers EINVAL, which the library's own calls keep to themselves
        Assert.SkipUnless(OperatingSystem.IsLinux(), "only Linux has /dev/full");
        using IDiskFile full = new RealDisk().OpenToWrite("/dev/full");
        IOException refused = Assert.Throws<IOException>(full.Sync);
        Assert.Contains("could not be made durable: Invalid argument", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_moved_into_place_leaves_nothing_beside()
    {
        using var folder = new TemporaryFolder();
        using (WholeFile file = WholeFile.Begin(new RealDisk(), folder.File("card.svg")))
        {
            file.File.Write(0, "half"u8);
            Assert.Single(Directory.GetFiles(folder.Path));
        }
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void A_link_at_the_path_is_replaced_and_what_it_leads_to_stays_as_it_is()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.File("victim"), "mine"u8);
        File.CreateSymbolicLink(folder.File("card.svg"), folder.File("victim"));
        WholeFile.Write(new RealDisk(), folder.File("card.svg"), "card"u8);
        Assert.Equal("mine"u8.ToArray(), File.ReadAllBytes(folder.File("victim")));
        Assert.Null(new FileInfo(folder.File("card.svg")).LinkTarget);
    }

    [Fact]
    public void A_new_file_is_made_where_nothing_stands_and_nowhere_else()
    {
        using var folder = new TemporaryFolder();
        var disk = new RealDisk();
        File.WriteAllBytes(folder.File("there"), "mine"u8);
        File.CreateSymbolicLink(folder.File("dangling"), folder.File("nowhere"));
        Assert.Throws<IOException>(() => disk.Create(folder.File("there")));
        Assert.Throws<IOException>(() => disk.Create(folder.File("dangling")));
        Assert.False(File.Exists(folder.File("nowhere")));
        Assert.Equal("mine"u8.ToArray(), File.ReadAllBytes(folder.File("there")));
    }

    [Fact]
    public void Many_writers_of_one_file_leave_one_of_their_files_whole()
    {
        using var folder = new TemporaryFolder();
        byte[][] files = [.. Enumerable.Range(1, 40).Select(i => new byte[i * 1000])];
        Parallel.ForEach(files, bytes => WholeFile.Write(new RealDisk(), folder.File("card.svg"), bytes));
        Assert.Contains(files, bytes => bytes.Length == new FileInfo(folder.File("card.svg")).Length);
        Assert.Single(Directory.GetFiles(folder.Path));
    }
}
