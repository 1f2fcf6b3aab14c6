using System.CommandLine;
using ToolWear.Doors;

namespace ToolWear.Commands.Calls;

/// <summary>How a command line is parsed, and in which world: what completes a word has to read the shop.</summary>
internal sealed class Parsing : ParserConfiguration
{
    public Parsing(Site site)
    {
        Site = site;
        // no response files: @FILE is a text like any other
        ResponseFileTokenReplacer = null;
    }

    public Site Site { get; }
}
