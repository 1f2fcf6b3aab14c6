using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Guided;

/// <summary>A described thing that is entered or changed: what is asked and what is right is said by its fields.</summary>
/// <typeparam name="T">The thing.</typeparam>
internal abstract class FieldSheet<T> : GuidedEntry
    where T : LedgerEntry
{
    private readonly FieldTable<T> fields;
    private readonly ImmutableArray<Field<T>> asked;
    private readonly T? before;

    /// <summary>Begins.</summary>
    /// <param name="fields">The fields.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="before">The thing as it is; null for a new one.</param>
    /// <param name="offered">What is offered of a new one.</param>
    protected FieldSheet(FieldTable<T> fields, Sitting sitting, T? before, T? offered = null)
        : base(new GuidedLine([.. Asked(fields, before).Select(field => Ask(field, sitting.Shop))]))
    {
        this.fields = fields;
        this.before = before;
        asked = Asked(fields, before);
        if ((before ?? offered) is { } thing)
        {
            for (int i = 0; i < asked.Length; i++)
            {
                Guided.Offer(i, asked[i].Offer(thing, sitting.Units));
            }
        }
    }

    /// <summary>The thing that was entered; null before.</summary>
    public T? Made { get; private set; }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        T thing = fields.Read(
            before ?? fields.Blank,
            field => asked.IndexOf(field) is >= 0 and var at ? Guided[at].Trim() : null,
            new(sitting.Units, sitting.Today),
            fault => Refuse(read, fault)
        );
        if (read.Refusal is null && (fields.Check(thing) ?? FaultIn(thing, sitting.Shop)) is { } fault)
        {
            Refuse(read, fault);
        }

        if (read.Refusal is not null || !sitting.Record(thing))
        {
            return false;
        }

        Made = thing;
        sitting.Say(Said(thing), Ink.Done);
        return true;
    }

    /// <summary>Offers an answer.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="answer">The answer.</param>
    protected void Offer(string name, string answer) => Guided.Offer(asked.IndexOf(fields[name]), answer);

    /// <summary>What is said once it is entered.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>A sentence.</returns>
    protected abstract string Said(T thing);

    /// <summary>What is wrong with a new thing in this shop.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="shop">The shop.</param>
    /// <returns>The fault; null where there is none.</returns>
    protected abstract FieldFault? FaultIn(T thing, Shop shop);

    private void Refuse(AnswersRead read, FieldFault fault) =>
        read.Refuse(Math.Max(0, asked.ToList().FindIndex(field => field.Name == fault.Field)), fault.Sentence);

    // the name of what there is stays: under another it would be another thing
    private static ImmutableArray<Field<T>> Asked(FieldTable<T> fields, T? before) =>
        [.. fields.Asked.Where(field => before is null || !field.IsKey)];

    private static Question Ask(Field<T> field, Shop shop) =>
        new(
            field.Asked,
            Words.Sentence(field.Meaning),
            field.Words.IsEmpty ? KeptNames.In(shop, field.Like) : field.Words
        );
}
