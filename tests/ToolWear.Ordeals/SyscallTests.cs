using ToolWear.Ordeals.Syscalls;
using ToolWear.Ordeals.Writers;

namespace ToolWear.Ordeals;

/// <summary>A sample of what is done by hand at full length: see RESULTS.md.</summary>
public sealed class SyscallTests
{
    [Theory]
    [InlineData("heats")]
    [InlineData("restore without documents")]
    [InlineData("first start in a new home")]
    public void Whatever_a_crash_leaves_of_a_deed_holds_what_was_acknowledged(string name)
    {
        MustTrace();
        Replay replay = new(seed: 5);

        replay.Run(Deed.All.Single(deed => deed.Name == name), some: 1, documents: 2);

        Assert.Empty(replay.Wrong);
        Assert.True(replay.States >= 10 && replay.Strict >= 2, replay.ToString());
    }

    [Theory]
    [InlineData("heats", 3)]
    [InlineData("backup", 4)]
    public void A_disk_that_refuses_is_never_said_to_have_taken_an_entry(string name, int every)
    {
        MustTrace();
        Faults faults = new();

        faults.Run(Deed.All.Single(deed => deed.Name == name), ["EIO"], every);

        Assert.True(faults.Wrong == 0 && faults.Tried > faults.Missed, faults.ToString());
    }

    [Theory]
    [InlineData((int)Trouble.LockDeleted)]
    [InlineData((int)Trouble.TwoLinks)]
    public void Many_writers_lose_nothing_that_they_were_told_is_recorded(int trouble)
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows deletes no file that is open");
        }

        ManyWriters many = new((Trouble)trouble);

        many.Run(writers: 4, entries: 3);

        Assert.Equal((0, 0), (many.Lost, many.Wrong));
        Assert.Equal(12, many.Told.Count + many.Told.Refused);
    }

    [Fact]
    public void Two_windows_and_two_loops_of_commands_make_one_shop()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("a pseudo-terminal by the numbers of Linux");
        }

        TwoWindows two = new(entries: 4, kills: 1, delayMs: 0);

        two.Run();

        Assert.True(two.Lost == 0 && two.Wrong.Count == 0, two.ToString());
        Assert.All(two.SeenAfterMs, seen => Assert.InRange(seen, 0, TwoWindows.SeenWithinMs));
    }

    private static void MustTrace()
    {
        if (Strace.Missing is { } reason)
        {
            Assert.Skip(reason + ": nothing is recorded and nothing made to fail");
        }
    }
}
