using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.Commands;

/// <summary>What the commands print on the demo shop, and the help of every verb, as accepted.</summary>
public sealed class GoldenTests(DemoFixture demo)
{
    [Fact]
    public void The_rack_of_the_demo_as_text() => Golden.Same("commands/rack.txt", demo.RackText);

    [Fact]
    public void The_forecast_of_the_demo_as_text() => Golden.Same("commands/forecast.txt", demo.ForecastText);

    [Theory]
    [InlineData("H5")]
    [InlineData("H3")]
    [InlineData("T2")]
    [InlineData("HS2")]
    [InlineData("HC1")]
    public void A_card_of_the_demo_as_text(string tool) =>
        Golden.Same($"commands/card-{tool}.txt", demo.Site.Done("card", tool));

    [Fact]
    public void A_card_in_inches() =>
        Golden.Same("commands/card-H5-in.txt", demo.Site.Done("card", "H5", "--units", "in"));

    [Fact]
    public void The_help_of_every_verb()
    {
        Golden.Same("help/toolwear.txt", demo.Site.Done("--help"));
        Golden.Same("help/pages/all.txt", demo.Site.Done("help", "all"));
        Golden.Same("help/pages/examples.txt", demo.Site.Done("help", "examples"));
        Golden.Same("help/pages/typing.txt", demo.Site.Done("help", "typing"));
        string[] verbs = [.. ExampleShop.All().Select(each => each.Verb)];
        Assert.True(verbs.Length >= 59, $"only {verbs.Length} verbs");
        foreach (string verb in verbs)
        {
            string help = demo.Site.Done(verb, "--help");
            Assert.Contains($"Example:\n  toolwear {verb}", help, StringComparison.Ordinal);
            Golden.Same($"help/{verb}.txt", help);
        }
    }
}
