namespace ToolWear.Doors;

/// <summary>A command cannot be done: one sentence for the user and an exit code.</summary>
public sealed class RefusedException : Exception
{
    /// <summary>The exit code for wrong data and failed checks.</summary>
    public const int DataExit = 1;

    /// <summary>The exit code for wrong usage.</summary>
    public const int UsageExit = 2;

    private RefusedException(int exitCode, string sentence)
        : base(sentence) => ExitCode = exitCode;

    /// <summary>The exit code.</summary>
    public int ExitCode { get; }

    /// <summary>The data are wrong.</summary>
    /// <param name="sentence">What, where, what would be right.</param>
    /// <returns>What is thrown.</returns>
    public static RefusedException WrongData(string sentence) => new(DataExit, sentence);

    /// <summary>The command was used wrongly.</summary>
    /// <param name="sentence">What, where, what would be right.</param>
    /// <returns>What is thrown.</returns>
    public static RefusedException WrongUsage(string sentence) => new(UsageExit, sentence);
}
