using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv.Files;

/// <summary>tools.csv: every tool there ever was, each under a mark of its own.</summary>
internal sealed class ToolsFile()
    : SetFile(
        "tools.csv",
        "tool! form! eye place section steel lot made_on started_as heats_before heats_before_how guess_heats "
            + "steel_cost forge_hours grind_hours treat_cost peg note"
    )
{
    /// <inheritdoc />
    public override bool IsAlwaysWritten => true;

    /// <inheritdoc />
    public override IEnumerable<IReadOnlyList<CsvCell>> Rows(ShopToWrite shop) =>
        shop.Tools.Select(tool =>
            (CsvCell[])
                [
                    CsvCell.Text(tool.Mark.Text),
                    CsvCell.Text(tool.Form.Name),
                    CsvCell.Text(tool.Eye),
                    PlaceCell.Of(tool.Place),
                    CsvCell.Word(SectionKinds.Words, tool.Section),
                    CsvCell.Text(tool.Steel),
                    CsvCell.Text(tool.Lot),
                    CsvCell.Day(tool.MadeOn),
                    CsvCell.Word(ToolStart.AsWords, (StartedAs?)tool.Start.As),
                    CsvCell.Of(tool.Start.HeatsBefore),
                    CsvCell.Word(ToolStart.HowWords, tool.Start.How),
                    CsvCell.Number(tool.GuessHeats),
                    CsvCell.Amount(tool.Cost.Steel),
                    CsvCell.Amount(tool.Cost.ForgeHours),
                    CsvCell.Amount(tool.Cost.GrindHours),
                    CsvCell.Amount(tool.Cost.Treatment),
                    CsvCell.Text(tool.Peg),
                    CsvCell.Text(tool.Note),
                ]
        );

    /// <inheritdoc />
    public override void Read(CsvRow row, ShopRead shop)
    {
        Tool tool = new(
            row.NeedMark("tool"),
            row.NeedForm("form"),
            row.Text("eye"),
            row.Place("place"),
            row.Word("section", SectionKinds.Words),
            row.Text("steel"),
            row.Text("lot"),
            row.PastDay("made_on"),
            Start(row),
            row.Number("guess_heats"),
            new(
                row.Amount("steel_cost"),
                row.Amount("forge_hours"),
                row.Amount("grind_hours"),
                row.Amount("treat_cost")
            ),
            row.Text("peg"),
            row.Note("note"),
            [],
            []
        );
        shop.Once(row, "tool", tool.Mark.ToString());
        shop.Add(new(row, tool));
    }

    /// <summary>Where nothing is said of heats before, a tool starts as new.</summary>
    private static ToolStart Start(CsvRow row)
    {
        bool hasBefore = row.Has("heats_before") || row.Has("heats_before_how");
        ToolStart start = new(
            row.Word("started_as", ToolStart.AsWords) ?? (hasBefore ? StartedAs.InUse : StartedAs.New),
            row.Heats("heats_before"),
            row.Word("heats_before_how", ToolStart.HowWords)
        );
        if (!row.IsFaulty && start.Refusal() is { } refusal)
        {
            row.Fault("heats_before", refusal);
        }

        return start;
    }
}
