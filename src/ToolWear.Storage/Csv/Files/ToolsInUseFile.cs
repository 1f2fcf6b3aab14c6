using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>tools-in-use.csv: the tools that a shop already has, a row for each; read, never written.</summary>
internal sealed class ToolsInUseFile()
    : SetFile(
        FileName,
        "tool! form! eye place section steel gauge wears size_mm! scrap_mm made_mm heats_before heats_before_how "
            + "guess_heats on peg note"
    )
{
    /// <summary>The name it has among other files.</summary>
    public const string FileName = "tools-in-use.csv";

    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) => [];

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        ToolMark mark = row.NeedMark("tool");
        ToolForm form = row.NeedForm("form");
        GaugeMark gauge = Gauge(row, form);
        Tool tool = new(
            mark,
            form,
            row.Text("eye"),
            row.Place("place"),
            row.Word("section", SectionKinds.Words),
            row.Text("steel"),
            null,
            null,
            Start(row),
            row.Number("guess_heats"),
            ToolCost.Unknown,
            row.Text("peg"),
            row.Note("note"),
            [gauge],
            []
        );
        ToolMeasured size = new(
            mark,
            gauge.Name,
            row.PastDay("on") ?? row.Today,
            null,
            row.NeedSize("size_mm"),
            null,
            null,
            null
        );
        shop.Once(row, "tool", mark.ToString());
        shop.Add(new(row, tool));
        if (!row.IsFaulty)
        {
            shop.SizesNow.Add(new(row, "size_mm", size));
        }
    }

    private static GaugeMark Gauge(CsvRow row, ToolForm form)
    {
        string name = row.Name("gauge") ?? form.UsualGaugeMarks[0].Name;
        UsualGaugeMark? usual = form.UsualGaugeMarks.FirstOrDefault(each => each.Name == name);
        Wears wears = row.Word("wears", GaugeMark.WearsWords) ?? (usual ?? form.UsualGaugeMarks[0]).Wears;
        Length? scrap = row.Size("scrap_mm");
        GaugeMark gauge = new(
            name,
            wears,
            usual?.Measures,
            null,
            row.Size("made_mm"),
            wears == Wears.Smaller ? scrap : null,
            wears == Wears.Larger ? scrap : null,
            null
        );
        if (!row.IsFaulty && gauge.Refusal() is { } refusal)
        {
            row.Fault("scrap_mm", refusal);
        }

        return gauge;
    }

    private static ToolStart Start(CsvRow row)
    {
        Heats? before = row.Heats("heats_before");
        HeatsBeforeHow? how = row.Word("heats_before_how", ToolStart.HowWords);
        ToolStart start = new(StartedAs.InUse, before, how ?? (before is null ? HeatsBeforeHow.Unknown : null));
        if (!row.IsFaulty && start.Refusal() is { } refusal)
        {
            row.Fault("heats_before", refusal);
        }

        return start;
    }
}
