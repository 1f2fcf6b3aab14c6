using System.Collections.Immutable;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Fields;

/// <summary>Whether a field may be left out.</summary>
public enum Need
{
    /// <summary>It may.</summary>
    Maybe,

    /// <summary>A file has its column; a cell may be empty.</summary>
    Column,

    /// <summary>It may not.</summary>
    Always,
}

/// <summary>What the shop keeps by name, so that a field can offer those names.</summary>
public enum Kept
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>Eyes.</summary>
    Eyes,

    /// <summary>Handles.</summary>
    Handles,

    /// <summary>Patterns.</summary>
    Patterns,

    /// <summary>Tools, by their marks.</summary>
    Tools,

    /// <summary>The gauge marks of the tool that is named before.</summary>
    GaugeMarks,

    /// <summary>Sessions.</summary>
    Sessions,

    /// <summary>The steels of the bars in the rack.</summary>
    Steels,
}

/// <summary>A field of a described thing: its name, what it means, how it is read and written.</summary>
/// <typeparam name="T">The thing; a value of it never changes, a field gives back another.</typeparam>
public abstract record Field<T>
{
    private protected Field(string name, Need need) => (Name, Need) = (name, need);

    /// <summary>Its name, which is that of its column: "a_mm".</summary>
    public string Name { get; }

    /// <summary>Whether it may be left out.</summary>
    public Need Need { get; }

    /// <summary>Whether it belongs to what names the thing: it is asked last, and under another it is another thing.</summary>
    public bool IsKey { get; init; }

    /// <summary>What a form calls it; empty where no form asks for it.</summary>
    public string Asked { get; init; } = "";

    /// <summary>What it means, with the words there are; without a capital and a full stop.</summary>
    public string Meaning => Words.IsEmpty || Means.Length == 0 ? Means : $"{Means}: {string.Join(", ", Words)}";

    /// <summary>What it means, without the words there are.</summary>
    internal string Means { get; init; } = "";

    /// <summary>What else people write over its column, besides its name and what a form calls it.</summary>
    internal ImmutableArray<string> Called { get; init; } = [];

    /// <summary>The names that it chooses from or could be like.</summary>
    public Kept Like { get; init; }

    /// <summary>Its unit in files, empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The words there are; none where anything may be typed.</summary>
    public abstract ImmutableArray<string> Words { get; }

    /// <summary>What to type: "a size, such as 36.5 or 1 7/16".</summary>
    public abstract string Right { get; }

    /// <summary>Whether it is free text, which a file must keep from being taken for a formula.</summary>
    public abstract bool IsText { get; }

    /// <summary>Whether it is written as a bare number.</summary>
    public abstract bool IsNumber { get; }

    /// <summary>Writes it as files hold it.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>The text; empty for not known.</returns>
    public abstract string Write(T thing);

    /// <summary>Writes it so that typed back it is the same.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="units">The unit of bare sizes.</param>
    /// <returns>The text; empty for not known.</returns>
    public abstract string Offer(T thing, LengthUnit units);

    /// <summary>Reads it.</summary>
    /// <param name="thing">The thing so far.</param>
    /// <param name="text">The text; empty is not known.</param>
    /// <param name="source">Where it comes from.</param>
    /// <param name="fault">What is wrong and what would be right; null where nothing is.</param>
    /// <returns>The thing with this field; as it was where there is a fault.</returns>
    public abstract T Read(T thing, string text, Source source, out string? fault);

    /// <summary>What is wrong with its value, however it came about.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>A sentence; null where nothing is.</returns>
    public abstract string? Fault(T thing);

    /// <summary>The same field of a larger thing.</summary>
    /// <typeparam name="TOuter">What holds the thing.</typeparam>
    /// <param name="get">The thing in it.</param>
    /// <param name="set">It with another thing.</param>
    /// <returns>The field.</returns>
    public abstract Field<TOuter> Within<TOuter>(Func<TOuter, T> get, Func<TOuter, T, TOuter> set);
}

/// <summary>A field with its value.</summary>
internal sealed record Field<T, TValue>(
    string Column,
    Need IsWanted,
    FieldKind<TValue> Kind,
    Func<T, TValue> Get,
    Func<T, TValue, T> Set
) : Field<T>(Column, IsWanted)
{
    /// <inheritdoc />
    public override ImmutableArray<string> Words => Kind.Words;

    /// <inheritdoc />
    public override string Right => Kind.Right;

    /// <inheritdoc />
    public override bool IsText => Kind.IsText;

    /// <inheritdoc />
    public override bool IsNumber => Kind.IsNumber;

    /// <inheritdoc />
    public override string Write(T thing) => Kind.Write(Get(thing)) ?? "";

    /// <inheritdoc />
    public override string Offer(T thing, LengthUnit units) =>
        (Kind.Offer is { } offer ? offer(Get(thing), units) : Kind.Write(Get(thing))) ?? "";

    /// <inheritdoc />
    public override T Read(T thing, string text, Source source, out string? fault)
    {
        TValue value = default!;
        fault =
            text.Length > 0 ? Kind.Read(text, source, out value) ?? Kind.Fault(value)
            : Need != Need.Always ? null
            : source.IsFile ? "the cell is empty and cannot be left out"
            : $"type {Right}";
        return fault is null ? Set(thing, value) : thing;
    }

    /// <inheritdoc />
    public override string? Fault(T thing) => Kind.Fault(Get(thing));

    /// <inheritdoc />
    public override Field<TOuter> Within<TOuter>(Func<TOuter, T> get, Func<TOuter, T, TOuter> set) =>
        new Field<TOuter, TValue>(
            Name,
            Need,
            Kind,
            outer => Get(get(outer)),
            (outer, value) => set(outer, Set(get(outer), value))
        )
        {
            IsKey = IsKey,
            Asked = Asked,
            Means = Means,
            Like = Like,
            Unit = Unit,
            Called = Called,
        };
}
