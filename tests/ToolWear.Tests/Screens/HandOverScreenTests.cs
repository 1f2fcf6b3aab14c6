using System.Text;
using ToolWear.Core.Deeds;
using ToolWear.Keys;
using ToolWear.Screens.Hammer;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>What a helper is handed, by keys.</summary>
public sealed class HandOverScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void From_choosing_and_from_the_hammer(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site, width, height);
        screens.Wait();
        StringBuilder record = new();
        screens.Press("h", "Space");
        Board chosen = screens.Host.Board;
        Show("tools in order, how deep, when to stop", "o");
        Show("the cautions", "PageDown");
        screens.Press("?", "Esc", "Esc");
        Assert.Equal(ScreenName.Choosing, screens.Current.Name);
        // what was chosen before is still chosen
        Assert.Equal(chosen, screens.Host.Board);
        for (int i = 0; i < 9 && screens.Host.Board.Pattern is not null; i++)
        {
            screens.Press("p");
        }

        Show("no pattern", "o");
        screens.Press("Esc", "p", "Space", "Enter", "1", "o", "Esc");
        Assert.Equal(ScreenName.Hammer, screens.Current.Name);
        Golden.Same($"screens/hand-over.{width}x{height}.txt", record.ToString());

        void Show(string caption, params string[] keys)
        {
            screens.Press(keys);
            record.Append($"== {caption}\n{screens.Text}\n");
        }
    }

    [Fact]
    public void In_a_shop_of_inches_the_marks_are_in_fractions()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "units", "in");
        using BareScreens screens = new(site, 120, 60);
        screens.Wait();
        screens.Press("h", "o");
        string[] marks =
        [
            .. screens
                .Text.Split('\n')
                .Where(line => line.Contains("drive to: ", StringComparison.Ordinal))
                .Select(line => line.Split("drive to: ")[1].Trim()),
        ];
        Assert.Contains(marks, mark => mark.Contains('/', StringComparison.Ordinal));
        string told = site.Done("hand-over");
        Assert.All(marks.Where(mark => mark != "-"), mark => Assert.Contains(mark, told, StringComparison.Ordinal));
    }
}
