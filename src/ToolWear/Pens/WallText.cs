using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;

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
        StringBuilder text = new($"{Words.WallHeading(list)}{demo}\n{Words.PlannedSure(list.Sure)}\n\n");
        if (list.Batches.IsEmpty)
        {
            text.Append(Wrapped.Of(Words.NothingToForge)).Append('\n');
        }

        foreach (ForgeBatch batch in list.Batches)
        {
            text.Append(Wrapped.Of(Words.WallSentence(batch, units), Box, Inside));
            text.Append(Wrapped.Of(Words.WallDetails(batch, units), Inside, Inside)).Append('\n');
        }

        Part(text, Words.CutListHeading, list.Cuts.Bars.Select(bar => Words.CutOf(bar, units)));
        Part(text, Words.BuyHeading, list.Cuts.Buy.Select(buy => Words.BarsOf(buy, units)));
        Part(text, Words.MindHeading, [.. Mind(list, units), Words.ForecastCaution]);
        return text.ToString().TrimEnd('\n') + "\n";
    }

    /// <summary>What has to be minded of one list, in the text and on the printed sheet.</summary>
    /// <param name="list">The list.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>Sentences.</returns>
    internal static IEnumerable<string> Mind(ForgeList list, LengthUnit units) =>
        [
            .. list.Calendar.Late.Select(Words.Late),
            .. list.Cuts.Shared.Select(shared => Words.SharedBarOf(shared, units)),
            .. Words.NotPlanned(list),
            Words.HeatsAHeadUsed(list),
            Words.CracksPlanned(list),
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
