using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>The forge list as text for the shop wall, at most 80 columns wide.</summary>
internal static class WallText
{
    private const string Box = "[ ] ";
    private const string Inside = "    ";

    /// <summary>Writes the sheet.</summary>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <param name="demo">The mark of the demo, empty for a shop of one's own.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string Of(ForgeList list, LengthUnit units, string demo)
    {
        StringBuilder text = new($"{PlanWords.WallHeading(list)}{demo}\n{PlanWords.PlannedSure(list.Sure)}\n\n");
        if (list.Batches.IsEmpty)
        {
            text.Append(Wrapped.Of(PlanWords.NothingToForge)).Append('\n');
        }

        foreach (ForgeBatch batch in list.Batches)
        {
            text.Append(Wrapped.Of(PlanWords.WallSentence(batch, units), Box, Inside));
            text.Append(Wrapped.Of(PlanWords.WallDetails(batch, units), Inside, Inside)).Append('\n');
        }

        Part(text, PlanWords.CutListHeading, list.Cuts.Bars.Select(bar => PlanWords.CutOf(bar, units)));
        Part(text, PlanWords.BuyHeading, list.Cuts.Buy.Select(buy => PlanWords.BarsOf(buy, units)));
        Part(text, PlanWords.MindHeading, [.. Mind(list, units), Cautions.ForecastCaution]);
        return text.ToString().TrimEnd('\n') + "\n";
    }

    /// <summary>What has to be minded of one list, in the text and on the printed sheet.</summary>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Sentences.</returns>
    internal static IEnumerable<string> Mind(ForgeList list, LengthUnit units) =>
        [
            .. list.Calendar.Late.Select(PlanWords.Late),
            .. list.WaysOut.Select(PlanWords.Sooner),
            .. list.Cuts.Shared.Select(shared => PlanWords.SharedBarOf(shared, units)),
            .. PlanWords.NotPlanned(list),
            PlanWords.HeatsAHeadUsed(list),
            PlanWords.CracksPlanned(list),
        ];

    private static void Part(StringBuilder text, string heading, IEnumerable<string> sentences)
    {
        string[] all = [.. sentences];
        if (all.Length > 0)
        {
            text.Append(heading).Append('\n');
            foreach (string sentence in all)
            {
                text.Append(Wrapped.Of(sentence, "  ", Inside));
            }

            text.Append('\n');
        }
    }
}
