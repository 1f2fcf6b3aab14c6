using System.Globalization;
using System.Text;
using System.Text.Json;
using ToolWear.Core.Planning.Lives;
using ToolWear.Wording;

namespace ToolWear.Pens;

/// <summary>How many new tools a demand takes, with the pinned names.</summary>
internal static class PlanFigures
{
    /// <summary>Writes demand_heats, sure, cover, needed, expected into an object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="plan">The plan.</param>
    public static void Write(Utf8JsonWriter json, Replacements plan)
    {
        json.WriteNumber("demand_heats", plan.DemandHeats);
        json.WriteNumber("sure", plan.Sure);
        json.WriteStartArray("cover");
        foreach (double certainty in plan.Cover)
        {
            json.WriteNumberValue(certainty);
        }

        json.WriteEndArray();
        json.WriteNumber("needed", plan.Needed);
        json.WriteNumber("expected", plan.Expected);
    }

    /// <summary>The plan for people.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Lines, each with its line end.</returns>
    public static string ToText(Replacements plan)
    {
        StringBuilder text = new();
        text.Append($"{plan.Needed} new for {plan.DemandHeats} heats, to be {Words.Percent(plan.Sure)} sure; ");
        text.Append($"{plan.Expected.ToString("0.0", CultureInfo.InvariantCulture)} to be expected\n\n");
        for (int r = 0; r < plan.Cover.Length && r <= plan.Needed + 2; r++)
        {
            text.Append($"{(r == plan.Needed ? ">" : " ")} {r, 3} new  {Words.Percent(plan.Cover[r])}\n");
        }

        return text.ToString();
    }
}
