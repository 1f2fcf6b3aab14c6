using System.CommandLine;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Files;

/// <summary>completion: what a shell needs to complete verbs, options and marks.</summary>
internal static class CompletionVerb
{
    private static readonly Argument<string> Shell = Said.Argument(
            "SHELL",
            string.Join(", ", Shells.All),
            (it, text) =>
                Shells.Script(text) ?? it.Refuse<string>($"completion {text}: one of {string.Join(", ", Shells.All)}")!
        )
        .Offering([.. Shells.All]);

    public static Verb Verb { get; } =
        new(
            "completion",
            "Writes what a shell reads to complete verbs, options, tools' marks and other words of the shop.",
            "completion bash",
            [Shell],
            call => call.Print(call.Get(Shell)!),
            "bash: toolwear completion bash > ~/.local/share/bash-completion/completions/toolwear\n"
                + "zsh:  toolwear completion zsh > a folder of $fpath, as _toolwear\n"
                + "fish: toolwear completion fish > ~/.config/fish/completions/toolwear.fish"
        );
}
