using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Fields;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Screens.Guided;
using static ToolWear.Core.Fields.FieldKinds;

namespace ToolWear.Screens.ToolPage;

/// <summary>Something of a tool as it is, and what was wrong.</summary>
/// <typeparam name="T">What.</typeparam>
/// <param name="What">It, as it is.</param>
/// <param name="Why">What was wrong; null where nobody says.</param>
internal sealed record Corrected<T>(T What, string? Why);

/// <summary>Some fields of a tool or of its gauge mark that are corrected; the earlier values stay in the ledger.</summary>
/// <typeparam name="T">What is corrected.</typeparam>
/// <param name="sitting">The sitting.</param>
/// <param name="tool">The tool.</param>
/// <param name="heading">What stands over the screen.</param>
/// <param name="fields">What is asked.</param>
/// <param name="start">It as it is on record.</param>
/// <param name="isNew">Whether it is one more.</param>
/// <param name="with">The tool with it.</param>
internal sealed class CorrectionSheet<T>(
    Sitting sitting,
    ToolInShop tool,
    string heading,
    FieldTable<T> fields,
    T start,
    bool isNew,
    Func<Tool, T, Tool> with
)
    : FieldSheet<Corrected<T>>(
        new FieldTable<Corrected<T>>("", new(fields.Blank, null))
            .Of(fields, c => c.What, (c, v) => c with { What = v })
            .Maybe("why", Note, c => c.Why, (c, v) => c with { Why = v })
            .Means("what was wrong, or nothing", "Why"),
        sitting,
        new(start, null),
        isNew
    )
{
    /// <inheritdoc />
    public override string Heading => $"{tool.Mark}: {heading}";

    /// <inheritdoc />
    protected override FieldFault? FaultIn(Corrected<T> thing, Shop shop) =>
        IsNew && thing.What is GaugeMark { Name: var name } && tool.Tool.Gauge(name) is not null
            ? new("gauge", $"{tool.Mark} has a gauge mark {name} already: change that one")
            : null;

    /// <inheritdoc />
    protected override bool Record(Corrected<T> thing) =>
        Sitting.Record(Correcting.Of(tool, with(tool.Tool, thing.What), thing.Why));

    /// <inheritdoc />
    protected override string Said(Corrected<T> thing) =>
        $"{tool.Mark} is corrected. What it was before stays in the ledger; Bksp undoes it.";
}

/// <summary>The corrections there are, one for each part of a tool.</summary>
internal static class CorrectionSheets
{
    private static readonly FieldTable<Tool> Tool = Some(
        "form",
        "eye",
        "place",
        "section",
        "steel",
        "lot",
        "made_on",
        "started_as",
        "heats_before",
        "heats_before_how"
    );

    private static readonly FieldTable<Tool> Costs = Some(
        "guess_heats",
        "steel_cost",
        "forge_hours",
        "grind_hours",
        "treat_cost",
        "peg",
        "note"
    );

    /// <summary>The corrections.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="tool">The tool; not scrapped.</param>
    /// <returns>What can be corrected or added.</returns>
    public static IEnumerable<ToolDeed> Of(Sitting sitting, ToolInShop tool)
    {
        yield return Correct("correct", "form, eye, place, section, steel, lot, day made, heats before", Tool);
        yield return Correct("costs, peg", "hours, costs, where it hangs, note", Costs);
        foreach (GaugeMark mark in tool.Tool.GaugeMarks)
        {
            yield return Mark($"mark {mark.Name}", "its scrap size, start, distance from the shank mark", mark);
        }

        yield return Mark("another mark", "one more gauge mark", null);

        ToolDeed Correct(string words, string does, FieldTable<Tool> fields) =>
            new(
                words,
                does,
                false,
                () =>
                    new CorrectionSheet<Tool>(
                        sitting,
                        tool,
                        words,
                        fields,
                        tool.Tool,
                        isNew: false,
                        (_, right) => right
                    )
            );

        ToolDeed Mark(string words, string does, GaugeMark? mark) =>
            new(
                words,
                does,
                false,
                () =>
                    new CorrectionSheet<GaugeMark>(
                        sitting,
                        tool,
                        words,
                        GaugeMarkFields.Alone,
                        mark ?? GaugeMarkFields.Alone.Blank,
                        mark is null,
                        (old, right) => Correcting.With(old, mark, right)
                    )
            );
    }

    private static FieldTable<Tool> Some(params ImmutableArray<string> names) =>
        ToolFields.Table with
        {
            All = [.. ToolFields.Table.All.Where(field => names.Contains(field.Name, StringComparer.Ordinal))],
        };
}
