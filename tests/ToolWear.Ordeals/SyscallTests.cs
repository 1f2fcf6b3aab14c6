using ToolWear.Ordeals.Syscalls;

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

    private static void MustTrace()
    {
        if (Strace.Missing is { } reason)
        {
            Assert.Skip(reason + ": nothing is recorded and nothing made to fail");
        }
    }
}
