using System.CommandLine;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Files;

/// <summary>completion: what a shell needs to complete verbs, options and marks.</summary>
internal static class CompletionVerb
{
    private static readonly Argument<string> Shell = new("SHELL") { Description = string.Join(", ", Shells.All) };

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "completion",
            "Writes what a shell reads to complete verbs, options, tools' marks and other words of the shop.",
            "completion bash",
            [Shell],
            call => call.Print(Shells.Script(call.Get(Shell)) ?? throw RefusedException.WrongUsage(Unknown(call))),
            Words.HelpCompletion
        );

    private static string Unknown(Call call) => Words.NoSuchShell(call.Get(Shell), Shells.All);
}
