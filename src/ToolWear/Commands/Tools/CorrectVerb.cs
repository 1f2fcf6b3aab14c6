using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Deeds;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Doors;

namespace ToolWear.Commands.Tools;

/// <summary>correct: what is on record of a tool or of its gauge mark was wrong, or more is known now.</summary>
internal static class CorrectVerb
{
    private static readonly Argument<ToolMark> Tool = Said.Tool();
    private static readonly Argument<string[]> Fields = new("FIELD=VALUE")
    {
        Description = "columns of tools.csv, or with --gauge of gauge-marks.csv; nothing after = for not known",
        Arity = ArgumentArity.OneOrMore,
    };
    private static readonly Option<string?> Gauge = Said.Text("--gauge", "G", "its gauge mark; a new name adds one")
        .Offering(Offers.Gauges);
    private static readonly Option<string?> Why = Said.Text("--why", "WHY", "what was wrong");

    public static Verb Verb { get; } =
        new(
            "correct",
            "Corrects what is on record of a tool, or adds to it.",
            "correct H4 least_mm=12.6 --gauge width --why \"read off the wrong drawing\"",
            [Tool, Fields, Gauge, Why],
            Run,
            "The earlier value stays in the ledger. So costs and hours come in too: toolwear correct H4 forge_hours=1.5 peg=A4. \"toolwear columns\" lists the columns."
        );

    private static void Run(Call call)
    {
        bool isOfMark = call.Get(Gauge) is not null;
        Dictionary<string, string> said = isOfMark
            ? SaidOf(call, GaugeMarkFields.Alone)
            : SaidOf(call, ToolFields.Table);
        call.ToWrite();
        ToolInShop tool = call.Tool(call.Mark(Tool));
        Tool right = call.Get(Gauge) is { } name
            ? WithMark(call, tool.Tool, name, said)
            : Read(call, ToolFields.Table, tool.Tool, said);
        ToolCorrected entry = Correcting.Of(tool, right, call.Get(Why));
        call.Record(entry);
        foreach (string change in Correcting.Changes(entry, call.Units))
        {
            call.PrintLine(change);
        }
    }

    private static Tool WithMark(Call call, Tool tool, string name, Dictionary<string, string> said)
    {
        GaugeMark? old = tool.Gauge(name);
        GaugeMark start = old ?? GaugeMarkFields.Alone.Blank with { Name = name };
        return Correcting.With(tool, old, Read(call, GaugeMarkFields.Alone, start, said));
    }

    private static Dictionary<string, string> SaidOf<T>(Call call, FieldTable<T> fields)
    {
        Dictionary<string, string> said = new(StringComparer.Ordinal);
        ImmutableArray<string> known = [.. fields.All.Where(field => !field.IsKey).Select(field => field.Name)];
        foreach (string text in call.Get(Fields)!)
        {
            string[] parts = text.Split('=', 2);
            if (parts.Length < 2 || !known.Contains(parts[0], StringComparer.Ordinal))
            {
                throw RefusedException.WrongUsage(
                    parts.Length < 2
                        ? $"\"{text}\": give a column and its value, such as steel=4140. See toolwear correct --help"
                        : $"no column \"{parts[0]}\". {NearNames.Meant(parts[0], known)}".TrimEnd()
                );
            }

            said[parts[0]] = parts[1];
        }

        return said;
    }

    private static T Read<T>(Call call, FieldTable<T> fields, T start, Dictionary<string, string> said) =>
        fields.Read(
            start,
            field => said.GetValueOrDefault(field.Name),
            new(call.Units, call.On),
            fault => throw RefusedException.WrongData($"{fault}")
        );
}
