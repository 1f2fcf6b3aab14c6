using System.Text;
using ToolWear.Core.Findings;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Loans by keys.</summary>
public sealed class LoanScreenTests
{
    private static readonly string LongName = "the smith at the far end of the long valley, " + new string('v', 60);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Lending_and_taking_back(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        StringBuilder record = new();
        using (BareScreens screens = new(site, width, height))
        {
            screens.Wait();
            Show(screens, "nothing is lent", "n");
            screens.Press("a");
            screens.Type("H4");
            Show(screens, "a tool is being lent", "Enter");
            Show(screens, "somebody has to have it", "Enter", "Enter");
            screens.Type("Ada");
            screens.Press("Enter");
            screens.Type("until spring");
            Show(screens, "it is lent", "Enter");
        }

        site.Done("lend", "XF1", LongName, "--on", "2026-11-09", "--note", "a note\nof two lines");
        using BareScreens later = new(site, width, height);
        later.Wait();
        Show(later, "two are out, the one out longest first", "n");
        Show(later, "it is back and to be looked over", "Enter");
        Show(later, "it was mushroomed", "m");
        later.Wait();
        Assert.Equal(Verdict.DressFirst, later.Sitting.Forecasts!.VerdictOf(Tool(later, "XF1").Id)!.Verdict);
        Golden.Same($"screens/loans.{width}x{height}.txt", record.ToString());

        void Show(BareScreens screens, string caption, params string[] keys)
        {
            screens.Press(keys);
            record.Append($"== {caption}\n{screens.Text}\n");
        }
    }

    [Fact]
    public void A_return_that_is_not_looked_over_wants_it_until_it_is_sound()
    {
        using TestSite site = new();
        site.Demo();
        List<List<string>> rack = CsvCells.Of(site.Done("rack", "--as", "csv"));
        string mark = rack.First(row => row.Contains("inside its limit"))[0];
        site.Done("lend", mark, "Ada", "--on", "2026-11-12");
        using BareScreens screens = new(site);
        screens.Wait();
        Assert.DoesNotContain($" {mark} ", screens.Text, StringComparison.Ordinal);
        Assert.Contains("lent out", site.Done("rack"), StringComparison.Ordinal);
        screens.Press("n", "Enter", "Esc");
        Assert.Equal(ScreenName.Loans, screens.Current.Name);
        screens.Wait();
        Judged judged = screens.Sitting.Forecasts!.VerdictOf(Tool(screens, mark).Id)!;
        Assert.Equal(Verdict.LookItOver, judged.Verdict);
        Assert.Contains("back from a loan", judged.Why, StringComparison.Ordinal);

        // one key takes it back, the tool is lent again; once more, and a finding ends it
        screens.Press("Backspace");
        Assert.Equal("Ada", Tool(screens, mark).Lent?.To);
        screens.Press("Enter", "s");
        screens.Wait();
        Assert.NotEqual(Verdict.LookItOver, screens.Sitting.Forecasts!.VerdictOf(Tool(screens, mark).Id)!.Verdict);
        Assert.Equal(
            [typeof(ToolTakenBack), typeof(ToolLookedOver)],
            screens.Sitting.Shop.Ledger.TakeLast(2).Select(each => each.What.GetType())
        );
    }

    private static ToolInShop Tool(BareScreens screens, string mark)
    {
        Assert.True(screens.Sitting.Shop.TryFind(Testing.Generators.Texts.MarkOf(mark), out ToolInShop? tool));
        return tool;
    }
}
