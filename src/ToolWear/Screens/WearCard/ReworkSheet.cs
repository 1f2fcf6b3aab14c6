using ToolWear.Core.Fields;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Results.Tools;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.WearCard;

/// <summary>What was done to a tool; what its open finding asks for is offered, and stands below.</summary>
internal sealed class ReworkSheet : FieldSheet<ToolReworked>
{
    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="what">What was done, where that is known already; else what a finding asks for is offered.</param>
    public ReworkSheet(Sitting sitting, ToolInShop tool, Rework? what = null)
        : base(
            EventFields.Reworks,
            sitting,
            EventFields.Reworks.Blank with
            {
                Tool = tool.Mark,
                On = sitting.Today,
            },
            isNew: true
        )
    {
        Heading = $"What was done to {tool.Mark}";
        OpenFinding? open = LookedOver.Of(sitting.Shop, tool).Open.FirstOrDefault(each => each.Next is not null);
        Offer("what", ToolReworked.WhatWords.Word(what ?? open?.Next!.By[0] ?? Rework.Dressed));
        Offer("gauge", open is { Next.Shortens: true } ? Core.Tools.ToolForm.Overall : "");
        Guided.Go(what is null ? 0 : 1);
        Below =
            $"{(open is null ? "" : $"{FindingWords.Sentence(open.Words)} {FindingWords.Sentence(open.How)}\n")}{Cautions.RestoringCautions}";
    }

    /// <inheritdoc />
    public override string Heading { get; }

    /// <inheritdoc />
    public override string Below { get; }

    /// <inheritdoc />
    protected override string Said(ToolReworked thing) =>
        Sitting.Shop.TryFind(thing.Tool, out ToolInShop? tool) && LookedOver.Of(Sitting.Shop, tool).Forbids is { } still
            ? $"{thing.Tool}: {ToolReworked.WhatWords.Word(thing.What)}, but still {still.Words}: {still.How}."
            : $"{thing.Tool}: {ToolReworked.WhatWords.Word(thing.What)}. Look it over before it is used.";
}
