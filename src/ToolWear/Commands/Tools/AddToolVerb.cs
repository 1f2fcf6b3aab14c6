using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Doors;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>add-tool: a tool was made, or one in use is entered.</summary>
internal static class AddToolVerb
{
    private static readonly Argument<ToolMark> Mark = Said.NewMark("MARK", "the mark stamped on it, such as R3");
    private static readonly Option<ToolForm?> Form = Said.Option<ToolForm>(
            "--form",
            "F",
            string.Join(", ", ToolForms.All.Select(form => form.Name)),
            (it, text) =>
                ToolForms.TryFind(text, out ToolForm form, out string refusal) ? form : it.Refuse<ToolForm>(refusal),
            need: true
        )
        .Offering([.. ToolForms.All.Select(form => form.Name)]);
    private static readonly Option<string[]> Gauge = new("--gauge")
    {
        HelpName = "G",
        Description =
            "a gauge mark as 'name,wears,from_mark,start,least,greatest', wears smaller or larger, unknown parts "
            + "empty; once for each",
        AllowMultipleArgumentsPerToken = false,
    };
    private static readonly Option<string?> Eye = Said.Eye("the eye it works for");
    private static readonly Option<Place?> Place = Said.Word("--place", "PLACE", Places.Words);
    private static readonly Option<SectionKind?> Section = Said.Word("--section", "SHAPE", SectionKinds.Words);
    private static readonly Option<string?> Steel = Said.Name(
        "--steel",
        "STEEL",
        "its steel, such as 4140; unknown where left out"
    );
    private static readonly Option<string?> Lot = Said.Name("--lot", "LOT", "the bar's lot");
    private static readonly Option<string?> Made = Said.Day("--made-on", "the day it was made");
    private static readonly Option<bool> InUse = Said.Switch("--in-use", "it has worked before these records");
    private static readonly Option<Heats?> Before = Said.Option(
        "--heats-before",
        "N",
        "heats before these records, where known (with --in-use)",
        Said.HeatsOf
    );
    private static readonly Option<bool> Counted = Said.Switch("--counted", "those were counted, not estimated");
    private static readonly Option<double?> Guess = Said.Number(
        "--guess-heats",
        "N",
        "how many heats one of these usually lasts"
    );
    private static readonly Option<string?> Peg = Said.Name("--peg", "PEG", "where it hangs");

    public static Verb Verb { get; } =
        new(
            "add-tool",
            "Adds a tool: a new one, or one you use already.",
            "add-tool H7 --form drift --eye H --place rough --steel 4140 --gauge 'width,smaller,60,14.0,12.8,'",
            [Mark, Form, Gauge, Eye, Place, Section, Steel, Lot, Made, InUse, Before, Counted, Guess, Peg, Said.Note],
            Run,
            "A gauge mark is 'name,wears,from_mark,start,least,greatest': wears is smaller or larger, from_mark the distance from the shank mark, least or greatest the size at which it is scrapped. Leave empty what you do not know.\n"
                + Cautions.StruckEndCaution
        );

    private static void Run(Call call)
    {
        call.ToWrite();
        Tool tool = new(
            call.Get(Mark),
            call.Get(Form)!,
            call.Get(Eye),
            call.Get(Place) ?? Core.Tools.Place.None,
            call.Get(Section),
            call.Get(Steel),
            call.Get(Lot),
            call.Day(Made),
            ReadStart(call),
            call.Get(Guess),
            ToolCost.Unknown,
            call.Get(Peg),
            call.Get(Said.Note),
            [.. call.Get(Gauge)!.Select(text => ReadGauge(call, text))],
            []
        );
        call.Record(new ToolAdded(tool));
        foreach (GaugeMark gauge in tool.GaugeMarks)
        {
            Confirm(call, gauge);
        }

        call.Warn(Cautions.StruckEndCaution);
        call.Warn(Cautions.HammerCaution);
    }

    private static ToolStart ReadStart(Call call)
    {
        if (!call.Get(InUse))
        {
            call.Without("goes with --in-use: a new tool has no heats before", Before);
            return ToolStart.New;
        }

        return call.Get(Before) is { } heats
            ? new ToolStart(
                StartedAs.InUse,
                heats,
                call.Get(Counted) ? HeatsBeforeHow.Counted : HeatsBeforeHow.Estimated
            )
            : ToolStart.Unknown;
    }

    private static GaugeMark ReadGauge(Call call, string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length != 6)
        {
            throw RefusedException.WrongUsage(
                $"--gauge '{text}': give six parts with commas between: name,wears,from_mark,start,least,greatest, "
                    + "such as 'width,smaller,60,14.0,12.8,' (a point for decimals here)"
            );
        }

        Length? Part(int i) => parts[i].Length == 0 ? null : call.Size(parts[i]).Length;
        return new GaugeMark(
            parts[0],
            GaugeMark.WearsWords.TryParse(parts[1], out Wears wears, out string refusal)
                ? wears
                : throw RefusedException.WrongUsage(refusal),
            GaugeMark.MeasuresWords.TryParse(parts[0], out Measures measures, out _) ? measures : null,
            Part(2),
            Part(3),
            Part(4),
            Part(5),
            null
        );
    }

    private static void Confirm(Call call, GaugeMark gauge)
    {
        if (gauge.Start is not { } start || gauge.LimitFrom(start) is not { } limit)
        {
            return;
        }

        call.PrintLine($"{gauge.Name}: {Words.ToGo(limit.Mm, 0, call.Units)}");
    }
}
