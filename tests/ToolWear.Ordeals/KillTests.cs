using ToolWear.Ordeals.Kills;

namespace ToolWear.Ordeals;

public sealed class KillTests
{
    /// <summary>A thousand are killed by hand: see RESULTS.md.</summary>
    [Fact]
    public void Nothing_acknowledged_is_lost_by_fifty_kills_of_a_recording_process()
    {
        KillTally tally = Killing.Run(50, seed: 7);

        Assert.Equal((50, 0L), (tally.Kills, tally.Lost));
        Assert.Empty(tally.Wrong);
        Assert.True(tally.InTheMiddle >= 30, tally.ToString());
        Assert.True(tally.Acknowledged >= 100, tally.ToString());
        Assert.Contains(tally.Opened.Keys, how => how.Contains("DocumentsRebuilt", StringComparison.Ordinal));
        Assert.Contains(tally.Opened.Keys, how => how.Contains("TailDropped", StringComparison.Ordinal));
    }
}
