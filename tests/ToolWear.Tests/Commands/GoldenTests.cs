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
        string root = demo.Site.Done("--help");
        string[] verbs =
        [
            .. root.Split("Commands:\n")[1]
                .Split('\n')
                .Where(line =>
                    line.StartsWith("  ", StringComparison.Ordinal) && line.Trim().Length > 0 && line[2] != ' '
                )
                .Select(line => line.Trim().Split(' ')[0]),
        ];
        Assert.True(verbs.Length >= 26, $"only {verbs.Length} verbs");
        Golden.Same("help/toolwear.txt", root);
        foreach (string verb in verbs)
        {
            string help = demo.Site.Done(verb, "--help");
            Assert.Contains($"Example:\n  toolwear {verb}", help, StringComparison.Ordinal);
            Golden.Same($"help/{verb}.txt", help);
        }
    }
}
