using System.CommandLine;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Files;

/// <summary>completion: what a shell needs to complete verbs, options and marks.</summary>
internal static class CompletionVerb
{
    private static readonly Argument<string> Shell = Said.Argument(
            "SHELL",
            string.Join(", ", Shells.All),
            (it, text) => Shells.Script(text) ?? it.Refuse<string>(Call.NoSuch("shell", text, Shells.All))!
        )
        .Offering([.. Shells.All]);

    public static Verb Verb { get; } =
        new(
            "completion",
            "Writes the completion script for your shell.",
            "completion bash",
            [Shell],
            call => call.PrintAsIs(call.Get(Shell)!),
            "Where the script goes:\n"
                + "  bash: ~/.local/share/bash-completion/completions/toolwear\n"
                + "  zsh:  _toolwear in a folder of $fpath\n"
                + "  fish: ~/.config/fish/completions/toolwear.fish"
        );
}
