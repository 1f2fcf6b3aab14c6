using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes;

/// <summary>A section with what the smith calls it: a place in a series, or a tool.</summary>
/// <param name="Name">For example "rough".</param>
/// <param name="Section">The section, as it is now.</param>
public sealed record NamedSection(string Name, Section Section);
