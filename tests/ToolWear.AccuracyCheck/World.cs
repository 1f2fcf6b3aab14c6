namespace ToolWear.AccuracyCheck;

/// <summary>One kind and steel in one shop: what is true of it and no forecast knows. Lengths in mm, exposure in heats.</summary>
internal sealed record World(Scenario Scenario, double LimitMm, double MedianLife, double SpreadOfLife, double SigmaMm)
{
    private const double UsualLimitMm = 0.8;
    private const double SpreadOfGuess = 0.35;

    /// <summary>Variance of a wear increment over its mean, mm.</summary>
    public double PhiMm { get; init; } = 0.002;

    /// <summary>The power of the curve, and how much tools differ in it.</summary>
    public (double Mean, double Sd) Power { get; init; } = (1, 0);

    /// <summary>The part of the limit that running-in takes.</summary>
    public double RunIn { get; init; }

    /// <summary>How many times faster wear goes at the limit.</summary>
    public double Acceleration { get; init; } = 1;

    /// <summary>The spread of severity between sessions.</summary>
    public double Severity { get; init; }

    /// <summary>The share of gross errors.</summary>
    public double Gross { get; init; }

    /// <summary>The caliper's step, mm.</summary>
    public double ResolutionMm { get; init; } = 0.01;

    /// <summary>How many heats the smith says that one of these usually lasts.</summary>
    public double GuessHeats { get; init; } = MedianLife;

    /// <summary>Sd of the logarithm of the tools' lives.</summary>
    public double Tau => Math.Sqrt(Math.Log(1 + (SpreadOfLife * SpreadOfLife)));

    /// <summary>Draws a world.</summary>
    public static World Draw(Scenario scenario, Chance chance)
    {
        double limitMm = chance.Uniform(0, 1) switch
        {
            < 0.25 => 0.6,
            < 0.75 => UsualLimitMm,
            _ => 1.2,
        };
        double sigma = Math.Exp(chance.Uniform(Math.Log(0.03), Math.Log(0.12)));
        double life = Math.Exp(chance.Uniform(Math.Log(40), Math.Log(110)));
        World world = new(scenario, limitMm, life, chance.Uniform(0.20, 0.40), sigma)
        {
            GuessHeats = Math.Round(life * Math.Exp(chance.Normal(SpreadOfGuess))),
        };
        World drawn = scenario switch
        {
            Scenario.RunIn => world with { RunIn = chance.Uniform(0.08, 0.20) },
            Scenario.Power => world with { Power = (chance.Uniform(0.7, 1.3), 0.05) },
            Scenario.Accel => world with { Acceleration = chance.Uniform(1.5, 2.5) },
            Scenario.Outlier => world with { Gross = 0.05 },
            Scenario.Round64 => world with { ResolutionMm = 25.4 / 64 },
            Scenario.Hetero => world with { SpreadOfLife = 0.60 },
            Scenario.Severity => world with { Severity = 0.40, ResolutionMm = 0.05 },
            Scenario.Gamma => world with { PhiMm = chance.Uniform(0.02, 0.05) },
            Scenario.Mix => world with
            {
                RunIn = chance.Uniform(0, 0.10),
                Power = (chance.Uniform(0.85, 1.2), 0.03),
                PhiMm = 0.010,
                Gross = 0.03,
                SigmaMm = chance.Uniform(0.05, 0.12),
                Severity = 0.25,
                ResolutionMm = 0.1,
                Acceleration = chance.Uniform(1, 1.5),
            },
            _ => world,
        };
        // noise is drawn for the usual limit and grows with it
        double scale = limitMm / UsualLimitMm;
        return drawn with { SigmaMm = drawn.SigmaMm * scale, PhiMm = drawn.PhiMm * scale };
    }

    /// <summary>What the caliper reads of true wear.</summary>
    public double Read(double wearMm, Chance chance)
    {
        double read = wearMm + chance.Normal(SigmaMm);
        if (chance.Uniform(0, 1) < Gross)
        {
            read += (chance.Whole(0, 1) == 0 ? -1 : 1) * chance.Uniform(0.3, 1);
        }

        return Math.Round(read / ResolutionMm) * ResolutionMm;
    }
}
