using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Commands.Tools;

/// <summary>add-tool: a tool was made, or one in use is entered.</summary>
internal static class AddToolVerb
{
    private static readonly Argument<string> Mark = new("MARK") { Description = "the mark stamped on it, such as R3" };
    private static readonly Option<string?> Form = Common.Text(
        "--form",
        "F",
        string.Join(", ", ToolForms.All.Select(form => form.Name))
    );
    private static readonly Option<string[]> Gauge = new("--gauge")
    {
        HelpName = "G",
        Description =
            "a gauge mark as 'name,wears,from_mark,start,least,greatest', wears smaller or larger, unknown parts "
            + "empty; once for each",
        AllowMultipleArgumentsPerToken = false,
    };
    private static readonly Option<string?> Eye = Common.Text("--eye", "EYE", "the eye it works for");
    private static readonly Option<string?> Place = Common.Text(
        "--place",
        "PLACE",
        string.Join(", ", Places.Words.All)
    );
    private static readonly Option<string?> Section = Common.Text(
        "--section",
        "SHAPE",
        string.Join(", ", SectionKinds.Words.All)
    );
    private static readonly Option<string?> Steel = Common.Text(
        "--steel",
        "STEEL",
        "its steel, such as 4140; unknown where left out"
    );
    private static readonly Option<string?> Lot = Common.Text("--lot", "LOT", "the bar's lot");
    private static readonly Option<string?> Made = Common.Text("--made-on", "DATE", "the day it was made");
    private static readonly Option<bool> InUse = new("--in-use") { Description = "it has worked before these records" };
    private static readonly Option<string?> Before = Common.Text(
        "--heats-before",
        "N",
        "heats before these records, where known (with --in-use)"
    );
    private static readonly Option<bool> Counted = new("--counted")
    {
        Description = "those were counted, not estimated",
    };
    private static readonly Option<string?> Guess = Common.Text(
        "--guess-heats",
        "N",
        "how many heats one of these usually lasts"
    );
    private static readonly Option<string?> Peg = Common.Text("--peg", "PEG", "where it hangs");
    private static readonly Option<string?> Note = Common.Text("--note", "TEXT", Words.HelpNote);

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "add-tool",
            "Enters a tool: a new one, or one that is in use.",
            "add-tool H7 --form drift --eye H --place rough --steel 4140 --gauge 'width,smaller,60,14.0,12.8,'",
            [Mark, Form, Gauge, Eye, Place, Section, Steel, Lot, Made, InUse, Before, Counted, Guess, Peg, Note],
            Run,
            "A gauge mark is 'name,wears,from_mark,start,least,greatest': wears is smaller or larger, from_mark the distance\n"
                + "from the shank mark, least or greatest the size at which it is scrapped; what is not known stays empty.\n"
                + Words.StruckEndCaution
        );

    private static void Run(Call call)
    {
        ToolMark mark = call.Mark(Mark);
        using Bench bench = call.ToWrite();
        Tool tool = new(
            mark,
            ReadForm(call.Get(Form)),
            call.Name(Eye),
            call.Word(Places.Words, Place) ?? Core.Tools.Place.None,
            call.Word(SectionKinds.Words, Section),
            call.Name(Steel),
            call.Name(Lot),
            call.Day(Made),
            ReadStart(call),
            (double?)call.Amount(Guess),
            ToolCost.Unknown,
            call.Name(Peg),
            call.Note(Note),
            [.. call.GetAll(Gauge).Select(text => ReadGauge(call, bench.Shop, text))],
            []
        );
        call.Record(bench, new ToolAdded(tool));
        foreach (GaugeMark gauge in tool.GaugeMarks)
        {
            Confirm(call, bench.Shop, gauge);
        }

        call.Warn(Words.StruckEndCaution);
        call.Warn(Words.HammerCaution);
    }

    private static ToolForm ReadForm(string? name)
    {
        if (name is null)
        {
            throw RefusedException.WrongUsage($"--form is wanted: {string.Join(", ", ToolForms.All)}");
        }

        return ToolForms.TryFind(name, out ToolForm form, out string refusal)
            ? form
            : throw RefusedException.WrongUsage(refusal);
    }

    private static ToolStart ReadStart(Call call)
    {
        if (!call.Has(InUse))
        {
            return call.Get(Before) is null
                ? ToolStart.New
                : throw RefusedException.WrongUsage(
                    "--heats-before goes with --in-use: a new tool has no heats before"
                );
        }

        if (call.Get(Before) is not { } text)
        {
            return ToolStart.Unknown;
        }

        HeatsBeforeHow how = call.Has(Counted) ? HeatsBeforeHow.Counted : HeatsBeforeHow.Estimated;
        return new ToolStart(StartedAs.InUse, Call.ReadHeats(text), how);
    }

    private static GaugeMark ReadGauge(Call call, Shop shop, string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length != 6)
        {
            throw RefusedException.WrongUsage(
                $"--gauge '{text}': six parts with commas between are wanted, name,wears,from_mark,start,least,greatest, "
                    + "such as 'width,smaller,60,14.0,12.8,' (a point for decimals here)"
            );
        }

        Length? Part(int i) => parts[i].Length == 0 ? null : call.Size(shop, parts[i]).Length;
        return new GaugeMark(
            parts[0],
            Call.ReadWord(GaugeMark.WearsWords, parts[1]),
            GaugeMark.MeasuresWords.TryParse(parts[0], out Measures measures, out _) ? measures : null,
            Part(2),
            Part(3),
            Part(4),
            Part(5),
            null
        );
    }

    private static void Confirm(Call call, Shop shop, GaugeMark gauge)
    {
        if (gauge.Start is not { } start || gauge.LimitFrom(start) is not { } limit)
        {
            return;
        }

        LengthUnit units = call.Units(shop);
        string unit = SizeShown.Mark(units);
        call.PrintLine(
            $"{gauge.Name}: {SizeShown.Wear(limit.Mm, units)} {unit} to go of {SizeShown.Wear(limit.Mm, units)} {unit}"
        );
        if (limit.Nanometres * 4 > start.Nanometres)
        {
            call.Warn(
                $"{gauge.Name}: the limit {SizeShown.Wear(limit.Mm, units)} {unit} is more than a quarter of the starting size; if that is a slip, cross the entry out"
            );
        }
    }
}
