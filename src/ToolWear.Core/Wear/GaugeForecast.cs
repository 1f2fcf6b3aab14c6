using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear;

/// <summary>One gauge mark of one tool: its history and what it says of what is to come.</summary>
/// <param name="History">What the ledger says.</param>
/// <param name="Alone">This tool's own line since its last rework.</param>
/// <param name="Outlook">The forecast that drives verdicts and plans, or why there is none.</param>
public sealed record GaugeForecast(GaugeHistory History, ThisToolAlone Alone, Estimated Outlook)
{
    /// <summary>The forecast, null where there is none.</summary>
    public Forecast? Forecast => Outlook as Forecast;
}
