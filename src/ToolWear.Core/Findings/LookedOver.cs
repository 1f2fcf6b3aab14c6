using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Findings;

/// <summary>A finding that is not done with yet.</summary>
/// <param name="Found">The finding.</param>
/// <param name="Rule">What follows from it.</param>
/// <param name="Done">How many of the rule's steps are done.</param>
public sealed record OpenFinding(ToolLookedOver Found, FindingRule Rule, int Done)
{
    /// <summary>What has to be done next; null where nothing helps, or a sound look is enough.</summary>
    public BeforeUse? Next => Done < Rule.Steps.Length ? Rule.Steps[Done] : null;

    /// <summary>What to do, as an order without a full stop.</summary>
    public string How => Next?.How ?? Rule.Else;

    /// <summary>What was found, where, when and by whom.</summary>
    public string Words =>
        $"found {ToolLookedOver.FindingWords.Word(Found.Finding)}"
        + (Found.Part is { } part ? $" at the {ToolLookedOver.PartWords.Word(part)}" : "")
        + $" on {Found.On:yyyy-MM-dd}"
        + (Found.By is { } by ? $" by {by}" : "");
}

/// <summary>What looking a tool over has come to, in the order of its history.</summary>
/// <param name="Open">What was found and is not done with, the worst first.</param>
/// <param name="Last">The last finding, null where it was never looked over.</param>
/// <param name="SoundSinceHeats">Whether it was found sound since its last heats, or is new and has worked none; and since
/// it was mended.</param>
public sealed record LookedOver(ImmutableArray<OpenFinding> Open, ToolLookedOver? Last, bool SoundSinceHeats)
{
    /// <summary>Its last return from a loan after which nobody found it sound; null where there is none.</summary>
    public ToolTakenBack? BackFromLoan { get; private init; }

    /// <summary>The last rework that did away with a finding, after which nobody found it sound; null where there is none.</summary>
    public ToolReworked? Mended { get; private init; }

    /// <summary>The finding since which its sizes say nothing of what is left, mended or not; null where they do.</summary>
    public OpenFinding? Unread { get; private init; }

    /// <summary>The worst finding for which it may not be used; null where there is none.</summary>
    public OpenFinding? Forbids => Open.FirstOrDefault(each => each.Rule.Forbids);

    /// <summary>Reads a tool's history.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="tool">The tool.</param>
    /// <returns>What it has come to.</returns>
    public static LookedOver Of(Shop shop, ToolInShop tool)
    {
        LookedOver seen = new([], null, SoundSinceHeats: tool.Tool.Start.As == StartedAs.New);
        SteelClass steel = SteelClasses.Of(tool.Tool.Steel);
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
                    : before.After(each.Entered.What, steel)
        );
    }

    private LookedOver After(LedgerEntry what, SteelClass steel) =>
        what switch
        {
            HeatsWorked => this with { SoundSinceHeats = false },
            ToolTakenBack back => this with { SoundSinceHeats = false, BackFromLoan = back },
            ToolReworked rework => Reworked(rework),
            ToolMeasured => Measured(),
            ToolLookedOver { Finding: Finding.Sound } sound => Sound(sound),
            ToolLookedOver found => Found(found, steel),
            _ => this,
        };

    private LookedOver Reworked(ToolReworked rework)
    {
        OpenFinding[] after =
        [
            .. Open.Select(each => each.Next?.IsDoneBy(rework) == true ? each with { Done = each.Done + 1 } : each),
        ];
        LookedOver mended = Open.SequenceEqual(after)
            ? this
            : this with
            {
                Open = [.. after.Where(each => each.Next is not null || each.Rule.Steps.IsEmpty)],
                SoundSinceHeats = false,
                Mended = rework,
            };
        return rework.After is null ? mended : mended.Measured();
    }

    // what is read while a finding is open says nothing of the tool as it will be
    private LookedOver Measured() =>
        Open.Any(each => each.Rule.Wear != WearSays.Stays) ? this : this with { Unread = null };

    private LookedOver Sound(ToolLookedOver sound) =>
        this with
        {
            Open = [.. Open.Where(each => each.Rule.Forbids)],
            Last = sound,
            SoundSinceHeats = true,
            BackFromLoan = null,
            Mended = null,
        };

    private LookedOver Found(ToolLookedOver found, SteelClass steel)
    {
        OpenFinding open = new(found, FindingTable.Of(found.Finding, found.Part, steel), 0);
        return this with
        {
            Open =
            [
                .. Open.Where(each => (each.Found.Finding, each.Found.Part) != (found.Finding, found.Part))
                    .Append(open)
                    .OrderBy(each => each.Rule.Verdict),
            ],
            Last = found,
            SoundSinceHeats = false,
            // a crack stays, whatever else is found after it
            Unread = open.Rule.Wear == WearSays.Stays || Unread?.Rule.Wear > open.Rule.Wear ? Unread : open,
        };
    }
}
