namespace ToolWear.Core.Sections;

/// <summary>What of the stock never becomes tool.</summary>
public static class StockLoss
{
    /// <summary>The share lost to scale and grinding where nobody said: 0.07 (common practice: 0.05 to 0.10).</summary>
    public const double Usual = 0.07;
}
