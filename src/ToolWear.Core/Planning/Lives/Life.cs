namespace ToolWear.Core.Planning.Lives;

/// <summary>How long a new tool lasts, as a distribution of heats from new to its end.</summary>
public abstract record Life
{
    private protected Life() { }

    /// <summary>The mean life in heats.</summary>
    public abstract double MeanHeats { get; }

    /// <summary>S(t), the chance that a tool outlives some heats.</summary>
    /// <param name="heats">t, zero or more.</param>
    /// <returns>A chance, 0 to 1, 1 at zero heats; it never rises with t.</returns>
    public abstract double Surviving(double heats);

    /// <summary>f(t), how much of the chance of ending lies at a heat: -dS/dt.</summary>
    /// <param name="heats">t, above zero.</param>
    /// <returns>Parts of one a heat, zero or more.</returns>
    public abstract double Density(double heats);

    /// <summary>F(k): the chance that a tool that has stood some heats ends within k more, 1 - S(n+k)/S(n).</summary>
    /// <param name="usedHeats">n, the heats it has stood, zero or more.</param>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>A chance, 0 to 1; 1 where none stands so long.</returns>
    public double ChanceUsedUpWithin(double usedHeats, double moreHeats)
    {
        double standing = Surviving(usedHeats);
        return standing > 0 ? Math.Clamp(1 - (Surviving(usedHeats + moreHeats) / standing), 0, 1) : 1;
    }
}
