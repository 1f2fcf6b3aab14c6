namespace ToolWear.Core.Tools;

/// <summary>What a tool cost to make; each part null where not known.</summary>
/// <param name="Steel">Steel, in the shop's own money, zero or more.</param>
/// <param name="ForgeHours">Hours at the fire, zero or more.</param>
/// <param name="GrindHours">Hours at the grinder, zero or more.</param>
/// <param name="Treatment">Heat treatment, in the shop's own money, zero or more.</param>
public sealed record ToolCost(decimal? Steel, decimal? ForgeHours, decimal? GrindHours, decimal? Treatment)
{
    /// <summary>Nothing known.</summary>
    public static ToolCost Unknown { get; } = new(null, null, null, null);

    /// <summary>Why these costs cannot be.</summary>
    /// <returns>A sentence, or null where they can.</returns>
    public string? Refusal() =>
        Steel < 0 || ForgeHours < 0 || GrindHours < 0 || Treatment < 0 ? "costs and hours are zero or more" : null;
}
