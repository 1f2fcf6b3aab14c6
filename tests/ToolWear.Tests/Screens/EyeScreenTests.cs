using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Results.Tools;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>Eyes and handles, the series of an eye, the stock rack, and what a worn tool still makes, by keys.</summary>
[Collection(ScreenLibrary.Name)]
public sealed class EyeScreenTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Eyes_series_bars_and_cards(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site, width: width, height: height);
        evening.WaitForForecasts();
        StringBuilder record = new();
        Cards(evening, Show);
        Eyes(evening, Show);
        NewEye(evening, Show);
        Bars(evening, Show);
        NewTool(evening, Show);
        Golden.Same($"screens/eyes.{width}x{height}.txt", record.ToString());
        void Show(string caption)
        {
            evening.WaitForAll();
            record.Append($"== {caption}\n{evening.Text}\n");
        }
    }

    private static void Cards(Evenings evening, Action<string> show)
    {
        Card(evening, "TF1");
        show("a slip-on drift: its seat and its new mark");
        evening.Press("w");
        show("the same in words");
        evening.Press("Esc");
        Card(evening, "HS2");
        evening.Press("w");
        show("a slitter: its dressings left");
        evening.Press("Esc");
        Card(evening, "A2ND");
        evening.Press("x");
        show("scrapping offers what it could be made into");
        evening.Press("Esc", "Esc");
    }

    private static void Eyes(Evenings evening, Action<string> show)
    {
        evening.Press("y", "Down", "Down");
        show("eyes and handles: the hatchet's");
        evening.Press("PageDown");
        show("its drifts and its handle");
        evening.Press("p");
        show("its series");
        evening.Press("Esc");
    }

    // an oval eye of 1 1/8 x 3/4 in
    private static void NewEye(Evenings evening, Action<string> show)
    {
        evening.Press("a");
        Answer(evening, "oval", "1 1/8", "3/4", "", "40", "0.035", "0.035", "slip", "one", "IT14", "", "", "", "");
        evening.Type("O");
        show("a new eye, question by question");
        evening.Press("Enter");
        show("a series is proposed for it");
        evening.Press("Down", "Enter");
        Answer(evening, "", "28.5");
        evening.Press([.. Enumerable.Repeat("Enter", 8)]);
        show("a place was changed, and now spoils the next");
        evening.Press("Esc");
    }

    private static void Bars(Evenings evening, Action<string> show)
    {
        evening.Press("b");
        show("the stock rack");
        evening.Press("Down", "Down", "Enter");
        show("a bar is being changed");
        evening.Press("Esc", "Esc");
    }

    private static void NewTool(Evenings evening, Action<string> show)
    {
        evening.Press("a");
        Answer(evening, "HF9", "drift", "H", "fin", "H13", "", "", "17.6");
        show("adding a finish drift: the scrap size is proposed, and how it nests is told");
        evening.Press("Esc");
    }

    [Fact]
    public void A_series_is_entered_as_it_was_proposed_and_can_be_taken_back()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        int before = evening.Sitting.Shop.Ledger.Count;
        evening.Press("y", "a");
        Answer(evening, "oval", "1 1/8", "3/4", "", "40", "0.035", "0.035", "slip", "one", "IT14", "", "", "", "", "O");
        Assert.Equal(ScreenName.SeriesPages, evening.Host.Current.Name);
        EyeDescribed eye = Assert.IsType<EyeDescribed>(evening.Sitting.Shop.Ledger[^1].What);
        Assert.Equal((28_575_000, 19_050_000), (eye.Length.Nanometres, eye.Width.Nanometres));
        // ISO 286 IT14 over 18 to 30 mm is 0.52 mm, half to each side
        Assert.Equal(
            (28_315_000, 28_835_000),
            (eye.LeastLength!.Value.Nanometres, eye.GreatestLength!.Value.Nanometres)
        );
        evening.Press("t");
        Assert.Equal(before + 5, evening.Sitting.Shop.Ledger.Count);
        Series finish = evening.Sitting.Shop.Series[new("O", Place.Finish, "drift")];
        Assert.Equal(28.8, finish.Length!.Value.Mm, 1e-9);
        Assert.Equal("H13", finish.Steel);
        evening.Press("t");
        Assert.Contains("saved already", evening.Text, StringComparison.Ordinal);
        evening.Press("Backspace");
        Assert.DoesNotContain(evening.Sitting.Shop.Series.Keys, key => key.Eye == "O");
    }

    [Fact]
    public void A_bought_handle_leads_to_its_eye_and_that_to_a_series()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("y", "n");
        Answer(evening, "33", "20", "0.03", "10", "", "odd hawk");
        Assert.IsType<HandleDescribed>(evening.Sitting.Shop.Ledger[^1].What);
        Answer(evening, "oval", "", "", "", "40", "", "", "", "", "", "", "", "", "", "Q");
        EyeDescribed eye = Assert.IsType<EyeDescribed>(evening.Sitting.Shop.Ledger[^1].What);
        Assert.Equal(("odd hawk", 33.0, 20.0, 0.03), (eye.Handle, eye.Length.Mm, eye.Width.Mm, eye.TaperLength));
        Assert.Equal((Fit.SlipOn, Core.Eyes.Driving.OneFace), (eye.Fit, eye.Driven));
        Assert.Contains("proposed and not saved yet", evening.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("round|20|21|", "one size")]
    [InlineData("oval|36,5x|17|", "cannot be read")]
    [InlineData("oval|36.5|17||40|0.7|", "0 to 0.5")]
    [InlineData("oval|36.5|17||40|0.03|0.03|wedged|both|36||||", "all four")]
    [InlineData("oval|36.5|17||40|0.03|0.03|wedged|both|IT9|||||Q", "11 to 16")]
    [InlineData("oval|36.5|17||40|0.03|0.03|wedged|both|||||nosuch|Q", "No handle \"nosuch\". ")]
    [InlineData("oval|36.5|17||40|0.03|0.03|wedged|both||||||H", "there is an eye H already")]
    public void An_impossible_eye_is_refused_at_its_question(string answers, string says)
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        int before = evening.Sitting.Shop.Ledger.Count;
        evening.Press("y", "a");
        string[] given = answers.Split('|');
        Answer(
            evening,
            [
                .. given,
                .. Enumerable.Repeat("", Math.Max(0, 14 - given.Length)),
                .. given.Length < 15 ? new[] { "Q" } : [],
            ]
        );
        Assert.Contains(says, evening.Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(before, evening.Sitting.Shop.Ledger.Count);
    }

    [Fact]
    public void An_eye_changed_with_nothing_typed_is_the_same_eye()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("set", "units", "in");
        using Evenings evening = new(site);
        EyeDescribed[] eyes = [.. evening.Sitting.Shop.Eyes.Values];
        evening.Press("y");
        foreach (EyeDescribed eye in eyes)
        {
            evening.Press("Enter");
            evening.Press([.. Enumerable.Repeat("Enter", 14)]);
            Assert.Equal(eye, evening.Sitting.Shop.Ledger[^1].What);
            evening.Press("Down");
        }
    }

    [Fact]
    public void A_bar_is_added_and_one_changed_keeps_what_was_not_typed()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.Press("b", "a");
        Answer(evening, "H13", "", "32", "", "1200", "W9", "18.5", "H13 32");
        BarDescribed added = Assert.IsType<BarDescribed>(evening.Sitting.Shop.Ledger[^1].What);
        Assert.Equal(
            ("H13 32", "H13", 32.0, 1200.0, "W9", 18.5m),
            (added.Bar, added.Steel, added.A.Mm, added.Length!.Value.Mm, added.Lot, added.PriceAKg)
        );
        // the new bar is the chosen one; all that is not typed stays
        evening.Press("Enter");
        Answer(evening, "", "", "", "", "900", "", "");
        Assert.Equal(added with { Length = Core.Measure.Length.FromMm(900m) }, evening.Sitting.Shop.Ledger[^1].What);
        evening.Press("a");
        Answer(evening, "H13", "", "32", "", "", "", "", "H13 32");
        Assert.Contains("there is a bar H13 32 already", evening.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_is_scrapped_from_its_card_and_taken_back()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.WaitForForecasts();
        Card(evening, "H4");
        evening.Press("x");
        Answer(evening, "worn", "", "", "", "");
        ToolScrapped scrapped = Assert.IsType<ToolScrapped>(evening.Sitting.Shop.Ledger[^1].What);
        Assert.Equal(("H4", ScrapCause.Worn), (scrapped.Tool.Text, scrapped.Cause));
        evening.Press("Backspace");
        Assert.IsType<EntryCrossedOut>(evening.Sitting.Shop.Ledger[^1].What);
    }

    [Fact]
    public void The_keys_of_the_series_stand_at_its_foot_and_in_its_help()
    {
        using TestSite site = new();
        site.Demo();
        using Evenings evening = new(site);
        evening.WaitForForecasts();
        evening.Press("y", "p");
        foreach (KeyRow row in ToolWear.Screens.ScreenFrame.Foot(evening.Host.Current, 80, 24).SelectMany(line => line))
        {
            Assert.Contains($"{row.Shown} {row.Words}", evening.Text, StringComparison.Ordinal);
        }

        evening.Press("?");
        string help = evening.Text;
        foreach (KeyRow row in KeyTable.Of(ScreenName.SeriesPages).Where(row => row.Where is not null))
        {
            Assert.Contains(row.Does[..Math.Min(30, row.Does.Length)], help, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void With_an_empty_store_the_screens_say_how_to_begin()
    {
        using TestSite site = new();
        using Evenings evening = new(site);
        evening.Press("y");
        Assert.Contains("No eye yet", evening.Text, StringComparison.Ordinal);
        evening.Press("Enter", "p", "Esc", "b");
        Assert.Contains("No bar is in the rack yet", evening.Text, StringComparison.Ordinal);
        evening.Press("Enter", "Esc");
        Assert.Equal(ScreenName.FirstStart, evening.Host.Current.Name);
    }

    private static void Card(Evenings evening, string mark)
    {
        evening.Host.ToolInHand = evening.Sitting.Shop.Tools.Values.Single(tool => tool.Mark.Text == mark).Id;
        evening.Host.Go(ScreenName.WearCard);
    }

    // empty takes what is offered
    private static void Answer(Evenings evening, params string[] answers)
    {
        foreach (string answer in answers)
        {
            evening.Type(answer);
            evening.Press("Enter");
        }
    }
}
