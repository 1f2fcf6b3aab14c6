using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Pens;
using ToolWear.Results.Tools;

namespace ToolWear.Screens.Guided;

/// <summary>The question what was found on one tool, and where: whatever is pressed speaks of this tool until it is done.</summary>
/// <param name="tool">The tool's number.</param>
internal sealed class LookQuestion(long tool)
{
    private Finding? found;
    private ToolLookedOver? doubted;

    /// <summary>The tool.</summary>
    public long Tool => tool;

    /// <summary>Whether something was recorded, so that Enter goes on.</summary>
    public bool HasAnswer { get; private set; }

    /// <summary>Whether it is asked where the finding is.</summary>
    public bool AsksPart => found is not null;

    /// <summary>What is asked, below each other.</summary>
    public IEnumerable<string> Lines(string mark) =>
        found is { } finding
            ?
            [
                $"{mark}: {ToolLookedOver.FindingWords.Word(finding)}, where?",
                .. FindingTable
                    .PartsOf(finding)
                    .Order()
                    .Select(part => $"{(int)part + 1} {ToolLookedOver.PartWords.Word(part)}"),
                "Enter: nobody knows; then the strictest place counts. Esc: another finding.",
            ]
            :
            [
                HasAnswer
                    ? $"{mark}: anything else? Enter: no, the next tool."
                    : $"{mark}: what was found? Enter: looked over and sound.",
            ];

    /// <summary>Takes a finding.</summary>
    /// <returns>True where the tool is done with.</returns>
    public bool Find(Finding finding, Sitting sitting, string? by)
    {
        ImmutableArray<ToolPart> parts = finding == Finding.Sound ? [] : FindingTable.PartsOf(finding);
        found = parts.Length > 1 ? finding : null;
        return found is null && Record(finding, parts.IsEmpty ? null : parts[0], sitting, by);
    }

    /// <summary>Takes the place of the finding.</summary>
    /// <param name="part">Which, from 0.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="by">Who looks, null where nobody is named.</param>
    public void Place(int part, Sitting sitting, string? by)
    {
        if (found is { } finding && FindingTable.PartsOf(finding).Contains((ToolPart)part))
        {
            _ = Record(finding, (ToolPart)part, sitting, by);
        }
    }

    /// <summary>Sound; of a finding whose place is asked, that nobody knows it; after an answer, no more.</summary>
    /// <returns>True where the tool is done with.</returns>
    public bool Enter(Sitting sitting, string? by) =>
        found is { } finding
            ? Record(finding, null, sitting, by)
            : HasAnswer || Record(Finding.Sound, null, sitting, by);

    /// <summary>Asks for the finding again.</summary>
    /// <returns>True where its place was asked.</returns>
    public bool Back()
    {
        bool asked = AsksPart;
        found = null;
        return asked;
    }

    private bool Record(Finding finding, ToolPart? part, Sitting sitting, string? by)
    {
        ToolLookedOver said = new(sitting.Shop.Tools[tool].Mark, sitting.Today, finding, by, null, part);
        LookingOver deed = LookingOver.Of(sitting.Shop, said);
        if (deed.Doubt is { } doubt && doubted != said)
        {
            doubted = said;
            sitting.Say($"{FindingWords.SaidOtherwise(said.Tool, doubt)} {FindingWords.OnceMore}", Ink.Warn);
            return false;
        }

        if (!sitting.Record(said))
        {
            return false;
        }

        (found, doubted, HasAnswer) = (null, null, true);
        bool isClear =
            finding == Finding.Sound && LookedOver.Of(sitting.Shop, sitting.Shop.Tools[tool]).Forbids is null;
        sitting.Say(FindingWords.Found(sitting.Shop, said, isShort: true), isClear ? Ink.Done : Ink.Warn);
        return finding == Finding.Sound;
    }
}
