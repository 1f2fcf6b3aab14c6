using System.Collections.Immutable;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Figures;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The forecast that starts from what a tool's sisters did and moves to its own readings as they come.</summary>
public sealed record SisterForecast : Forecast
{
    private readonly Mixture mixture;
    private readonly double startMm;
    private readonly double widening;
    private readonly HeatsLeft left;

    internal SisterForecast(
        Mixture mixture,
        double startMm,
        KindTraits traits,
        ImmutableArray<SuspectReading> suspect,
        double widening
    )
    {
        (this.mixture, this.startMm, this.widening) = (mixture, startMm, widening);
        Traits = traits;
        Suspect = suspect;
        WearNowMm = LimitMm * mixture.Mean(0);
        ChancePastLimitNow = mixture.Above(0, 1, withReading: false);
        left = HeatsLeft.Of(F, ChancePastLimitNow, mixture.Tool.N0);
    }

    /// <inheritdoc />
    public override double WearNowMm { get; }

    /// <inheritdoc />
    public override double LimitMm => mixture.Tool.Limit;

    /// <inheritdoc />
    public override double HeatsNow => mixture.Tool.Now;

    /// <inheritdoc />
    public override double ChancePastLimitNow { get; }

    /// <inheritdoc />
    public override HeatsLeft HeatsLeftIfNotPast => left.AtMost(EndsAfter);

    /// <summary>After how many more heats it ends whatever the wear, since it cannot be dressed once more.</summary>
    public double EndsAfter { get; init; } = double.PositiveInfinity;

    /// <inheritdoc />
    public override Estimated LifeHeats => Life(HeatsNow, HeatsLeftIfNotPast);

    /// <inheritdoc />
    public override Estimated RateMmPerHeat => Rate(LimitMm - startMm, LifeHeats);

    /// <summary>What the whole kind showed; the same for all its tools.</summary>
    public KindTraits Traits { get; }

    /// <summary>How many weighted heats tools of its kind and steel usually last, by what was learned.</summary>
    public double UsualHeats { get; init; }

    /// <summary>How many other tools of its kind that rests on: read, or thrown out as worn.</summary>
    public int Teachers { get; init; }

    /// <summary>This tool's readings that look like gross errors.</summary>
    public ImmutableArray<SuspectReading> Suspect { get; }

    /// <inheritdoc />
    public override double ChancePastLimit(double moreHeats) =>
        moreHeats > EndsAfter ? 1 : F(Finite.NotNegative(moreHeats));

    /// <summary>Where the next sound caliper reading will lie, its noise and rounding included.</summary>
    /// <param name="heats">Weighted heats since the start of the last segment, no fewer than now.</param>
    /// <param name="share">How often it lies inside, between 0 and 1: 0.99 for "outside this, ask once".</param>
    /// <returns>Both ends in mm of wear.</returns>
    public Limits NextReading(double heats, double share)
    {
        double k = Finite.NotNegative(heats - HeatsNow);
        return new Limits(ReadingAt(k, Asked((1 - share) / 2)), ReadingAt(k, Asked((1 + share) / 2)));
    }

    /// <summary>The fitted wear since the last rework and the band that holds the tool's true wear eight times in ten,
    /// for a chart.</summary>
    /// <param name="heats">Weighted heats since the start of the last segment, each zero or more, in any order.</param>
    /// <returns>One band for each, in the same order.</returns>
    public ImmutableArray<WearBand> Bands(IReadOnlyList<double> heats) => Bands(mixture.Tool.Last, heats);

    /// <summary>The same in an earlier segment.</summary>
    /// <param name="segment">Its place in the history, from 0; its start is known.</param>
    /// <param name="heats">Weighted heats since its start, each zero or more, in any order.</param>
    /// <returns>One band for each, in the same order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment with a known start.</exception>
    public ImmutableArray<WearBand> Bands(int segment, IReadOnlyList<double> heats) => Bands(Segment(segment), heats);

    /// <summary>The fitted wear of a segment alone, without a band.</summary>
    /// <param name="segment">Its place in the history, from 0; its start is known.</param>
    /// <param name="heats">Weighted heats since its start, each zero or more, in any order.</param>
    /// <returns>Wear in mm, one for each, in the same order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment with a known start.</exception>
    public ImmutableArray<double> Fitted(int segment, IReadOnlyList<double> heats) =>
        WearPath.Fitted(mixture, Segment(segment), heats);

    /// <summary>How many more heats until the expected wear reaches a size.</summary>
    /// <param name="wearMm">Wear in mm.</param>
    /// <returns>Heats, 0 where it is there already; null beyond 20 000.</returns>
    public double? HeatsToWear(double wearMm) =>
        RisingRoot.Of(mixture.Mean, Finite.Number(wearMm) / LimitMm, 0, HeatsLeft.Most, mixture.Tool.N0 / 16);

    // life = heats so far in this stretch + heats left
    private static Estimated Life(double now, HeatsLeft left) =>
        left is { Q05: { } low, Q50: { } middle }
            ? new Estimate(now + middle, now + low, now + left.Q95)
            : new NotEnoughData(0, 1, "its readings do not show how long it lasts");

    // rate = (limit - wear at the start of the stretch) / life
    private static Estimated Rate(double toWearMm, Estimated life) =>
        life is Estimate { Value: > 0 } heats
            ? new Estimate(
                toWearMm / heats.Value,
                toWearMm / heats.High90 ?? 0,
                heats.Low90 > 0 ? toWearMm / heats.Low90 : null
            )
            : new NotEnoughData(0, 1, "its readings do not show how long it lasts");

    private Stretch Segment(int place) =>
        mixture.Tool.Stretches.FirstOrDefault(recorded => recorded.Place == place)
        ?? throw new ArgumentOutOfRangeException(nameof(place), place, "has no known start");

    private ImmutableArray<WearBand> Bands(Stretch stretch, IReadOnlyList<double> heats) =>
        WearPath.Bands(mixture, stretch, heats, Asked(0.1), Asked(0.9));

    private double Asked(double p) => NormalCurve.Widened(p, widening);

    // past its limit now is what the model says; what is to come, given that it is not, spreads further about its middle
    private double F(double k)
    {
        double F = mixture.Above(k, 1, withReading: false);
        double F0 = ChancePastLimitNow;
        return widening == 1 || F0 >= 1 ? F : F0 + ((1 - F0) * NormalCurve.Widened((F - F0) / (1 - F0), 1 / widening));
    }

    private double ReadingAt(double k, double p)
    {
        double Below(double y) => 1 - mixture.Above(k, y, withReading: true);
        double middle = mixture.Mean(k);
        double step = 1;
        while (Below(middle - step) > p)
        {
            step *= 2;
        }

        return LimitMm * RisingRoot.Of(Below, p, middle - step, double.MaxValue, step / 4)!.Value;
    }
}
