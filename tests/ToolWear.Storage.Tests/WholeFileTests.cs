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
}
