namespace ToolWear.AccuracyCheck;

/// <summary>The eleven ways in which the simulated shops wear their tools.</summary>
internal enum Scenario
{
    Linear,
    RunIn,
    Power,
    Accel,
    Outlier,
    Round64,
    FewTools,
    Hetero,
    Severity,
    Gamma,
    Mix,
}
