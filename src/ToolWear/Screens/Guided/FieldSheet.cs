using System.Collections.Immutable;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Pens;

namespace ToolWear.Screens.Guided;

/// <summary>A described thing that is entered or changed: what is asked and what is right is said by its fields.</summary>
/// <typeparam name="T">The thing.</typeparam>
internal abstract class FieldSheet<T> : GuidedEntry
    where T : class
{
    private const string FirstLettersDo = " Type the first letters, or use the arrows.";

    private readonly FieldTable<T> fields;
    private readonly ImmutableArray<Field<T>> asked;
    private readonly T start;

    /// <summary>Begins.</summary>
    /// <param name="fields">The fields.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="start">The thing as it is, whose answers are offered; of a new one what nobody asks for.</param>
    /// <param name="isNew">Whether it is a new one, so that its name is asked.</param>
    protected FieldSheet(FieldTable<T> fields, Sitting sitting, T start, bool isNew)
        : base(new GuidedLine([.. AskedOf(fields, isNew).Select(field => Ask(field, sitting.Shop))]))
    {
        (this.fields, this.start, Sitting, IsNew) = (fields, start, sitting, isNew);
        asked = AskedOf(fields, isNew);
        if (!isNew)
        {
            Offer(start, [.. asked.Select(field => field.Name)]);
        }
    }

    /// <summary>Whether it is a new one.</summary>
    public bool IsNew { get; }

    /// <summary>The thing that was entered; null before.</summary>
    public T? Made { get; private set; }

    /// <summary>The sitting.</summary>
    protected Sitting Sitting { get; }

    /// <summary>The thing by the answers so far; what is faulty in them is as it was before.</summary>
    protected T SoFar => Read(static _ => { });

    /// <summary>The name of the open field.</summary>
    protected string Open => asked[Guided.At].Name;

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        T thing = Read(fault => Refuse(read, fault));
        if (read.Refusal is null && (fields.Check(thing) ?? FaultIn(thing, sitting.Shop)) is { } fault)
        {
            Refuse(read, fault);
        }

        if (read.Refusal is not null || !Record(thing))
        {
            return false;
        }

        Made = thing;
        if (Said(thing) is { } said)
        {
            sitting.Say(said, Ink.Done);
        }

        return true;
    }

    /// <summary>An answer, as it is typed where its question is open.</summary>
    /// <param name="name">The field's name.</param>
    /// <returns>The answer; empty where there is none.</returns>
    protected string Answer(string name) =>
        Open == name ? Guided.Line.Text.Trim() : Guided[asked.IndexOf(fields[name])].Trim();

    /// <summary>Offers an answer.</summary>
    /// <param name="name">The field's name.</param>
    /// <param name="answer">The answer.</param>
    protected void Offer(string name, string answer) => Guided.Offer(asked.IndexOf(fields[name]), answer);

    /// <summary>Offers what a thing has.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="names">The fields' names.</param>
    protected void Offer(T thing, params ImmutableArray<string> names)
    {
        foreach (string name in names)
        {
            Offer(name, fields[name].Offer(thing, Sitting.Units));
        }
    }

    /// <summary>What is wrong with a thing in this shop.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="shop">The shop.</param>
    /// <returns>The fault; null where there is none.</returns>
    protected virtual FieldFault? FaultIn(T thing, Shop shop) => null;

    /// <summary>What is said of a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A sentence.</returns>
    protected virtual string Why(FieldFault fault) => fault.Sentence;

    /// <summary>Records it.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>True where it is on the disk, or is recorded later.</returns>
    protected virtual bool Record(T thing) => thing is not LedgerEntry entry || Sitting.Record(entry);

    /// <summary>What is said once it is entered.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>A sentence; null where the screen says it.</returns>
    protected virtual string? Said(T thing) => null;

    private T Read(Action<FieldFault> fault) =>
        fields.Read(
            start,
            field => asked.IndexOf(field) is >= 0 and var at ? Guided[at].Trim() : null,
            new(Sitting.Units, Sitting.Today),
            fault
        );

    private void Refuse(AnswersRead read, FieldFault fault) =>
        read.Refuse(Math.Max(0, asked.ToList().FindIndex(field => field.Name == fault.Field)), Why(fault));

    // the name of what there is stays: under another it would be another thing
    private static ImmutableArray<Field<T>> AskedOf(FieldTable<T> fields, bool isNew) =>
        [.. fields.Asked.Where(field => isNew || !field.IsKey)];

    private static Question Ask(Field<T> field, Shop shop)
    {
        ImmutableArray<string> choices = field.Words.IsEmpty ? KeptNames.In(shop, field.Like) : field.Words;
        return new(field.Asked, (Sentence(field.Meaning) + (choices.IsEmpty ? "" : FirstLettersDo)).Trim(), choices);
    }

    private static string Sentence(string meaning) =>
        meaning.Length == 0 ? "" : $"{char.ToUpperInvariant(meaning[0])}{meaning[1..]}.";
}
