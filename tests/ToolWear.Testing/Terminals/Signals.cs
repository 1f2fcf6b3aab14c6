namespace ToolWear.Testing.Terminals;

/// <summary>The numbers of signals, the same on every Unix.</summary>
public static class Signals
{
    public const int HangUp = 1;
    public const int Interrupt = 2;
    public const int Kill = 9;
    public const int Terminate = 15;
}
