using System.Text.RegularExpressions;
using ToolWear.Results.Tools;
using ToolWear.Testing.Terminals;
using ToolWear.Tests.Commands;
using Xunit;

namespace ToolWear.Tests.Screens.Terminals;

/// <summary>The recorded evening on a terminal of Linux: session, heats, heads, close, round, card, forge list, export.</summary>
internal sealed partial class EveningOnTerminal : IDisposable
{
    private readonly TestSite site;
    private readonly PseudoTerminal terminal;

    public EveningOnTerminal(Dictionary<string, string?> environment)
    {
        site = new TestSite(TimeProvider.System.GetLocalNow().ToString("yyyy-MM-dd", null));
        site.Demo();
        terminal = WaysOutTests.Opened.Begin(site, environment);
    }

    /// <summary>Every style that was used.</summary>
    public IReadOnlySet<string> Styles => terminal.Screen.Styles;

    /// <summary>Everything that was written.</summary>
    public string Written => terminal.Written;

    /// <summary>The wear card as it was shown.</summary>
    public string Card { get; private set; } = "";

    /// <summary>Plays it to its end.</summary>
    public void Play()
    {
        terminal.WaitFor("inside its limit");
        Press("h", "Enter begin");
        Press("\r", "1-9 heat");
        Press("33344cc", "cheeks: 2 heads");
        Press("s", "How many heads");
        Press("\r\r\r\r\r\r", "Count them off");
        Press("\r", "is closed");
        Press("m", "Size:");
        Press("13,2\r", "to go of");
        Press("\e", "What came of it");
        Press("\r", "Heats left is an estimate, not a go-ahead");
        Press("\e[B\r", "done in about");
        // the scale stands under the chart, so what stands above it is drawn by then
        terminal.WaitFor(text => Scale().IsMatch(text), "the chart down to its scale");
        Card = terminal.Text;
        Press("\e", "use next");
        Press("f", "One less");
        Press("\e", "use next");
        terminal.WaitFor(text => !text.Contains("being worked out", StringComparison.Ordinal), "the forecasts");
        Press("e", "Write the wear history to the file");
        string file = site.In("history.csv");
        Press(file + "\r", "readings written to");
        Assert.True(File.Exists(file));
        terminal.Send("q");
        Assert.Equal(0, terminal.WaitForExit());
    }

    public void Dispose()
    {
        terminal.Dispose();
        site.Dispose();
    }

    [GeneratedRegex(@"^ +0 .* heats *$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Scale();

    private void Press(string keys, string until)
    {
        terminal.Send(keys);
        terminal.WaitFor(until);
    }
}
