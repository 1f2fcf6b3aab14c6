using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Storage;
using ToolWear.Storage.Csv;
using ToolWear.Wording;

namespace ToolWear.Commands.Calls;

/// <summary>One call of a verb: what was typed, the shop it speaks of, and what it prints.</summary>
internal sealed class Call
{
    private readonly ParseResult parsed;
    private readonly StringBuilder result = new();

    // what a verb without a table tells, where it is to come out as JSON
    private readonly List<string> told = [];
    private Bench? bench;

    // the last entry that is durable, once there is one: from then on the command has done its work
    private long? recorded;

    // their results hang on no day
    private static readonly string[] Dayless = (
        "backup bars check columns compare compare-groups completion costs drive-depth export export-history eye eyes fit "
        + "forecast heat-split inside ledger lifetimes losses make-into man patterns plan pull-early restore section series "
        + "settings slit stock template to-measure trials"
    ).Split(' ');

    // they tell in sentences
    private static readonly string[] Telling = ["backup", "check", "export", "restore"];

    private Call(ParseResult parsed)
    {
        this.parsed = parsed;
        Site = ((Parsing)parsed.Configuration).Site with { Alone = Get(Said.Alone) };
        ImmutableArray<string> all = ["text", "csv", "json", .. (parsed.CommandResult.Command as Verb)?.Prints ?? []];
        // a format that there is not is wrong everywhere, also where a verb has no use for it
        Format = Get(Said.As) ?? "text";
        if (!all.Contains(Format, StringComparer.Ordinal))
        {
            throw RefusedException.WrongUsage($"--as {Format}: one of {string.Join(", ", all)}");
        }

        string verb = parsed.CommandResult.Command.Name;
        if (Format == "csv" && Telling.Contains(verb, StringComparer.Ordinal))
        {
            throw NoCsv();
        }

        SaidOn = Day(Said.On);
        if (SaidOn is not null && Dayless.Contains(verb, StringComparer.Ordinal))
        {
            throw RefusedException.WrongUsage($"--on: {verb} is the same on every day; leave --on out");
        }

        if (
            HasSemicolons
            && Format != "csv"
            && (Format != "text" || parsed.CommandResult.Command is not Verb { IsCsv: true })
        )
        {
            throw RefusedException.WrongUsage("--semicolon goes with --as csv");
        }
    }

    public Site Site { get; }

    /// <summary>What the program ends with where nothing is refused: 0, or what the screens say.</summary>
    public int ExitCode { get; set; }

    /// <summary>The store that was named, else the usual one.</summary>
    public string StorePath => NamedFiles.FullPath("--store", Get(Said.Store) ?? Site.UsualStore);

    /// <summary>The day the command speaks of: today where none was named.</summary>
    public DateOnly On => SaidOn ?? Site.Today;

    /// <summary>The day that was named; null where none was.</summary>
    public DateOnly? SaidOn { get; }

    /// <summary>The format asked for: text, csv or json, or one that this verb has besides.</summary>
    public string Format { get; }

    /// <summary>Whether CSV has semicolons and decimal commas.</summary>
    public bool HasSemicolons => Get(Said.Semicolon);

    /// <summary>The shop: read at the first look, unless it was opened to write.</summary>
    public Shop Shop => (bench ??= Bench.ToRead(Site, StorePath)).Shop;

    /// <summary>The unit for people: the one that was named, else the shop's.</summary>
    public LengthUnit Units => Get(Said.Units) ?? Shop.Settings.Units;

    /// <summary>The forecasts of the shop.</summary>
    public ShopForecasts Forecasts => ShopForecasts.Of(Shop);

    /// <summary>Runs a verb: results come out only where it succeeds, a refusal is one sentence.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(ParseResult parsed, Action<Call> run)
    {
        Site site = ((Parsing)parsed.Configuration).Site;
        Call? call = null;
        try
        {
            call = new(parsed);
            try
            {
                run(call);
            }
            finally
            {
                call.bench?.Dispose();
            }

            call.EndTold();
            call.Flush();
            return call.ExitCode;
        }
        catch (RecordedOnceException)
        {
            return 0;
        }
        catch (Exception e) when (e is RefusedException or StoreException or IOException or UnauthorizedAccessException)
        {
            if (call?.recorded is not null && e is not RefusedException)
            {
                call.TellRecorded(e.Message);
                return 0;
            }

            site.Error.WriteLine(Words.Refusal(e.Message));
            return (e as RefusedException)?.ExitCode ?? RefusedException.DataExit;
        }
    }

    /// <summary>The whole command line: every verb with what is said of it.</summary>
    public Command Program => parsed.RootCommandResult.Command;

    public T? Get<T>(Argument<T> argument) => parsed.GetValue(argument);

    public T? Get<T>(Option<T> option) => parsed.GetValue(option);

    /// <summary>An option as it was typed.</summary>
    public string Typed(Option option) => parsed.GetResult(option)?.Tokens[0].Value ?? "";

    /// <summary>What an option says that something else makes necessary.</summary>
    public T Need<T>(Option<T?> option)
        where T : struct =>
        Get(option) ?? throw RefusedException.WrongUsage($"give {option.Name}: {option.Description}");

    /// <summary>Refuses options that have nothing to say here.</summary>
    public void Without(string why, params ReadOnlySpan<Option> options)
    {
        foreach (Option option in options)
        {
            if (Has(option))
            {
                throw RefusedException.WrongUsage($"{option.Name} {why}");
            }
        }
    }

    /// <summary>A day that was named; null where it was not.</summary>
    /// <param name="option">The option.</param>
    /// <param name="isToCome">Whether it is the next such day, not the last.</param>
    public DateOnly? Day(Option<string?> option, bool isToCome = false) =>
        Get(option) is not { } text ? null
        : DayText.TryRead(text, Site.Today, out DateOnly day, out string refusal, isToCome) ? day
        : throw RefusedException.WrongUsage($"{option.Name}: {refusal}");

    /// <summary>The mark that is meant, in a deed.</summary>
    public ToolMark Mark(Argument<ToolMark> argument) => ToWrite().Shop.Meant(Get(argument));

    /// <summary>The name of the gauge mark that is meant; as typed where none is.</summary>
    public string Gauge(ToolMark tool, string typed) =>
        Tool(tool)
            .Tool.GaugeMarks.Select(gauge => gauge.Name)
            .OrderByDescending(name => name == typed)
            .FirstOrDefault(name => name.Equals(typed, StringComparison.OrdinalIgnoreCase))
        ?? typed;

    /// <summary>Whether an option was given.</summary>
    public bool Has(Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>A size in the shop's unit; null where it was not given.</summary>
    public Length? Size(Option<string?> option) => Get(option) is { } text ? Size(text).Length : null;

    /// <summary>A size in the shop's unit.</summary>
    public TypedSize Size(string text) =>
        SizeText.TryParse(text, Units, out TypedSize size, out string refusal)
            ? size
            : throw RefusedException.WrongUsage(refusal);

    /// <summary>The tool of the shop that a mark names.</summary>
    public ToolInShop Tool(ToolMark mark) =>
        Shop.TryFind(Shop.Meant(mark), out ToolInShop? tool)
            ? tool
            : throw RefusedException.WrongData(Shop.NoTool(mark));

    public ToolInShop Tool(Argument<ToolMark> argument) => Tool(Get(argument));

    /// <summary>What the shop has under a name.</summary>
    public static T Named<T>(string what, IReadOnlyDictionary<string, T> known, string name)
        where T : class =>
        known.GetValueOrDefault(name) ?? throw RefusedException.WrongData(NoSuch(what, name, known.Keys));

    /// <summary>That nothing has a name, and which names there are.</summary>
    public static string NoSuch(string what, string name, IEnumerable<string> known) =>
        NearNames.Refusal(what, name, known.Order(StringComparer.Ordinal));

    /// <summary>Takes text that comes out when the verb has succeeded; what people read fits their terminal.</summary>
    public void Print(string text) => result.Append(Format == "text" ? Wrapped.Lines(text, Width) : text);

    /// <summary>Takes a line that comes out when the verb has succeeded.</summary>
    public void PrintLine(string line)
    {
        if (Format == "json")
        {
            told.Add(line);
        }
        else
        {
            Print(line + "\n");
        }
    }

    /// <summary>Says something beside the result, unless only the result is to come out.</summary>
    public void Warn(string sentence)
    {
        if (Format == "json" && recorded is not null)
        {
            told.Add(sentence);
        }
        else if (!Get(Said.Quiet))
        {
            Site.Error.WriteLine(Wrapped.Lines(sentence, Site.Width));
        }
    }

    /// <summary>Takes text of a form of its own, as a script or a CSV file is.</summary>
    public void PrintAsIs(string text) => result.Append(text);

    /// <summary>A table for people, as wide as their terminal, and what it leaves out.</summary>
    public string Text(Table table) => table.ToText(Width) + table.LeftOut(Width);

    /// <summary>How wide a line may be.</summary>
    public int Width => Get(Said.Wide) ? int.MaxValue : Site.Width;

    /// <summary>Prints a table in the format asked for; what surrounds it for people only as text.</summary>
    public void Print(Table table, string before = "", string after = "") =>
        Print(
            Format switch
            {
                "csv" => table.ToCsv(HasSemicolons),
                "json" => table.ToJson(),
                _ when Get(Said.Quiet) => Text(table),
                _ => before + Text(table) + after,
            }
        );

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
                ? $"{more} more faults. Nothing was imported."
                : $"{faults.Length} {(faults.Length == 1 ? "fault" : "faults")}. Nothing was imported."
        );
    }

    /// <summary>Opens the store to write and says what it found out of order; the shop is that one from now on.</summary>
    public Bench ToWrite()
    {
        if (bench is null)
        {
            bench = Bench.ToWrite(Site, StorePath);
            foreach (StoreFinding finding in bench.Findings)
            {
                Warn(finding.Sentence);
            }

            if (Get(Said.Once) is { } key && bench.NumberOf(key) is { } number)
            {
                Acknowledge(number);
                Warn($"--once {key}: recorded before, as entry {number}. Nothing was recorded now.");
                throw new RecordedOnceException();
            }
        }

        return bench;
    }

    /// <summary>Records entries, all or none, and brings out the number of the last once they are durable.</summary>
    public void Record(params ImmutableArray<LedgerEntry> entries)
    {
        if (Format == "csv")
        {
            throw NoCsv();
        }

        Bench written = ToWrite();
        IReadOnlyList<string>? doubts = written.DoubtsOf(entries);
        RecordedAs done = written.RecordAll(entries, Site.Today, Get(Said.Once));
        Acknowledge(done.Number ?? throw RefusedException.WrongData(done.Refusal!));
        WarnOfMarksAlike(entries);
        WarnOfSizes(doubts);
    }

    /// <summary>Says which sizes just recorded are unlikely.</summary>
    public void WarnOfSizes(IReadOnlyList<string>? doubts)
    {
        foreach (string doubt in doubts ?? [])
        {
            Warn($"{doubt} {CrossOut}");
        }
    }

    /// <summary>What takes back what was just recorded.</summary>
    public string CrossOut => $"If it is wrong: toolwear cross-out {recorded} \"misread\"";

    /// <summary>Says which marks just given could be mixed up with others.</summary>
    public void WarnOfMarksAlike(ImmutableArray<LedgerEntry> entries)
    {
        foreach ((ToolMark given, ToolMark other) in MarksAlike.Of(Shop, entries))
        {
            Warn(Words.MarksAlike(given, other));
        }
    }

    private void Acknowledge(long number)
    {
        recorded = number;
        result.Append(Format == "json" ? $"{{\n  \"entry\": {number}," : $"entry {number}\n");
        Flush();
    }

    private void EndTold()
    {
        if (Format == "json" && (recorded is not null || told.Count > 0))
        {
            string list = JsonPen.Of(
                json =>
                {
                    json.WriteStartArray();
                    told.ForEach(json.WriteStringValue);
                    json.WriteEndArray();
                },
                isIndented: false
            );
            result.Append($"{(recorded is null ? "{" : "")}\n  \"told\": {list.TrimEnd()}}}\n");
        }
    }

    private RefusedException NoCsv() =>
        RefusedException.WrongUsage($"--as csv: {parsed.CommandResult.Command.Name} gives no table; text or json");

    private void Flush()
    {
        try
        {
            Site.Out.Write(result.ToString());
            Site.Out.Flush();
        }
        catch (Exception e) when (recorded is not null && e is (IOException or UnauthorizedAccessException))
        {
            // a script that saw another exit code would enter it twice; cautions still come
            TellRecorded(e.Message);
        }

        result.Clear();
    }

    private void TellRecorded(string what)
    {
        try
        {
            Site.Error.WriteLine(
                $"toolwear: entry {recorded} is recorded and safe; only what would be said about it could not be ({what})."
            );
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // nobody listens there either
            return;
        }
    }

    /// <summary>The command's key is known: what it records is there.</summary>
    private sealed class RecordedOnceException : Exception;
}
