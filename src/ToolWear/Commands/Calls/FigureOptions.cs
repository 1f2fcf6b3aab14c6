using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Results;

namespace ToolWear.Commands.Calls;

/// <summary>Reads the figures of the verbs that reckon without a store, and prints what comes of them.</summary>
internal static class FigureOptions
{
    private static readonly ImmutableDictionary<SectionKind, string> FiguresOf = ImmutableDictionary.CreateRange([
        KeyValuePair.Create(SectionKind.Round, "d"),
        KeyValuePair.Create(SectionKind.Rectangle, "a b r"),
        KeyValuePair.Create(SectionKind.Oval, "a b"),
        KeyValuePair.Create(SectionKind.Teardrop, "a large-r small-r"),
    ]);

    /// <summary>An optional argument.</summary>
    public static Argument<string> Maybe(string name, string description) =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.ZeroOrOne,
            DefaultValueFactory = _ => "",
        };

    /// <summary>A number that has to be given.</summary>
    public static double Need(this Call call, Option<string?> option) =>
        (double)(call.Amount(option) ?? throw RefusedException.WrongUsage($"{option.Name} is wanted: a number"));

    /// <summary>A number, or the usual where it was not given.</summary>
    public static double Or(this Call call, Option<string?> option, double usual) =>
        (double?)call.Amount(option) ?? usual;

    /// <summary>A size that has to be given; zero where it may be.</summary>
    public static Length NeedSize(this Call call, Option<string?> option, bool orZero = false)
    {
        string text = call.Get(option) ?? throw RefusedException.WrongUsage($"{option.Name} is wanted: a size");
        return ReadSize(call, text, orZero);
    }

    /// <summary>A section as "teardrop 36.8 8.8 3.2": its kind and its numbers in the order of the options.</summary>
    public static Section ReadSection(Call call, string option, string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string right = string.Join(
            ", ",
            FiguresOf.Select(each => $"'{SectionKinds.Words.Word(each.Key)} {each.Value}'")
        );
        if (
            parts.Length == 0
            || !SectionKinds.Words.TryParse(parts[0], out SectionKind kind, out _)
            || !FiguresOf.TryGetValue(kind, out string? figures)
            || parts.Length != figures.Split(' ').Length + 1
        )
        {
            throw RefusedException.WrongUsage($"{option} \"{text}\": one of {right} is wanted, sizes in mm");
        }

        Length Part(int i) => i < parts.Length ? ReadSize(call, parts[i], i > 1) : Length.Zero;
        return Make(kind, Part(1), Part(2), Part(3));
    }

    /// <summary>A section of its kind and its sizes in the order of the options.</summary>
    public static Section Make(SectionKind kind, Length first, Length second, Length third)
    {
        Section? section;
        string? refusal;
        if (kind == SectionKind.Teardrop)
        {
            _ = TeardropSection.TryMakeFromRadii(first, second, third, out TeardropSection? teardrop, out refusal);
            section = teardrop;
        }
        else
        {
            _ = Section.TryMake(kind, first, second, third, out section, out refusal);
        }

        return section ?? throw RefusedException.WrongUsage(refusal!);
    }

    /// <summary>Prints figures in the format asked for; what follows them only as text.</summary>
    public static void Print(this Call call, Calculated figures, string after = "") =>
        call.Print(
            call.Format() switch
            {
                "csv" => figures.ToCsv(),
                "json" => figures.ToJson(),
                _ => figures.ToText() + after,
            }
        );

    /// <summary>A number for people with some decimals.</summary>
    public static Func<double, string> Decimals(int places) =>
        value => value.ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static Length ReadSize(Call call, string text, bool orZero) =>
        orZero
        && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal zero)
        && zero == 0
            ? Length.Zero
            : call.Size(Shop.Empty, text).Length;
}
