using System.Runtime.InteropServices;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>What tools replace each other: those of one form at one place for one eye.</summary>
/// <param name="Eye">The eye's name, null for tools that serve every eye.</param>
/// <param name="Place">The place in the series.</param>
/// <param name="Form">The form's name.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ToolPlace(string? Eye, Place Place, string Form)
{
    /// <summary>Where a tool belongs.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>Its place.</returns>
    public static ToolPlace Of(Tool tool) => new(tool.Eye, tool.Place, tool.Form.Name);

    /// <summary>What its tools are made like.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>The series; null where none is entered.</returns>
    public Series? SeriesIn(Shop shop) =>
        Eye is { } eye ? shop.Series.GetValueOrDefault(new SeriesKey(eye, Place, Form)) : null;

    /// <summary>The place in words: "H rough drift", "fuller".</summary>
    /// <returns>Eye, place and form, empties left out.</returns>
    public override string ToString() =>
        string.Join(
            ' ',
            new[] { Eye, Place == Place.None ? null : Places.Words.Word(Place), Form }.Where(word =>
                !string.IsNullOrEmpty(word)
            )
        );
}
