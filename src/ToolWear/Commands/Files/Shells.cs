using System.Collections.Immutable;

namespace ToolWear.Commands.Files;

/// <summary>Scripts for shells. Each asks the program itself, so that none has to be written anew for a new verb.</summary>
/// <remarks>The program is asked with a directive of its command line library: [suggest:POSITION] and the line typed.</remarks>
internal static class Shells
{
    private const string Bash = """
        # toolwear completion bash > ~/.local/share/bash-completion/completions/toolwear
        _toolwear() {
          local text="${COMP_WORDS[*]:1:COMP_CWORD}" each
          COMPREPLY=()
          while IFS= read -r each; do
            if [[ $each == "<file>" ]]; then compopt -o default; else COMPREPLY+=("$(printf %q "$each")"); fi
          done < <("${COMP_WORDS[0]}" "[suggest:${#text}]" "$text" 2>/dev/null)
        }
        complete -F _toolwear toolwear

        """;

    private const string Zsh = """
        #compdef toolwear
        # toolwear completion zsh > a folder of $fpath, as _toolwear
        _toolwear() {
          local text="${(j: :)words[2,CURRENT]}"
          local -a found=("${(@f)$("${words[1]}" "[suggest:${#text}]" "$text" 2>/dev/null)}")
          if [[ $found == "<file>" ]]; then _files; else compadd -- ${found:#}; fi
        }
        if [ "$funcstack[1]" = "_toolwear" ]; then _toolwear "$@"; else compdef _toolwear toolwear; fi

        """;

    private const string Fish = """
        # toolwear completion fish > ~/.config/fish/completions/toolwear.fish
        function __toolwear_words
            set -l words (commandline -opc) (commandline -ct)
            set -l text (string join ' ' -- $words[2..-1])
            set -l found ($words[1] "[suggest:"(string length -- "$text")"]" "$text" 2>/dev/null)
            if test "$found" = "<file>"
                __fish_complete_path (commandline -ct)
            else
                printf '%s\n' $found
            end
        end
        complete -c toolwear -f -a '(__toolwear_words)'

        """;

    private static readonly ImmutableSortedDictionary<string, string> Scripts = ImmutableSortedDictionary.CreateRange(
        StringComparer.Ordinal,
        [KeyValuePair.Create("bash", Bash), KeyValuePair.Create("zsh", Zsh), KeyValuePair.Create("fish", Fish)]
    );

    /// <summary>The shells there are scripts for.</summary>
    public static IEnumerable<string> All => Scripts.Keys;

    /// <summary>The script of a shell.</summary>
    /// <param name="shell">Its name.</param>
    /// <returns>The script; null for a shell there is none for.</returns>
    public static string? Script(string shell) => Scripts.GetValueOrDefault(shell);
}
