using System.Collections.Immutable;

namespace ToolWear.Core.Fields;

/// <summary>A table of fields, whatever it describes.</summary>
public interface IFieldTable
{
    /// <summary>The file that holds such things: "bars.csv".</summary>
    string File { get; }

    /// <summary>Name, unit and meaning of each field, in the order of the file's columns.</summary>
    IEnumerable<(string Name, string Unit, string Meaning)> Columns { get; }
}

/// <summary>The fields of a described thing, in the order of its file's columns.</summary>
/// <remarks>File, form, options, data dictionary and refusals come from here: a field is added by one line.</remarks>
/// <typeparam name="T">The thing; a value of it never changes.</typeparam>
/// <param name="File">The file that holds such things: "bars.csv".</param>
/// <param name="Blank">The thing of which nothing is known yet.</param>
public sealed record FieldTable<T>(string File, T Blank) : IFieldTable
{
    /// <summary>The fields.</summary>
    public ImmutableArray<Field<T>> All { get; init; } = [];

    /// <summary>What a form asks, in its order: what the thing is like, then what names it.</summary>
    public IEnumerable<Field<T>> Asked => All.Where(each => each.Asked.Length > 0).OrderBy(each => each.IsKey);

    /// <summary>What is wrong between the fields of a thing that someone types; what was stored once may be so.</summary>
    public Func<T, FieldFault?> Check { get; init; } = static _ => null;

    /// <summary>What is wrong between the fields of a thing, however it came about; nothing such is ever stored.</summary>
    public Func<T, FieldFault?> Rule { get; init; } = static _ => null;

    /// <inheritdoc />
    public IEnumerable<(string Name, string Unit, string Meaning)> Columns =>
        All.Select(each => (each.Name, each.Unit, each.Meaning));

    /// <summary>A field of a name.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public Field<T> this[string name] => All.First(field => field.Name == name);

    /// <summary>The table with a field that cannot be left out, behind the others.</summary>
    /// <typeparam name="TValue">Its value; null is not known.</typeparam>
    /// <param name="name">Its name.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="get">Its value in a thing.</param>
    /// <param name="set">The thing with another value.</param>
    /// <returns>The table.</returns>
    public FieldTable<T> Needs<TValue>(
        string name,
        FieldKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> set
    ) => With(name, Need.Always, kind, get, set);

    /// <summary>The table with a field that names the thing, behind the others.</summary>
    /// <inheritdoc cref="Needs{TValue}" />
    public FieldTable<T> Key<TValue>(
        string name,
        FieldKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> set,
        Need need = Need.Always
    )
    {
        FieldTable<T> with = With(name, need, kind, get, set);
        return with.Last(with.All[^1] with { IsKey = true });
    }

    /// <summary>The table with a field that may be left out, behind the others.</summary>
    /// <inheritdoc cref="Needs{TValue}" />
    public FieldTable<T> Maybe<TValue>(
        string name,
        FieldKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> set
    ) => With(name, Need.Maybe, kind, get, set);

    /// <summary>The table with a field whose column a file must have and whose cell may be empty, behind the others.</summary>
    /// <inheritdoc cref="Needs{TValue}" />
    public FieldTable<T> Column<TValue>(
        string name,
        FieldKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> set
    ) => With(name, Need.Column, kind, get, set);

    /// <summary>The table with the fields of what the thing holds, behind the others.</summary>
    /// <typeparam name="TInner">What it holds.</typeparam>
    /// <param name="inner">Its fields.</param>
    /// <param name="get">What a thing holds.</param>
    /// <param name="set">The thing with another in it.</param>
    /// <returns>The table.</returns>
    public FieldTable<T> Of<TInner>(FieldTable<TInner> inner, Func<T, TInner> get, Func<T, TInner, T> set) =>
        this with
        {
            All = [.. All, .. inner.All.Select(field => field.Within(get, set))],
        };

    /// <summary>The table with the fields of another behind its own.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The table.</returns>
    public FieldTable<T> Also(FieldTable<T> other) => this with { All = [.. All, .. other.All] };

    /// <summary>The table with what the last field means.</summary>
    /// <param name="meaning">What it means, without the words there are, a capital and a full stop.</param>
    /// <param name="asked">What a form calls it; empty where no form asks for it.</param>
    /// <param name="like">The names that it chooses from or could be like.</param>
    /// <param name="unit">Its unit in files where it is not that of its kind.</param>
    /// <returns>The table.</returns>
    public FieldTable<T> Means(string meaning, string asked = "", Kept like = Kept.Nothing, string? unit = null) =>
        Last(All[^1] with { Means = meaning, Asked = asked, Like = like, Unit = unit ?? All[^1].Unit });

    /// <summary>The table with what else people write over the column of the last field.</summary>
    /// <param name="names">Headings; case, spaces and units do not matter.</param>
    /// <returns>The table.</returns>
    public FieldTable<T> Called(params ImmutableArray<string> names) => Last(All[^1] with { Called = names });

    /// <summary>What is wrong with a thing, however it came about: a value that its field cannot have.</summary>
    /// <param name="thing">The thing.</param>
    /// <returns>The first fault; null where there is none.</returns>
    public FieldFault? Fault(T thing)
    {
        foreach (Field<T> field in All)
        {
            if (field.Fault(thing) is { } fault)
            {
                return new(field.Name, fault);
            }
        }

        return Rule(thing);
    }

    /// <summary>Reads a thing, field by field.</summary>
    /// <param name="into">The thing before; <see cref="Blank"/> for a new one.</param>
    /// <param name="textOf">The text of a field; null leaves it as it is.</param>
    /// <param name="source">Where the texts come from.</param>
    /// <param name="fault">Takes each fault.</param>
    /// <returns>The thing; what is faulty in it is as it was before.</returns>
    public T Read(T into, Func<Field<T>, string?> textOf, Source source, Action<FieldFault> fault)
    {
        foreach (Field<T> field in All)
        {
            if (textOf(field) is { } text)
            {
                into = field.Read(into, text, source, out string? wrong);
                if (wrong is not null)
                {
                    fault(new(field.Name, wrong));
                }
            }
        }

        return into;
    }

    private FieldTable<T> With<TValue>(
        string name,
        Need need,
        FieldKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> set
    ) => this with { All = All.Add(new Field<T, TValue>(name, need, kind, get, set) { Unit = kind.Unit }) };

    private FieldTable<T> Last(Field<T> field) => this with { All = All.SetItem(All.Length - 1, field) };
}
