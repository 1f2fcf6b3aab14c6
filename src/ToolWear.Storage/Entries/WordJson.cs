using System.Text.Json;
using System.Text.Json.Serialization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Entries;

/// <summary>Writes a value of a closed list by its word, so that renaming a type changes no file.</summary>
internal abstract class WordJson<T>(Vocabulary<T> words) : JsonConverter<T>
    where T : struct, Enum
{
    /// <inheritdoc />
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        ReadOnlySpan<char> word = ShortText.LettersOf(reader, stackalloc char[ShortText.Room]);
        return words.TryParse(word, out T value, out string refusal) ? value : throw new JsonException(refusal);
    }

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        writer.WriteStringValue(words.Word(value));
}

internal sealed class PlaceJson() : WordJson<Place>(Places.Words);

internal sealed class WorkJson() : WordJson<Work>(Works.Words);

internal sealed class WearsJson() : WordJson<Wears>(GaugeMark.WearsWords);

internal sealed class MeasuresJson() : WordJson<Measures>(GaugeMark.MeasuresWords);

internal sealed class SectionKindJson() : WordJson<SectionKind>(SectionKinds.Words);

internal sealed class BodyPartJson() : WordJson<BodyPart>(BodyParts.Words);

internal sealed class StartedAsJson() : WordJson<StartedAs>(ToolStart.AsWords);

internal sealed class HeatsBeforeHowJson() : WordJson<HeatsBeforeHow>(ToolStart.HowWords);

internal sealed class ScrapCauseJson() : WordJson<ScrapCause>(ToolScrapped.CauseWords);

internal sealed class CoolingJson() : WordJson<Cooling>(Care.CoolingWords);

internal sealed class HeatsHowJson() : WordJson<HeatsHow>(HeatsWorked.HowWords);

internal sealed class ReworkJson() : WordJson<Rework>(ToolReworked.WhatWords);

internal sealed class FindingJson() : WordJson<Finding>(ToolLookedOver.FindingWords);

internal sealed class ToolPartJson() : WordJson<ToolPart>(ToolLookedOver.PartWords);

internal sealed class LedToJson() : WordJson<LedTo>(ToolScrapped.LedToWords);

internal sealed class EyeWhereJson() : WordJson<EyeWhere>(EyeMeasured.WhereWords);

internal sealed class HandleFitsJson() : WordJson<HandleFits>(EyeMeasured.FitsWords);

internal sealed class FitJson() : WordJson<Fit>(EyeDescribed.FitWords);

internal sealed class DrivenJson() : WordJson<Driving>(EyeDescribed.DrivenWords);

internal sealed class OrderStateJson() : WordJson<OrderState>(OrderDescribed.StateWords);
