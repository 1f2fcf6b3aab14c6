using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Screens;
using ToolWear.Testing.Goldens;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>An evening and the morning after, as one would play it to somebody: the keys, and the screen after each step.</summary>
[Collection(ScreenLibrary.Name)]
public sealed class RecordedEveningTests
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void An_evening_and_the_morning_after(int width, int height)
    {
        using TestSite site = new();
        site.Demo();
        StringBuilder record = new();
        using (IEvening evening = IEvening.On(site, width, height))
        {
            Night(new Recorder(evening, record));
        }

        site.Clock.Advance(TimeSpan.FromHours(13));
        using (IEvening morning = IEvening.On(site, width, height))
        {
            Morning(new Recorder(morning, record), site.In("history.csv"));
        }

        Assert.Contains(
            "H5,width,drift,H,rough,4140",
            File.ReadAllText(site.In("history.csv")),
            StringComparison.Ordinal
        );
        string safe = record.ToString().Replace(site.In("history.csv"), "FILE", StringComparison.Ordinal);
        Golden.Same($"screens/evening.{width}x{height}.txt", safe);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_screens_that_the_evening_does_not_pass_through(int width, int height)
    {
        StringBuilder record = new();
        using (TestSite bare = new())
        using (IEvening first = IEvening.On(bare, width, height))
        {
            Recorder empty = new(first, record);
            empty.Step("the first start of an empty store");
            empty.Step("the table of the tools one has", "t");
            empty.Step("one tool, question by question", "Esc", "a");
        }

        using TestSite site = new();
        site.Demo();
        using IEvening demo = IEvening.On(site, width, height);
        demo.WaitForForecasts();
        Recorder rack = new(demo, record);
        rack.Step("help for the rack", "?");
        rack.Step("the card in words", "Esc", "Down", "Enter", "w");
        rack.Step("trials", "Esc", "r");
        rack.Step("the ledger", "Esc", "l");
        rack.Step("the reason for a crossing out is asked", "x");
        rack.Step("the shop", "Esc", "Esc", "s");
        rack.Step("help at the hammer", "Esc", "h", "Enter", "?");
        Golden.Same($"screens/others.{width}x{height}.txt", record.ToString());
    }

    [Fact]
    public void The_round_ends_with_verdicts_and_asks_once_about_an_improbable_size()
    {
        using TestSite site = new();
        site.Demo();
        site.Done("heats", "H5", "3");
        site.Done("close-session");
        using BareScreens evening = new(site);
        evening.Wait();
        evening.Press("m");
        int before = evening.Sitting.Shop.Ledger.Count;
        evening.Type("11.0");
        evening.Press("Enter");
        Assert.Equal(before, evening.Sitting.Shop.Ledger.Count);
        Assert.Contains("jaw on scale", evening.Text, StringComparison.OrdinalIgnoreCase);
        evening.Press("Enter");
        Assert.Equal(before + 1, evening.Sitting.Shop.Ledger.Count);
        evening.Press("Backspace");
        Assert.IsType<EntryCrossedOut>(evening.Sitting.Shop.Ledger[^1].What);
        const string end = "The caliper round is done";
        for (int i = 0; i < 60 && evening.Current.Heading != end; i++)
        {
            evening.Press("Enter");
        }

        Assert.StartsWith(end, evening.Text, StringComparison.Ordinal);
    }

    private static void Night(Recorder evening)
    {
        foreach ((string caption, string[] keys) in EveningScript.Night)
        {
            evening.Step(caption, keys);
        }
    }

    private static void Morning(Recorder morning, string file)
    {
        foreach ((string caption, string[] keys) in EveningScript.Morning)
        {
            morning.Step(caption, keys);
        }

        morning.Typed("another name is typed, and the history is written", file, "Enter");
    }

    /// <summary>Presses the keys of a step, waits for what it asked for, and writes down keys and screen.</summary>
    private sealed class Recorder(IEvening evening, StringBuilder record)
    {
        public void Step(string caption, params string[] keys)
        {
            evening.Press(keys);
            Write(caption, string.Join(' ', keys));
        }

        public void Typed(string caption, string text, string last)
        {
            evening.Type(text);
            evening.Press(last);
            Write(caption, $"{text} {last}");
        }

        private void Write(string caption, string keys)
        {
            evening.WaitForAll();
            record.Append($"== {caption}\n== keys: {(keys.Length == 0 ? "none" : keys)}\n{evening.Text}\n");
        }
    }
}
