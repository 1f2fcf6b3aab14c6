using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Patterns and their stages by keys.</summary>
public sealed class PatternScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_pattern_is_entered_stage_by_stage(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using BareScreens screens = new(site, width, height);
        screens.Wait();
        StringBuilder record = new();
        Show("the patterns of the demo", "o", "p");
        screens.Press("a");
        Answer("slit", "T", "slot punch", "none", "", "2", "");
        Show("the first stage of a new pattern");
        screens.Type("a pattern of a rather long name for one");
        Show("It is saved", "Enter");
        PatternDescribed entered = screens.Sitting.Shop.Patterns["a pattern of a rather long name for one"];
        PatternStage slit = Assert.Single(entered.Stages);
        Assert.Equal(
            ("slit", "T", "slot punch", Place.None, Work.Slitting, 2.0),
            (slit.Name, slit.Eye, slit.Form?.Name, slit.Place, slit.Work, slit.HeatsAHead)
        );
        screens.Press("n");
        Answer("cheeks", "T", "drift", "rough", "cheeks", "lots");
        screens.Press("Enter", "Enter");
        Assert.Contains("lots", screens.Text, StringComparison.Ordinal);
        Assert.Single(screens.Sitting.Shop.Patterns[entered.Pattern].Stages);
        screens.Type("3,5");
        Show("a second stage", "Enter", "Enter");
        Assert.Equal(3.5, screens.Sitting.Shop.Patterns[entered.Pattern].Stages[1].HeatsAHead);
        Show("and out again", "d");
        Assert.Single(screens.Sitting.Shop.Patterns[entered.Pattern].Stages);
        Show("the last one stays", "d");
        Assert.Single(screens.Sitting.Shop.Patterns[entered.Pattern].Stages);
        screens.Press("Backspace");
        Assert.Equal(2, screens.Sitting.Shop.Patterns[entered.Pattern].Stages.Length);
        Golden.Same($"screens/patterns.{width}x{height}.txt", record.ToString());

        void Show(string caption, params string[] keys)
        {
            screens.Press(keys);
            record.Append($"== {caption}\n{screens.Text}\n");
        }

        void Answer(params string[] answers)
        {
            foreach (string answer in answers)
            {
                if (screens.Current.Line!.Text.Length > 0 && answer.Length == 0)
                {
                    screens.Press("Backspace");
                }

                screens.Type(answer);
                if (answer != "lots")
                {
                    screens.Press("Enter");
                }
            }
        }
    }

    [Fact]
    public void A_shop_without_patterns_says_how_one_is_entered()
    {
        using TestSite site = new();
        site.Done("add-tool", "R1", "--form", "drift", "--gauge", "width,smaller,40,16,15,17");
        using BareScreens screens = new(site);
        screens.Press("o", "p");
        Assert.Contains("Press a to add one", screens.Text, StringComparison.Ordinal);
        screens.Press("a", "Esc", "Esc");
        Assert.Equal(ScreenName.Orders, screens.Current.Name);
    }
}
