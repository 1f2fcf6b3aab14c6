namespace ToolWear.Tests.Commands;

/// <summary>Command lines that must be refused.</summary>
internal static class Refusals
{
    /// <summary>Runs what must be refused with a sentence, nothing on standard output, and gives the sentence.</summary>
    internal static string Refused(this TestSite site, int exit, params string[] arguments)
    {
        Ran ran = site.Run(arguments);
        Assert.Equal((exit, ""), (ran.Exit, ran.Output));
        Assert.NotEqual("", ran.Error);
        return ran.Error;
    }
}
