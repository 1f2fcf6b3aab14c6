using ToolWear.Core.Ledger;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Pens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>What the demo's shop has not: a caliper of inches at the screen, and a tool that came in used.</summary>
public sealed class InchAndUsedTests
{
    [Fact]
    public void A_bare_size_at_the_caliper_round_of_a_shop_of_inches_is_inches_and_so_is_what_is_to_go()
    {
        using TestSite site = new();
        site.Done("add-tool", "F1", "--form", "drift", "--place", "finish", "--gauge", "width,smaller,,0.7in,0.66in,");
        site.Done("heats", "F1", "3");
        site.Done("close-session");
        site.Done("set", "units", "in");
        using BareScreens screens = new(site, 120, 40);
        screens.Wait();
        screens.Press("m");
        screens.Type("0.69");
        screens.Press("Enter");
        ToolMeasured read = Assert.IsType<ToolMeasured>(screens.Sitting.Shop.Ledger[^1].What);
        Assert.Equal(17.526, read.Size.Mm, 1e-9);
        // 0.69 less 0.66 of 0.7 less 0.66
        Assert.Contains("F1 width: 0.690 in, 0.030 in to go of 0.040 in", screens.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_chart_of_a_tool_that_came_in_used_goes_on_from_its_heats_before()
    {
        using TestSite site = new();
        site.Done(
            "add-tool F1 --form drift --gauge width,smaller,,14,13, --in-use --heats-before 30 --counted".Split(' ')
        );
        site.Done("heats", "F1", "4");
        site.Done("close-session");
        site.Done("measure", "F1", "width", "13.8");
        using BareScreens screens = new(site);
        ShopForecasts all = ShopForecasts.Of(screens.Sitting.Shop);
        GaugeForecast gauge = all.Tools[0].Gauges.Single(each => each.History.Gauge.Name == "width");
        ChartFigures figures = ChartFigures.Of(all.Shop, gauge);
        Assert.Equal(34, figures.Now);
        Assert.Equal(new ChartPoint(34, 13.8), Assert.Single(figures.Readings));
    }
}
