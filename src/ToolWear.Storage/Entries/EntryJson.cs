using System.Text.Json.Serialization;
using ToolWear.Core.Ledger;

namespace ToolWear.Storage.Entries;

/// <summary>The generated JSON of every ledger entry.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    IgnoreReadOnlyProperties = true,
    RespectNullableAnnotations = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    Converters = [
        typeof(TextJson),
        typeof(LengthJson),
        typeof(HeatsJson),
        typeof(ToolMarkJson),
        typeof(ToolFormJson),
        typeof(SectionJson),
        typeof(PlaceJson),
        typeof(WorkJson),
        typeof(WearsJson),
        typeof(MeasuresJson),
        typeof(SectionKindJson),
        typeof(BodyPartJson),
        typeof(StartedAsJson),
        typeof(HeatsBeforeHowJson),
        typeof(ScrapCauseJson),
        typeof(CoolingJson),
        typeof(HeatsHowJson),
        typeof(ReworkJson),
        typeof(FindingJson),
        typeof(ToolPartJson),
        typeof(LedToJson),
        typeof(EyeWhereJson),
        typeof(HandleFitsJson),
        typeof(FitJson),
        typeof(DrivenJson),
        typeof(OrderStateJson),
    ]
)]
[JsonSerializable(typeof(ToolAdded))]
[JsonSerializable(typeof(ToolCorrected))]
[JsonSerializable(typeof(ToolRemarked))]
[JsonSerializable(typeof(ToolStartedHere))]
[JsonSerializable(typeof(ToolSetAside))]
[JsonSerializable(typeof(ToolBroughtBack))]
[JsonSerializable(typeof(ToolScrapped))]
[JsonSerializable(typeof(SessionOpened))]
[JsonSerializable(typeof(SessionClosed))]
[JsonSerializable(typeof(HeatsWorked))]
[JsonSerializable(typeof(ToolMeasured))]
[JsonSerializable(typeof(ToolReworked))]
[JsonSerializable(typeof(ToolLookedOver))]
[JsonSerializable(typeof(EyeMeasured))]
[JsonSerializable(typeof(EyeDescribed))]
[JsonSerializable(typeof(HandleDescribed))]
[JsonSerializable(typeof(SeriesDescribed))]
[JsonSerializable(typeof(PatternDescribed))]
[JsonSerializable(typeof(BarDescribed))]
[JsonSerializable(typeof(OrderDescribed))]
[JsonSerializable(typeof(SettingChanged))]
[JsonSerializable(typeof(EntryCrossedOut))]
[JsonSerializable(typeof(HeadsDone))]
[JsonSerializable(typeof(EntryCountsAgain))]
[JsonSerializable(typeof(ToolLent))]
[JsonSerializable(typeof(ToolTakenBack))]
[JsonSerializable(typeof(ToolLookedFor))]
internal sealed partial class EntryJson : JsonSerializerContext;
