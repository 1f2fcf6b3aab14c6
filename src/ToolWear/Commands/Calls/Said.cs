using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Calls;

/// <summary>Arguments and options: each is read to its type, refused and completed where it is declared.</summary>
/// <remarks>Sizes of the shop alone stay text: the unit of a bare number is the shop's, and no shop is open yet.</remarks>
internal static class Said
{
    private const string Right = "'round d', 'rectangle a b r', 'oval a b', 'teardrop a large-r small-r'";

    public static Option<string?> Store { get; } =
        new("--store")
        {
            HelpName = "FILE",
            Description = "the shop's file; usually the one in your data folder",
            Recursive = true,
        };

    public static Option<LengthUnit?> Units { get; } =
        Option<LengthUnit?>(
                "--units",
                "mm|in",
                "the unit of bare sizes and of what is shown, for this command",
                (it, text) =>
                    text == "mm" ? LengthUnit.Mm
                    : text == "in" ? LengthUnit.Inch
                    : it.Refuse<LengthUnit?>($"--units {text}: mm or in")
            )
            .Everywhere()
            .Offering(["mm", "in"]);

    public static Option<string?> As { get; } =
        Text("--as", "text|csv|json", "how the result comes out; csv and json are always mm")
            .Everywhere()
            .Offering(["text", "csv", "json"]);

    public static Option<bool> Semicolon { get; } =
        Switch("--semicolon", "CSV with semicolons and decimal commas, for spreadsheets of many countries")
            .Everywhere();

    public static Option<bool> Wide { get; } =
        Switch("--wide", "text with all columns, however wide the terminal is").Everywhere();

    public static Option<string?> On { get; } =
        Day("--on", "the day it happened: 2026-05-01, yesterday, monday; usually today").Everywhere();

    public static Option<bool> Alone { get; } =
        Switch("--alone", "write even where the disk has no locks: nobody else has this shop open").Everywhere();

    public static Option<string?> Once { get; } =
        Name("--once", "KEY", "records once: the same KEY again records nothing and gives the first number")
            .Everywhere();

    public static Option<bool> Quiet { get; } =
        Switch("--quiet", "only the result, without what is said beside it").Everywhere();

    public static Option<bool> Force { get; } =
        Switch("--force", "replace files that this program did not write; a shop or its backup never");

    public static Option<string?> By { get; } = Name("--by", "NAME", "who did it");

    public static Option<string?> Looked { get; } = Name("--by", "NAME", "who looked");

    public static Option<string?> Note { get; } =
        Option("--note", "TEXT", "a note", (it, text) => Free(it, "--note", text, FreeText.NoteFault(text)));

    public static Option<string?> Session { get; } =
        Text("--session", "SESSION", "the session's name, such as 2026-05-01").Offering(shop => shop.Sessions.Keys);

    /// <summary>A pattern of the shop.</summary>
    public static Option<string?> Pattern(string description) =>
        Text("--pattern", "P", description).Offering(shop => shop.Patterns.Keys);

    /// <summary>The name of an eye.</summary>
    public static Option<string?> Eye(string description) =>
        Name("--eye", "EYE", description).Offering(shop => shop.Eyes.Keys);

    /// <summary>A gauge mark's name.</summary>
    public static Argument<string> Gauge(string description) =>
        new Argument<string>("GAUGE") { Description = description }.Offering(Offers.Gauges);

    /// <summary>A tool's mark.</summary>
    public static Argument<ToolMark> Tool(
        string name = "TOOL",
        string description = "the mark stamped on the tool, such as R3"
    ) =>
        Argument(name, description, (it, text) => MarkOf(it, text).GetValueOrDefault())
            .Offering(shop => shop.MarksInUse());

    /// <summary>A new tool's mark, or a new one of an old tool.</summary>
    public static Argument<ToolMark> NewMark(string name, string description) =>
        Argument(name, description, (it, text) => MarkOf(it, text).GetValueOrDefault());

    /// <summary>A tool's mark that may be left out.</summary>
    public static Argument<ToolMark?> MaybeTool(string description) =>
        Maybe<ToolMark?>("TOOL", description, (it, text) => MarkOf(it, text)).Offering(shop => shop.MarksInUse());

    /// <summary>A tool's mark as an option.</summary>
    public static Option<ToolMark?> Tool(string name, string valueName, string description) =>
        Option<ToolMark?>(name, valueName, description, (it, text) => MarkOf(it, text))
            .Offering(shop => shop.MarksInUse());

    /// <summary>An argument that may be left out.</summary>
    public static Argument<string?> Maybe(string name, string description) =>
        Maybe<string>(name, description, (_, text) => text);

    /// <summary>An argument that is read and may be left out; an empty text is refused.</summary>
    public static Argument<T?> Maybe<T>(string name, string description, Func<ArgumentResult, string, T?> read) =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.ZeroOrOne,
            CustomParser = it =>
                it.Tokens[0].Value is { Length: > 0 } text
                    ? read(it, text)
                    : it.Refuse<T>($"{name}: type something, or leave it out"),
        };

    /// <summary>An argument that is read.</summary>
    public static Argument<T> Argument<T>(string name, string description, Func<ArgumentResult, string, T> read) =>
        new(name) { Description = description, CustomParser = it => read(it, it.Tokens[0].Value) };

    /// <summary>A text that has to be given: a name or a note.</summary>
    public static Argument<string> Free(string name, string description, bool isNote = true) =>
        Argument(
            name,
            description,
            (it, text) => Free(it, name, text, isNote ? FreeText.NoteFault(text) : FreeText.NameFault(text))!
        );

    /// <summary>One word of a list.</summary>
    public static Argument<T> Word<T>(string name, Vocabulary<T> words, string? description = null)
        where T : struct, Enum =>
        Argument(
                name,
                description ?? string.Join(", ", words.All),
                (it, text) => OneOf(it, text, words).GetValueOrDefault()
            )
            .Offering(words.All);

    /// <summary>One word of a list as an option; null where it was left out.</summary>
    public static Option<T?> Word<T>(
        string name,
        string valueName,
        Vocabulary<T> words,
        string? description = null,
        bool need = false
    )
        where T : struct, Enum =>
        Option<T?>(
                name,
                valueName,
                description ?? string.Join(", ", words.All),
                (it, text) => OneOf(it, text, words),
                need
            )
            .Offering(words.All);

    /// <summary>A file that has to be named.</summary>
    public static Option<string?> File(string name, string description) =>
        new(name)
        {
            HelpName = "FILE",
            Description = description,
            Required = true,
        };

    /// <summary>Any text.</summary>
    public static Option<string?> Text(string name, string valueName, string description) =>
        new(name) { HelpName = valueName, Description = description };

    /// <summary>A name that nothing else reads, in normal form C.</summary>
    public static Option<string?> Name(string name, string valueName, string description) =>
        Option(name, valueName, description, (it, text) => Free(it, name, text, FreeText.NameFault(text)));

    /// <summary>A day; which one hangs on today.</summary>
    public static Option<string?> Day(string name, string description) => Text(name, "DATE", description);

    /// <summary>A number, zero or more; a comma is a point.</summary>
    public static Option<decimal?> Amount(string name, string valueName, string description, bool need = false) =>
        Option(name, valueName, description, (it, text) => AmountOf(it, name, text), need);

    /// <summary>The same as a double, for what is reckoned with; what <c>refuse</c> says of a number is wrong with it.</summary>
    public static Option<double?> Number(
        string name,
        string valueName,
        string description,
        Func<double, string?>? refuse = null,
        bool need = false
    ) =>
        Option(
            name,
            valueName,
            description,
            (it, text) =>
                AmountOf(it, name, text.TrimEnd('%')) is not { } typed ? null
                : (text.EndsWith('%') ? typed / 100 : typed) is var number
                && refuse?.Invoke((double)number) is { } refusal
                    ? it.Refuse<double?>($"{name} {text}: {refusal}")
                : (double)number,
            need
        );

    /// <summary>How sure a plan is to be, a share.</summary>
    public static Option<double?> Sure(string name, string description) =>
        Number(name, "P", description, Replacements.RefuseSure);

    /// <summary>A whole number, zero or more.</summary>
    public static Option<int?> Whole(string name, string valueName, string description) =>
        Option(
            name,
            valueName,
            description,
            (it, text) =>
                int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                    ? number
                    : it.Refuse<int?>($"{name} {text}: a whole number, zero or more")
        );

    /// <summary>Heats, halves allowed.</summary>
    public static Heats? HeatsOf(ArgumentResult it, string text) =>
        Heats.TryParse(text, out Heats heats, out string refusal) ? heats : it.Refuse<Heats?>(refusal);

    /// <summary>A size where no shop is asked: a bare number is mm unless --units says otherwise.</summary>
    public static Option<Length?> Size(
        string name,
        string valueName,
        string description,
        bool orZero = false,
        bool need = false
    ) => Option(name, valueName, description, (it, text) => SizeOf(it, text, orZero), need);

    /// <summary>A section as "teardrop 36.8 8.8 3.2": its kind and its sizes in the order of the verb section.</summary>
    public static Option<Section?> Section(string name, string description, bool need = false) =>
        Option(name, "SECTION", description, (it, text) => SectionOf(it, name, text), need);

    /// <summary>A switch.</summary>
    public static Option<bool> Switch(string name, string description) => new(name) { Description = description };

    /// <summary>An option that is read where it is given.</summary>
    public static Option<T?> Option<T>(
        string name,
        string valueName,
        string description,
        Func<ArgumentResult, string, T?> read,
        bool need = false
    ) =>
        new(name)
        {
            HelpName = valueName,
            Description = description,
            Required = need,
            CustomParser = it => read(it, it.Tokens[0].Value),
        };

    /// <summary>Says that what was typed cannot be read.</summary>
    public static T? Refuse<T>(this SymbolResult it, string refusal)
    {
        it.AddError(refusal);
        return default;
    }

    private static Option<T> Everywhere<T>(this Option<T> option)
    {
        option.Recursive = true;
        return option;
    }

    private static ToolMark? MarkOf(ArgumentResult it, string text) =>
        ToolMark.TryParse(text, out ToolMark mark, out string refusal) ? mark : it.Refuse<ToolMark?>(refusal);

    private static T? OneOf<T>(ArgumentResult it, string text, Vocabulary<T> words)
        where T : struct, Enum =>
        words.TryParse(text, out T value, out string refusal) ? value : it.Refuse<T?>(refusal);

    private static string? Free(ArgumentResult it, string name, string text, string? fault) =>
        text.Length == 0 ? it.Refuse<string>($"{name}: type a text")
        : fault is not null ? it.Refuse<string>($"{name}: {fault}")
        : NormalFormC.Of(text);

    private static decimal? AmountOf(ArgumentResult it, string name, string text) =>
        decimal.TryParse(
            text.Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out decimal amount
        )
        && amount <= 1_000_000_000
            ? amount
            : it.Refuse<decimal?>($"{name} {text}: a number, zero or more, such as 1.5");

    private static Length? SizeOf(ArgumentResult it, string text, bool orZero) =>
        orZero
        && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal zero)
        && zero == 0
            ? Length.Zero
        : SizeText.TryParse(text, UnitOf(it), out TypedSize size, out string refusal) ? size.Length
        : it.Refuse<Length?>(refusal);

    // by its token: the value of an option that cannot be read may not be asked for
    private static LengthUnit UnitOf(ArgumentResult it) =>
        it.GetResult(Units)?.Tokens is [{ Value: "in" }] ? LengthUnit.Inch : LengthUnit.Mm;

    private static Section? SectionOf(ArgumentResult it, string name, string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        int sizes = SectionKinds.Words.TryParse(parts.FirstOrDefault(), out SectionKind kind, out _)
            ? kind switch
            {
                SectionKind.Round => 1,
                SectionKind.Oval => 2,
                SectionKind.Rectangle or SectionKind.Teardrop => 3,
                _ => -1,
            }
            : -1;
        if (sizes < 0 || parts.Length != sizes + 1)
        {
            return it.Refuse<Section>($"{name} \"{text}\": type one of {Right}, sizes in mm");
        }

        Length?[] read = [.. parts[1..].Select((part, i) => SizeOf(it, part, i > 0))];
        return read.Contains(null) ? null
            : TryMake(kind, [.. read.Select(each => each!.Value)], out Section? section, out string? refusal) ? section
            : it.Refuse<Section>(refusal);
    }

    /// <summary>A section of its kind and its sizes in the order of the verb section.</summary>
    public static bool TryMake(
        SectionKind kind,
        ImmutableArray<Length> sizes,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Section? section,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out string? refusal
    )
    {
        (Length first, Length second, Length third) = (
            sizes[0],
            sizes.ElementAtOrDefault(1),
            sizes.ElementAtOrDefault(2)
        );
        if (kind != SectionKind.Teardrop)
        {
            return Core.Sections.Section.TryMake(kind, first, second, third, out section, out refusal);
        }

        bool isMade = TeardropSection.TryMakeFromRadii(
            first,
            second,
            third,
            out TeardropSection? teardrop,
            out refusal
        );
        section = teardrop;
        return isMade;
    }
}
