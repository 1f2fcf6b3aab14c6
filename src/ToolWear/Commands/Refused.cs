namespace ToolWear.Commands;

/// <summary>A command cannot be done: one sentence for the user and an exit code.</summary>
public sealed class Refused : Exception
{
    /// <summary>The data are wrong, or a check failed.</summary>
    public const int WrongData = 1;

    /// <summary>The command was used wrongly.</summary>
    public const int WrongUsage = 2;

    private Refused(int exitCode, string sentence)
        : base(sentence) => ExitCode = exitCode;

    /// <summary>The exit code.</summary>
    public int ExitCode { get; }

    /// <summary>The data are wrong.</summary>
    /// <param name="sentence">What, where, what would be right.</param>
    /// <returns>What is thrown.</returns>
    public static Refused Data(string sentence) => new(WrongData, sentence);

    /// <summary>The command was used wrongly.</summary>
    /// <param name="sentence">What, where, what would be right.</param>
    /// <returns>What is thrown.</returns>
    public static Refused Usage(string sentence) => new(WrongUsage, sentence);
}
