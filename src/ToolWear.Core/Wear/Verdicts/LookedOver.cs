using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;

namespace ToolWear.Core.Wear.Verdicts;

/// <summary>What looking a tool over has come to, in the order of its history.</summary>
/// <param name="Ending">The finding that takes it out, null for none.</param>
/// <param name="Dressing">The finding that wants dressing first, null for none.</param>
/// <param name="Last">The last finding, null where it was never looked over.</param>
/// <param name="SoundSinceHeats">Whether it was found sound since its last heats, or has worked none.</param>
public sealed record LookedOver(
    ToolLookedOver? Ending,
    ToolLookedOver? Dressing,
    ToolLookedOver? Last,
    bool SoundSinceHeats
)
{
    /// <summary>Its last return from a loan after which nobody found it sound; null where there is none.</summary>
    public ToolTakenBack? BackFromLoan { get; private init; }

    /// <summary>Reads a tool's history.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>What it has come to.</returns>
    public static LookedOver Of(Shop shop, ToolInShop tool)
    {
        LookedOver seen = new(null, null, null, SoundSinceHeats: tool.Tool.Start.As == Tools.StartedAs.New);
        ImmutableArray<(HistoryPlace Place, Entered Entered)> history = shop.HistoryOf(tool);
        // a finding of the day of the return that was entered after it was made after it, wherever a session puts it
        long sound = history.Aggregate(
            0L,
            (last, each) =>
                each.Entered.What is ToolLookedOver { Finding: Finding.Sound }
                    ? Math.Max(last, each.Entered.Number)
                    : last
        );
        return history.Aggregate(
            seen,
            (before, each) =>
                each.Entered.What is ToolTakenBack && each.Entered.Number < sound
                    ? before
                    : before.After(each.Entered.What)
        );
    }

    private LookedOver After(LedgerEntry what) =>
        what switch
        {
            HeatsWorked => this with { SoundSinceHeats = false },
            ToolTakenBack back => this with { SoundSinceHeats = false, BackFromLoan = back },
            ToolReworked rework => Reworked(rework),
            ToolLookedOver finding => Found(finding),
            _ => this,
        };

    /// <summary>Hardening again mends a soft or glass-hard tool; nothing mends a crack or a break. Any rework dresses.</summary>
    private LookedOver Reworked(ToolReworked rework) =>
        this with
        {
            Dressing = null,
            Ending =
                rework.What == Rework.Rehardened && Ending?.Finding is Finding.Soft or Finding.GlassHard
                    ? null
                    : Ending,
        };

    private LookedOver Found(ToolLookedOver found)
    {
        bool isSound = found.Finding == Finding.Sound;
        LookedOver after = this with
        {
            Last = found,
            SoundSinceHeats = isSound,
            BackFromLoan = isSound ? null : BackFromLoan,
        };
        return found.Finding switch
        {
            Finding.Sound => after with { Dressing = null },
            // a crack outlasts a finding of soft: it cannot be mended
            Finding.Cracked or Finding.Broken => after with { Ending = found },
            Finding.Soft or Finding.GlassHard => after with { Ending = Ending ?? found },
            Finding.Mushroomed or Finding.Chipped or Finding.LooseHandle or Finding.PickedUp => after with
            {
                Dressing = found,
            },
            _ => after,
        };
    }
}
