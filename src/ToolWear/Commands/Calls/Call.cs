using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Storage;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Calls;

/// <summary>One call of a verb: what was typed, read with clear refusals, and what it prints.</summary>
internal sealed class Call
{
    private readonly ParseResult parsed;
    private readonly StringBuilder result = new();

    private Call(Site site, ParseResult parsed)
    {
        Site = site with { Alone = parsed.GetValue(Common.Alone) };
        this.parsed = parsed;
    }

    public Site Site { get; }

    /// <summary>The store that was named, else the usual one.</summary>
    public string StorePath => NamedFiles.FullPath("--store", Get(Common.Store) ?? Site.UsualStore);

    /// <summary>The day the command speaks of: today where none was named.</summary>
    public DateOnly On => DayIfNamed ?? Site.Today;

    /// <summary>The day that was named, null where none was.</summary>
    public DateOnly? DayIfNamed => Day("--on", Get(Common.On));

    /// <summary>Runs a verb: results come out only where it succeeds, a refusal is one sentence.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(Site site, ParseResult parsed, Action<Call> run) =>
        RunToCode(
            site,
            parsed,
            call =>
            {
                run(call);
                return 0;
            }
        );

    /// <summary>Runs what ends with an exit code of its own; results come out, a refusal is one sentence.</summary>
    /// <returns>The exit code.</returns>
    public static int RunToCode(Site site, ParseResult parsed, Func<Call, int> run)
    {
        Call call = new(site, parsed);
        try
        {
            call.ReadCommon();
            int code = run(call);
            call.Flush();
            return code;
        }
        catch (RefusedException refused)
        {
            site.Error.WriteLine(Words.Refusal(refused.Message));
            return refused.ExitCode;
        }
        catch (StoreException e)
        {
            site.Error.WriteLine(Words.Refusal(e.Message));
            return RefusedException.DataExit;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            site.Error.WriteLine(Words.Refusal(e.Message));
            return RefusedException.DataExit;
        }
    }

    /// <summary>Takes text that comes out when the verb has succeeded.</summary>
    public void Print(string text) => result.Append(text);

    /// <summary>Takes a line that comes out when the verb has succeeded.</summary>
    public void PrintLine(string line) => result.Append(line).Append('\n');

    /// <summary>Brings out at once what was printed: what was recorded is durable.</summary>
    public void Flush()
    {
        Site.Out.Write(result.ToString());
        Site.Out.Flush();
        result.Clear();
    }

    /// <summary>Says something beside the result.</summary>
    public void Warn(string sentence) => Site.Error.WriteLine(sentence);

    /// <summary>Prints a table in the format asked for; what surrounds it for people only as text.</summary>
    public void Print(Table table, string before = "", string after = "")
    {
        switch (Format())
        {
            case "csv":
                Print(table.ToCsv());
                break;
            case "json":
                Print(table.ToJson());
                break;
            default:
                Print(before + table.ToText() + after);
                break;
        }
    }

    /// <summary>The format asked for: text, csv or json, or one that this verb has besides.</summary>
    public string Format()
    {
        ImmutableArray<string> all =
        [
            "text",
            "csv",
            "json",
            .. (parsed.CommandResult.Command as VerbCommand)?.Prints ?? [],
        ];
        string format = Get(Common.As) ?? "text";
        return all.Contains(format, StringComparer.Ordinal)
            ? format
            : throw RefusedException.WrongUsage($"--as {format}: one of {string.Join(", ", all)}");
    }

    public string Get(Argument<string> argument) => parsed.GetValue(argument) ?? "";

    public string? Get(Option<string?> option) => parsed.GetValue(option);

    public string[] GetAll(Option<string[]> option) => parsed.GetValue(option) ?? [];

    public bool Has(Option<bool> option) => parsed.GetValue(option);

    public ToolMark Mark(Argument<string> argument) => ReadMark(Get(argument));

    public static ToolMark ReadMark(string text) =>
        ToolMark.TryParse(text, out ToolMark mark, out string refusal)
            ? mark
            : throw RefusedException.WrongUsage(refusal);

    public LengthUnit Units(Shop shop) => NamedUnits() ?? shop.Settings.Units;

    /// <summary>What stands behind the options of every verb is wrong everywhere, also where a verb has no use for it.</summary>
    private void ReadCommon()
    {
        _ = Format();
        _ = NamedUnits();
        _ = DayIfNamed;
    }

    private LengthUnit? NamedUnits() =>
        Get(Common.Units) switch
        {
            null => null,
            "mm" => LengthUnit.Mm,
            "in" => LengthUnit.Inch,
            { } other => throw RefusedException.WrongUsage($"--units {other}: mm or in"),
        };

    public static Heats ReadHeats(string text) =>
        Heats.TryParse(text, out Heats heats, out string refusal) ? heats : throw RefusedException.WrongUsage(refusal);

    public TypedSize Size(Shop shop, string text) =>
        SizeText.TryParse(text, Units(shop), out TypedSize size, out string refusal)
            ? size
            : throw RefusedException.WrongUsage(refusal);

    public Length? Size(Shop shop, Option<string?> option) => Get(option) is { } text ? Size(shop, text).Length : null;

    public static T ReadWord<T>(Vocabulary<T> words, string text)
        where T : struct, Enum =>
        words.TryParse(text, out T value, out string refusal) ? value : throw RefusedException.WrongUsage(refusal);

    public T? Word<T>(Vocabulary<T> words, Option<string?> option)
        where T : struct, Enum => Get(option) is { } text ? ReadWord(words, text) : null;

    public DateOnly? Day(Option<string?> option) => Day(option.Name, Get(option));

    public decimal? Amount(Option<string?> option)
    {
        if (Get(option) is not { } text)
        {
            return null;
        }

        string point = text.Replace(',', '.');
        return
            decimal.TryParse(point, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal amount)
            && amount <= 1_000_000_000
            ? amount
            : throw RefusedException.WrongUsage($"{option.Name} {text}: a number, zero or more, such as 1.5");
    }

    public int? Whole(Option<string?> option) =>
        Get(option) is not { } text ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number
        : throw RefusedException.WrongUsage($"{option.Name} {text}: a whole number, zero or more");

    /// <summary>A name as typed that nothing else reads, in normal form C; null where the option was left out.</summary>
    public string? Name(Option<string?> option) =>
        Get(option) is { } text ? Read(option.Name, text, FreeText.NameFault(text)) : null;

    /// <summary>A name that has to be given, in normal form C.</summary>
    public static string ReadName(string name, string text) => Read(name, text, FreeText.NameFault(text));

    /// <summary>A note as typed, in normal form C; null where the option was left out.</summary>
    public string? Note(Option<string?> option) => Get(option) is { } text ? ReadNote(option.Name, text) : null;

    public static string ReadNote(string name, string text) => Read(name, text, FreeText.NoteFault(text));

    /// <summary>Says what is wrong with files and stops, where anything is.</summary>
    public void RefuseFaults(ImmutableArray<CsvFault> faults, int more)
    {
        if (faults.IsEmpty)
        {
            return;
        }

        foreach (CsvFault fault in faults)
        {
            Warn(fault.ToString());
        }

        throw RefusedException.WrongData(
            more > 0
                ? $"and {more} faults more; nothing was taken"
                : $"{faults.Length} {(faults.Length == 1 ? "fault" : "faults")}; nothing was taken"
        );
    }

    public Bench ToRead() => Bench.ToRead(Site, StorePath);

    /// <summary>Opens the store to write and says what it found out of order.</summary>
    public Bench ToWrite()
    {
        Bench bench = Bench.ToWrite(Site, StorePath);
        foreach (StoreFinding finding in bench.Findings)
        {
            Warn(finding.Sentence);
        }

        return bench;
    }

    /// <summary>Records entries, all or none, and brings out the number of the last once they are durable.</summary>
    public void Record(Bench bench, params ImmutableArray<LedgerEntry> entries)
    {
        Recorded recorded = bench.RecordAll(entries, Site.Today);
        PrintLine(Words.EntryRecorded(recorded.Number ?? throw RefusedException.WrongData(recorded.Refusal!)));
        Flush();
        WarnOfMarksAlike(bench.Shop, entries);
    }

    /// <summary>Says which marks just given could be mixed up with others.</summary>
    public void WarnOfMarksAlike(Shop shop, ImmutableArray<LedgerEntry> entries)
    {
        foreach ((ToolMark given, ToolMark other) in MarksAlike.Of(shop, entries))
        {
            Warn(Words.MarksAlike(given, other));
        }
    }

    public static ToolInShop Find(Shop shop, ToolMark mark) =>
        shop.TryFind(mark, out ToolInShop? tool) ? tool : throw RefusedException.WrongData(Words.NoTool(mark, shop));

    private static string Read(string name, string text, string? fault) =>
        text.Length == 0 ? throw RefusedException.WrongUsage($"{name}: a text is wanted")
        : fault is not null ? throw RefusedException.WrongUsage($"{name}: {fault}")
        : NormalFormC.Of(text);

    private static DateOnly? Day(string name, string? text) =>
        text is null ? null
        : DateOnly.TryParseExact(
            text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out DateOnly day
        )
            ? day
        : throw RefusedException.WrongUsage(
            $"{name} {text}: a day that there is, as year-month-day, such as 2026-05-01"
        );
}
