using System.Collections.Immutable;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Core.Wear;

/// <summary>How a drift lies in the one used after it, and the one before in it.</summary>
public static class NestingAround
{
    /// <summary>The steps of a series that a drift of other size than its series says takes part in.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="eye">The eye's name.</param>
    /// <param name="place">The drift's place.</param>
    /// <param name="width">Its width at the mark; the rest is as its series says.</param>
    /// <returns>One or two steps; none where its series is not entered or the width makes no such section.</returns>
    public static ImmutableArray<NestingStep> Of(Shop shop, string eye, Place place, Length width)
    {
        NamedSection[] series =
        [
            .. shop
                .Series.Values.Where(each => each.Eye == eye && each.Form.Name == ToolForms.Drift)
                .OrderBy(each => each.Place)
                .Select(each => (each.Place, Section: each.Place == place ? With(each.AtMark(), width) : each.AtMark()))
                .Where(each => each.Section is not null)
                .Select(each => new NamedSection(Places.Words.Word(each.Place), each.Section!)),
        ];
        string own = Places.Words.Word(place);
        return [.. NestingStep.Of(series).Where(step => step.Before.Name == own || step.After.Name == own)];
    }

    private static Section? With(Section? made, Length width)
    {
        if (made is null)
        {
            return null;
        }

        Length length = made.Kind == SectionKind.Round ? width : made.EyeLength;
        return made.TryWornTo(length, width, out Section? section, out string? _) ? section : null;
    }
}
