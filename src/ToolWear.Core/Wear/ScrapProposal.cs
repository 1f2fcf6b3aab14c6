using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Wear;

/// <summary>A scrap size proposed for a gauge mark of a tool that has none yet.</summary>
/// <param name="Size">The size.</param>
/// <param name="Like">The tool that it was taken from; null where it follows from the eye's tolerance.</param>
public sealed record ScrapProposal(Length Size, ToolInShop? Like)
{
    // what a caliper reads: a hundredth of a mm
    private const double StepMm = 0.01;

    /// <summary>Proposes the size: from the eye's tolerance for a drift that makes the finished eye, else that of the last tool made there.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="eyes">The measured eyes; null where they are not gathered yet.</param>
    /// <param name="eye">The eye's name, null where the tool serves all.</param>
    /// <param name="place">The tool's place.</param>
    /// <param name="form">Its form.</param>
    /// <param name="measures">What the gauge mark measures.</param>
    /// <returns>The proposal; null where nothing speaks for a size.</returns>
    public static ScrapProposal? Of(
        Shop shop,
        EyesMade? eyes,
        string? eye,
        Place place,
        ToolForm form,
        Measures measures
    ) => FromEye(shop, eyes, eye, place, form, measures) ?? FromSister(shop, eye, place, form, measures);

    private static ScrapProposal? FromEye(
        Shop shop,
        EyesMade? eyes,
        string? eye,
        Place place,
        ToolForm form,
        Measures measures
    )
    {
        if (
            form.Name != ToolForms.Drift
            || measures is not (Measures.Length or Measures.Width)
            || !DriftOutlooks.IsJudged(place)
            || eye is null
            || !shop.Eyes.TryGetValue(eye, out EyeDescribed? described)
            || DriftOutlooks.WantedOf(shop, described).Judged is not { } tolerance
        )
        {
            return null;
        }

        EyeSize least = DriftOutlooks.LimitsOf(shop, eyes, eye, place, tolerance).Least;
        double mm = measures == Measures.Length ? least.LengthMm : least.WidthMm;
        // never under the size that still serves
        return new(Length.FromMm(Math.Ceiling(mm / StepMm) * StepMm), null);
    }

    private static ScrapProposal? FromSister(Shop shop, string? eye, Place place, ToolForm form, Measures measures)
    {
        foreach (ToolInShop tool in shop.Tools.Values.Reverse())
        {
            if (
                tool.Tool.Eye == eye
                && tool.Tool.Place == place
                && tool.Tool.Form == form
                && tool.Tool.GaugeMarks.FirstOrDefault(gauge => gauge.Measures == measures)?.ScrapSize is { } scrap
            )
            {
                return new(scrap, tool);
            }
        }

        return null;
    }
}
