namespace ToolWear.Testing.Disks;

/// <summary>The machine stopped here. No IOException: nothing in the program may catch it and go on.</summary>
public sealed class PowerCutException : Exception
{
    public PowerCutException()
        : base("The power is cut.") { }

    public PowerCutException(string message)
        : base(message) { }

    public PowerCutException(string message, Exception innerException)
        : base(message, innerException) { }
}
