using ToolWear.Ordeals.Rot;

namespace ToolWear.Ordeals;

public sealed class RotTests
{
    /// <summary>Every bit is flipped by hand: see RESULTS.md.</summary>
    [Fact]
    public void A_flipped_bit_of_the_journal_is_refused_by_its_line_mended_or_harmless()
    {
        JournalFlips flips = new();
        Random chance = new(20261125);
        for (int i = 0; i < 400; i++)
        {
            flips.Flip(chance.Next(flips.Bits), mend: i % 20 == 0);
        }

        // the last line end alone can rot without a loss
        for (int bit = flips.Bits - 8; bit < flips.Bits; bit++)
        {
            flips.Flip(bit, mend: false);
        }

        Assert.Empty(flips.Wrong);
        Assert.Equal((408, 400, 8), (flips.Flipped, flips.Refused, flips.Same));
        Assert.Equal(20, flips.Mended);
    }
}
