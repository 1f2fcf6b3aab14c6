using ToolWear.Core.Measure;

namespace ToolWear.Core.Wear.Figures;

/// <summary>What any forecast of one gauge mark answers. It is an estimate, not a go-ahead.</summary>
/// <remarks>
/// Heats are weighted heats, lengths mm. Where nothing can be said, <see cref="NotEnoughData"/> stands in its place.
/// Planned use that is harder than usual by a factor c is asked for as c k heats.
/// </remarks>
public abstract record Forecast : Estimated
{
    private protected Forecast() { }

    /// <summary>Expected wear now, mm, from the tool's start size.</summary>
    public abstract double WearNowMm { get; }

    /// <summary>The wear in mm at which the tool is worn out.</summary>
    public abstract double LimitMm { get; }

    /// <summary>Weighted heats since the start of the last segment.</summary>
    public abstract double HeatsNow { get; }

    /// <summary>F0, the chance that the tool is past its limit now, 0 to 1.</summary>
    public abstract double ChancePastLimitNow { get; }

    /// <summary>Heats left given that the tool is not past its limit, even where that is not likely; files hold these.</summary>
    public abstract HeatsLeft HeatsLeftIfNotPast { get; }

    /// <summary>Heats left as they are said: all of them 0 where the tool is <see cref="AtOrPastLimit"/>, else those
    /// given that it is not past its limit.</summary>
    public HeatsLeft HeatsLeft => AtOrPastLimit ? HeatsLeft.None : HeatsLeftIfNotPast;

    /// <summary>Heats that this tool lasts from new to its limit: an <see cref="Estimate"/>, or
    /// <see cref="NotEnoughData"/> where its readings do not rise.</summary>
    public abstract Estimated LifeHeats { get; }

    /// <summary>Wear in mm a heat: an <see cref="Estimate"/>.</summary>
    public abstract Estimated RateMmPerHeat { get; }

    /// <summary>True where it is as likely past its limit as not: say "at or past the limit now".</summary>
    public bool AtOrPastLimit => ChancePastLimitNow >= 0.5;

    /// <summary>F(k), the chance that the tool is past its limit after k more heats; it never falls with k.</summary>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>A chance, 0 to 1; at k = 0 it is <see cref="ChancePastLimitNow"/>.</returns>
    public abstract double ChancePastLimit(double moreHeats);

    /// <summary>The chance that the tool, not being past its limit now, is so after k more heats: (F(k)-F0)/(1-F0).</summary>
    /// <param name="moreHeats">k, zero or more.</param>
    /// <returns>A chance, 0 to 1; 1 where it is surely past the limit already.</returns>
    public double ChanceUsedUpWithin(double moreHeats)
    {
        double F0 = ChancePastLimitNow;
        return F0 < 1 ? Math.Clamp((ChancePastLimit(moreHeats) - F0) / (1 - F0), 0, 1) : 1;
    }
}
