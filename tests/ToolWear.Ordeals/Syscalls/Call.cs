namespace ToolWear.Ordeals.Syscalls;

/// <summary>One system call as strace wrote it down.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Arguments">Its arguments, strings unquoted.</param>
/// <param name="Data">The bytes of its strings, one after another.</param>
/// <param name="Result">What it returned; negative where it failed.</param>
/// <param name="Begun">How many calls had ended when it began.</param>
/// <param name="Ordinal">Which one of this name it is in its thread, from 1.</param>
/// <param name="IsInjected">Whether strace made it fail.</param>
internal sealed record Call(
    string Name,
    IReadOnlyList<string> Arguments,
    byte[] Data,
    long Result,
    int Begun,
    int Ordinal,
    bool IsInjected
);
