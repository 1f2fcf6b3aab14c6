using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using Xunit;

namespace ToolWear.Core.Tests.Tools;

/// <summary>What every form of tool must hold; a new form is tested by being in the list.</summary>
public sealed class ToolFormsTests
{
    public static TheoryData<string> Names => [.. ToolForms.All.Select(form => form.Name)];

    [Fact]
    public void The_forms_are_those_of_the_product_page() =>
        Assert.Equal(
            "drift, slitter, slot punch, punch, fuller, flatter, swage, hot cut, cut-off, die, bolster, other",
            string.Join(", ", ToolForms.All)
        );

    [Fact]
    public void Names_are_unique() =>
        Assert.Equal(
            ToolForms.All.Length,
            ToolForms.All.Select(form => form.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count()
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void A_form_is_found_by_its_name_and_can_be_spelled_like_a_mark(string name)
    {
        Assert.True(ToolForms.TryFind(name, out ToolForm form, out string refusal), refusal);
        Assert.Equal(name, form.ToString());
        Assert.Null(ToolMark.Fault("form", name));
        Assert.Equal(form, form with { IsStruck = !form.IsStruck });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_gauge_marks_are_unique_and_can_be_gauge_marks(string name)
    {
        ToolForm form = Find(name);
        Assert.NotEmpty(form.UsualGaugeMarks);
        Assert.Equal(
            form.UsualGaugeMarks.Length,
            form.UsualGaugeMarks.Select(gauge => gauge.Name).Distinct(StringComparer.Ordinal).Count()
        );
        Assert.All(
            form.UsualGaugeMarks,
            gauge =>
                Assert.Null(
                    new GaugeMark(gauge.Name, gauge.Wears, gauge.Measures, null, null, null, null, null).Refusal()
                )
        );
        Assert.NotEqual(Measures.Overall, form.UsualGaugeMarks[0].Measures);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_struck_form_is_measured_over_all_and_only_a_struck_one(string name)
    {
        ToolForm form = Find(name);
        UsualGaugeMark? overall = form.UsualGaugeMarks.FirstOrDefault(gauge => gauge.Measures == Measures.Overall);
        Assert.Equal(form.IsStruck, overall is not null);
        Assert.Equal(form.IsStruck ? ToolForm.Overall : null, overall?.Name);
        Assert.Equal(form.IsStruck ? Wears.Smaller : null, overall?.Wears);
    }

    [Theory]
    [InlineData("slitter", Place.None, Work.Slitting)]
    [InlineData("slot punch", Place.None, Work.Slitting)]
    [InlineData("punch", Place.None, Work.Slitting)]
    [InlineData("drift", Place.Opener, Work.Opening)]
    [InlineData("drift", Place.Rough, Work.Cheeks)]
    [InlineData("drift", Place.Second, Work.Cheeks)]
    [InlineData("drift", Place.Finish, Work.Sizing)]
    [InlineData("drift", Place.None, Work.Other)]
    [InlineData("fuller", Place.None, Work.Fullering)]
    [InlineData("flatter", Place.None, Work.Other)]
    [InlineData("die", Place.Finish, Work.Other)]
    [InlineData("other", Place.None, Work.Other)]
    public void Its_main_work_is_that_of_the_product_page(string name, Place place, Work work) =>
        Assert.Equal(work, Find(name).MainWork(place));

    [Theory]
    [InlineData("Drift", "Did you mean drift?")]
    [InlineData("", "There are drift, slitter, slot punch,")]
    [InlineData("anvil", "There are drift, slitter, slot punch,")]
    public void Another_name_is_refused_with_what_was_meant_or_the_list(string name, string hint)
    {
        Assert.False(ToolForms.TryFind(name, out _, out string refusal));
        Assert.StartsWith($"No form \"{name}\". {hint}", refusal, StringComparison.Ordinal);
    }

    private static ToolForm Find(string name) => ToolForms.All.Single(form => form.Name == name);
}
