namespace ToolWear.Storage;

internal static class Placeholder;
