namespace ToolWear.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its pinned name in files; null where only people are shown it.</param>
/// <param name="Heading">What stands over it for people; null where people are not shown it.</param>
public sealed record Column(string? Name, string? Heading);
