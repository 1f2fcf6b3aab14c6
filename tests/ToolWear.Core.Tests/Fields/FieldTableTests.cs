using CsCheck;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Testing.Generators;
using Xunit;

namespace ToolWear.Core.Tests.Fields;

/// <summary>Laws that hold for every table of fields: a new field needs no test of its own.</summary>
public sealed class FieldTableTests
{
    private static readonly DateOnly Today = new(2100, 1, 1);
    private static readonly Source File = new(null, Today);

    private static readonly IReadOnlyList<ITried> Tables =
    [
        // an empty value takes a setting back: it is recorded, and no file ever says it
        new Tried<SettingChanged>(SettingFields.Table, Of<SettingChanged>().Where(each => each.Value.Length > 0)),
        // steeper ones stand in files alone
        Entries(
            EyeFields.Table,
            eye => eye with { TaperLength = eye.TaperLength / 2, TaperWidth = eye.TaperWidth / 2 }
        ),
        Entries(HandleFields.Table, handle => handle with { Taper = handle.Taper / 2 }),
        Entries(
            SeriesFields.Table,
            each =>
                new(
                    each.Series with
                    {
                        TaperLength = each.Series.TaperLength / 2,
                        TaperWidth = each.Series.TaperWidth / 2,
                    }
                )
        ),
        new Tried<StageOf>(
            PatternFields.Table,
            Of<PatternDescribed>().Where(each => !each.Stages.IsEmpty).Select(each => StageOf.All(each).Last())
        ),
        Entries(BarFields.Table),
        new Tried<Tool>(ToolFields.Table, Tools),
        new Tried<OfTool<StationSaid>>(
            StationFields.Table,
            Gen.Select(Texts.Mark, ToolGens.Stations.Where(each => !each.IsEmpty))
                .Select((mark, stations) => new OfTool<StationSaid>(mark, StationSaid.Of(stations[^1])))
        ),
        new Tried<OfTool<GaugeMark>>(
            GaugeMarkFields.Table,
            Of<ToolAdded>()
                .Where(each => !each.Tool.GaugeMarks.IsEmpty)
                .Select(each => new OfTool<GaugeMark>(each.Tool.Mark, each.Tool.GaugeMarks[^1]))
        ),
        new Tried<InUse>(
            InUseFields.Table,
            Gen.Select(
                Tools,
                Gen.Null(Texts.Name),
                Gen.Nullable(Gen.Enum<Wears>()),
                Lengths.Any,
                Gen.Nullable(Lengths.Any),
                Gen.Nullable(Lengths.Any),
                Gen.Nullable(Days),
                (tool, gauge, wears, size, scrap, made, on) =>
                    new InUse(
                        tool with
                        {
                            Lot = null,
                            MadeOn = null,
                            Cost = ToolCost.Unknown,
                            Start = tool.Start with { As = StartedAs.New },
                        },
                        gauge,
                        wears,
                        size,
                        scrap,
                        made,
                        on
                    )
            )
        ),
        new Tried<SessionSaid>(
            EventFields.Sessions,
            Gen.Select(Of<SessionOpened>(), Gen.Nullable(Gen.Int[0, 500]), Gen.Nullable(Gen.Bool))
                // the tools chosen for a session stand in no table
                .Select((opened, heads, closed) => new SessionSaid(opened with { AtHammer = null }, heads, closed))
        ),
        Entries(EventFields.Worked),
        Entries(EventFields.Readings),
        Entries(EventFields.Reworks),
        Entries(EventFields.Findings),
        Entries(EventFields.EyesMeasured),
        Entries(EventFields.Scrapped),
        new Tried<AsideSaid>(
            EventFields.Aside,
            Gen.OneOf(EntryGens.Wide.Of<ToolSetAside>(), EntryGens.Wide.Of<ToolBroughtBack>())
                .Select(each => AsideSaid.Of(each)!)
        ),
        new Tried<LoanSaid>(
            EventFields.Loans,
            Gen.OneOf(EntryGens.Wide.Of<ToolLent>(), EntryGens.Wide.Of<ToolTakenBack>())
                .Select(each => LoanSaid.Of(each)!)
        ),
        Entries(EventFields.StockTakes),
        Entries(OrderFields.Table),
    ];

    public static TheoryData<string> Files => [.. Tables.Select(each => each.Table.File)];

    [Fact]
    public void Every_table_is_tried() =>
        Assert.Equal(FieldTables.All.Select(each => each.File), Tables.Select(each => each.Table.File));

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_written_for_a_file_reads_back(string file) => Of(file).ReadsBack(File, units: null);

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_offered_and_typed_back_is_the_same_in_mm_and_in_inches(string file)
    {
        Of(file).ReadsBack(new(LengthUnit.Mm, Today), LengthUnit.Mm);
        Of(file).ReadsBack(new(LengthUnit.Inch, Today), LengthUnit.Inch);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void What_cannot_be_left_out_is_told_at_its_field_and_nothing_else(string file) =>
        Of(file).TellsWhatIsMissing();

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_no_value_of_its_kind_is_told_at_its_field(string file) => Of(file).TellsWhatIsWrong();

    [Theory]
    [MemberData(nameof(Files))]
    public void Names_are_those_of_columns_and_none_stands_twice(string file)
    {
        string[] names = [.. Of(file).Table.Columns.Select(each => each.Name)];
        Assert.NotEmpty(names);
        Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
        Assert.All(names, name => Assert.Matches("^[a-z]+(_[a-z]+)*$", name));
    }

    [Fact]
    public void Every_field_means_something_in_some_table() =>
        Assert.Empty(
            FieldTables
                .All.SelectMany(each => each.Columns)
                .GroupBy(each => each.Name, StringComparer.Ordinal)
                .Where(each => each.All(one => one.Meaning.Length == 0))
                .Select(each => each.Key)
        );

    private static Gen<DateOnly> Days => Gen.Int[0, 20_000].Select(day => new DateOnly(2000, 1, 1).AddDays(day));

    private static Gen<Tool> Tools => Of<ToolAdded>().Select(each => each.Tool with { GaugeMarks = [], Stations = [] });

    private static Gen<T> Of<T>()
        where T : LedgerEntry => EntryGens.Wide.Of<T>().Select(each => (T)each);

    private static Tried<T> Entries<T>(FieldTable<T> fields, Func<T, T>? change = null)
        where T : LedgerEntry => new(fields, Of<T>().Select(each => change is null ? each : change(each)));

    private static ITried Of(string file) => Tables.Single(each => each.Table.File == file);

    private interface ITried
    {
        IFieldTable Table { get; }

        void ReadsBack(Source source, LengthUnit? units);

        void TellsWhatIsMissing();

        void TellsWhatIsWrong();
    }

    private sealed class Tried<T>(FieldTable<T> fields, Gen<T> things) : ITried
        where T : notnull
    {
        public IFieldTable Table => fields;

        public void ReadsBack(Source source, LengthUnit? units) =>
            things.Sample(
                thing =>
                {
                    List<FieldFault> faults = [];
                    Assert.Null(fields.Fault(thing));
                    T read = fields.Read(
                        fields.Blank,
                        field => units is { } unit ? field.Offer(thing, unit) : field.Write(thing),
                        source,
                        faults.Add
                    );
                    Assert.Empty(faults);
                    // what a person types has no space at either end
                    Assert.Equal(Written(thing, units is not null), Written(read, units is not null));
                    if (units is null)
                    {
                        Assert.Equal(thing, read);
                    }
                },
                iter: 200
            );

        public void TellsWhatIsMissing()
        {
            List<FieldFault> faults = [];
            fields.Read(fields.Blank, _ => "", File, faults.Add);
            Assert.Equal(
                fields.All.Where(field => field.Need == Need.Always).Select(field => field.Name),
                faults.Select(fault => fault.Field)
            );
        }

        public void TellsWhatIsWrong()
        {
            foreach (Field<T> field in fields.All.Where(field => !field.IsText))
            {
                T before = fields.Blank;
                T after = field.Read(before, "\u00A7", File, out string? fault);
                Assert.NotNull(fault);
                Assert.Equal(before, after);
            }

            // a text that is too long, one that is no text
            foreach (Field<T> field in fields.All.Where(field => field.IsText))
            {
                field.Read(fields.Blank, new string('x', FreeText.MostCharacters + 1), File, out string? fault);
                Assert.NotNull(fault);
            }
        }

        private string Written(T thing, bool isTyped) =>
            string.Join('|', fields.All.Select(field => isTyped ? field.Write(thing).Trim() : field.Write(thing)));
    }
}
