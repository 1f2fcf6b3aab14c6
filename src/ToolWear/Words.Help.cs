namespace ToolWear;

/// <content>What --help says of options that several verbs share.</content>
public static partial class Words
{
    /// <summary>What the program is for.</summary>
    public const string HelpProgram =
        "ToolWear keeps the wear of a smith's hot-work tooling: drifts, slitters, punches, fullers. It says which are\n"
        + "inside their limits, how many heats are left in each, and what to measure next.\n\n"
        + "Sizes: a mark wins (36.5 mm, 1.44\"), a fraction is inches (1 7/16), a bare number is in the shop's unit.";

    /// <summary>The columns of the table of tools in use.</summary>
    public const string ToolsInUseColumns =
        "tool, form, size_mm (now); where known eye, place, section, steel, gauge, wears, scrap_mm, made_mm, "
        + "heats_before, heats_before_how, guess_heats, on, peg, note";

    /// <summary>--store.</summary>
    public const string HelpStore = "the shop's file; usually the one in your data folder";

    /// <summary>--units.</summary>
    public const string HelpUnits = "the unit of bare sizes and of what is shown, for this command";

    /// <summary>--as.</summary>
    public const string HelpAs = "how the result comes out; csv and json are always mm";

    /// <summary>--on.</summary>
    public const string HelpOn = "the day it happened, as 2026-05-01; usually today";

    /// <summary>What --alone says.</summary>
    public const string HelpAlone = "write even where the disk has no locks: nobody else has this shop open";

    /// <summary>A tool's mark.</summary>
    public const string HelpMark = "the mark stamped on the tool, such as R3";

    /// <summary>--session.</summary>
    public const string HelpSession = "the session's name, such as 2026-05-01";

    /// <summary>--note.</summary>
    public const string HelpNote = "a note";

    /// <summary>--by.</summary>
    public const string HelpBy = "who did it";

    /// <summary>What verbs say that print sheets.</summary>
    public const string HelpSheet =
        "--as html makes a sheet to print, black on white, A4 or Letter: toolwear ... --as html > sheet.html";

    /// <summary>What verbs say that draw.</summary>
    public const string HelpDrawing =
        "--as html makes a sheet to print, --as svg a drawing: toolwear ... --as html > sheet.html";

    /// <summary>How a shell comes to complete.</summary>
    public const string HelpCompletion =
        "bash: toolwear completion bash > ~/.local/share/bash-completion/completions/toolwear\n"
        + "zsh:  toolwear completion zsh > a folder of $fpath, as _toolwear\n"
        + "fish: toolwear completion fish > ~/.config/fish/completions/toolwear.fish";

    internal static string NoSuchColumn(string name) =>
        $"no file and no result has a column {name}: \"toolwear columns\" lists them all";

    internal static string NoSuchBar(string bar, IEnumerable<string> bars) =>
        $"there is no bar {bar}: {string.Join(", ", bars.DefaultIfEmpty("none is entered yet"))}";

    internal static string NoSuchEye(string eye, IEnumerable<string> eyes) =>
        $"there is no eye {eye}: {string.Join(", ", eyes.DefaultIfEmpty("none is entered yet"))}";

    internal const string SeriesIsProposed = "* is proposed and not entered yet.";

    internal static string NoSuchOption(string option) =>
        $"there is no option {option}; a text that begins so goes behind a bare --";
}
