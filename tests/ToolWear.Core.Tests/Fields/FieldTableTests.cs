using CsCheck;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
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
        new Tried<BarDescribed>(BarFields.Table, EntryGens.Wide.Of<BarDescribed>().Select(e => (BarDescribed)e)),
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
                    Assert.Equal(Written(thing), Written(read));
                    Assert.Equal(thing, read);
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

        private string Written(T thing) => string.Join('|', fields.All.Select(field => field.Write(thing)));
    }
}
