using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The first screen.</summary>
public sealed class ToolRackTests
{
    [Fact]
    public void The_rack_answers_to_keys()
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        using Evenings evening = new(site);
        Assert.Contains("AP1", evening.Text, StringComparison.Ordinal);
        evening.Press("?");
        Assert.Contains("Help: Tool rack", evening.Text, StringComparison.Ordinal);
        evening.Press("Esc", "PageDown");
        evening.WaitForForecasts();
        Golden.Same("screens/rack-second-page.80.txt", evening.Text);
    }
}
