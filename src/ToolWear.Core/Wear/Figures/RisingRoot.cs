namespace ToolWear.Core.Wear.Figures;

/// <summary>Where a function that never falls reaches a value.</summary>
internal static class RisingRoot
{
    // relative to the root: far below what the pinned quantiles are held to
    private const double Accuracy = 1e-11;
    private const int Steps = 200;

    /// <summary>The root of F(k) = p in [low, high], or null where F stays below p.</summary>
    /// <param name="F">A function that never falls.</param>
    /// <param name="p">The value.</param>
    /// <param name="low">Where to begin.</param>
    /// <param name="high">Where to give up.</param>
    /// <param name="scale">A first step of about the right size, above zero.</param>
    internal static double? Of(Func<double, double> F, double p, double low, double high, double scale)
    {
        double a = low;
        double fa = F(a) - p;
        if (fa >= 0)
        {
            return a;
        }

        double step = scale;
        double b;
        double fb;
        while (true)
        {
            b = Math.Min(high, a + step);
            fb = F(b) - p;
            if (fb >= 0)
            {
                return Between(F, p, (a, fa), (b, fb));
            }

            if (b >= high)
            {
                return null;
            }

            (a, fa, step) = (b, fb, 2 * step);
        }
    }

    // False position, Illinois variant (Dowell & Jarratt 1971, BIT 11:168): the end that stays has its value halved;
    // a step that gains too little is replaced by halving the bracket.
    private static double Between(Func<double, double> F, double p, (double k, double f) a, (double k, double f) b)
    {
        for (int i = 0; i < Steps && b.k - a.k > Accuracy * b.k; i++)
        {
            double width = b.k - a.k;
            double k = a.k - (a.f * width / (b.f - a.f));
            k = i % 6 == 5 || !(k > a.k && k < b.k) ? a.k + (width / 2) : k;
            double f = F(k) - p;
            if (f == 0)
            {
                return k;
            }

            (a, b) = f < 0 ? ((k, f), (b.k, i > 0 ? b.f / 2 : b.f)) : ((a.k, i > 0 ? a.f / 2 : a.f), (k, f));
        }

        return b.k;
    }
}
