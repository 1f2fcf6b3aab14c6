using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>A place along a tool where its section is known.</summary>
/// <param name="Part">The part of the tool that it belongs to.</param>
/// <param name="FromMark">How far it lies from the shank mark towards the nose; negative towards the struck end.</param>
/// <param name="Section">The section there.</param>
public sealed record Station(BodyPart Part, Length FromMark, Section Section);
