using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>An evening and the morning after, as one would play it to somebody.</summary>
public sealed class RecordedEveningTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void An_evening_and_the_morning_after(int width, int height)
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        StringBuilder record = new();
        Night(site, record, width, height);
        site.Clock.Advance(TimeSpan.FromHours(13));
        Morning(site, record, width, height);
        Golden.Same($"screens/evening.{width}x{height}.txt", record.ToString());
    }

    private static void Night(TestSite site, StringBuilder record, int width, int height)
    {
        using IEvening evening = IEvening.On(site, width, height);
        evening.WaitForForecasts();
        Show("the rack");
        evening.Press("h");
        Show("last time's tools and pattern are offered");
        evening.Press("Enter", "3", "3", "3", "4", "4", "b", "c", "c", "e");
        Show("five heats on two drifts, heads as they go");
        evening.Press("s");
        Show("closing asks for heads and estimates what was not tallied");
        evening.Press("Enter", "Enter", "Enter", "Enter", "Enter", "Enter");
        evening.WaitForForecasts();
        Show("closed");
        void Show(string caption) => record.Append($"== {caption}\n{evening.Text}\n");
    }

    private static void Morning(TestSite site, StringBuilder record, int width, int height)
    {
        using IEvening morning = IEvening.On(site, width, height);
        morning.WaitForForecasts();
        morning.Press("m");
        Show("to measure, the tools of last night first");
        morning.Press("s");
        morning.Type("13,2");
        Show("a size is being typed");
        morning.Press("Enter");
        Show("taken, and the next gauge mark");
        morning.Type("33.90");
        morning.Press("Enter");
        morning.Type("13.7");
        morning.Press("Enter");
        morning.Type("34.20");
        morning.Press("Enter", "Esc");
        morning.WaitForForecasts();
        Show("the rack again");
        morning.Press("Down", "Down", "Down", "Down", "Down", "Down", "Enter");
        Show("the wear card");
        morning.Press("w");
        Show("the card in words");
        morning.Press("Esc", "f");
        morning.WaitForPlans();
        Show("the forge list");
        morning.Press("Esc", "l");
        Show("the ledger");
        morning.Press("Esc", "s");
        Show("the shop page");
        morning.Press("Esc", "e");
        Show("a name for the wear history is offered");
        morning.Type(site.In("history.csv"));
        morning.Press("Enter");
        Assert.True(File.Exists(site.In("history.csv")), morning.Text);
        Assert.Contains("13.2", File.ReadAllText(site.In("history.csv")), StringComparison.Ordinal);
        void Show(string caption) => record.Append($"== {caption}\n{morning.Text}\n");
    }

    [Fact]
    public void The_round_ends_with_verdicts_and_asks_once_about_an_improbable_size()
    {
        using TestSite site = new();
        site.Done("demo", "--no-screens", "--store", site.Store);
        site.Done("heats", "H5", "3");
        site.Done("close-session");
        using Evenings evening = new(site, "2026-11-12");
        evening.WaitForForecasts();
        evening.Press("m");
        int before = evening.Sitting.Shop.Ledger.Count;
        evening.Type("9.0");
        evening.Press("Enter");
        Assert.Equal(before, evening.Sitting.Shop.Ledger.Count);
        Assert.Contains("jaw on scale", evening.Text, StringComparison.OrdinalIgnoreCase);
        evening.Press("Enter");
        Assert.Equal(before + 1, evening.Sitting.Shop.Ledger.Count);
        evening.Press("Backspace");
        Assert.IsType<EntryCrossedOut>(evening.Sitting.Shop.Ledger[^1].What);
        for (int i = 0; i < 60 && !evening.Text.StartsWith("The caliper round is done", StringComparison.Ordinal); i++)
        {
            evening.Press("Enter");
        }

        Assert.StartsWith("The caliper round is done", evening.Text, StringComparison.Ordinal);
    }
}
