using CsCheck;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.Generators;

/// <summary>Names and notes, the awkward ones included: commas, quotes, formula signs, accents, other scripts.</summary>
public static class Texts
{
    private static readonly string[] Pieces =
    [
        "R",
        "3",
        "a",
        "Z",
        "-",
        "=",
        "+",
        "@",
        "'",
        "\"",
        ",",
        ";",
        "/",
        "\\",
        ".",
        "%",
        "é",
        "ß",
        "Ж",
        "槌",
        "🔨",
    ];

    /// <summary>A name: 1 to 12 pieces, a space only between two others.</summary>
    public static Gen<string> Name { get; } =
        Gen.Select(
            Gen.OneOf(Pieces),
            Gen.OneOf([.. Pieces, " "]).Array[0, 10],
            Gen.OneOf(Pieces),
            (first, middle, last) => first + string.Concat(middle) + last
        );

    /// <summary>A mark that can be stamped.</summary>
    public static Gen<ToolMark> Mark { get; } = Name.Select(MarkOf);

    /// <summary>What a terminal or a page would obey, or show turned round or not at all.</summary>
    private static readonly string[] Harmful =
    [
        "\u001B[2J",
        "\u001B]0;title\a",
        "\u009B1m",
        "\r",
        "\v",
        "\u0085",
        "\u2028",
        "\u202E",
        "\u200B",
        "\uFEFF",
        "<script>",
        "]]>",
    ];

    /// <summary>A note, of several lines at times and of anything but NUL, or none.</summary>
    public static Gen<string?> Note { get; } =
        Gen.Null(
            Gen.OneOf([.. Pieces, " ", "\n", "\t", "a long word ", .. Harmful]).Array[1, 30].Select(string.Concat),
            0.3
        );

    /// <summary>The mark of a text that can be one.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The mark.</returns>
    /// <exception cref="ArgumentException">The text cannot be a mark.</exception>
    public static ToolMark MarkOf(string text) =>
        ToolMark.TryParse(text, out ToolMark mark, out string refusal)
            ? mark
            : throw new ArgumentException(refusal, nameof(text));
}
