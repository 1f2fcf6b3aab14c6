using System.Collections.Immutable;

namespace ToolWear.Core.Tools;

/// <summary>A gauge mark that tools of a form usually have.</summary>
/// <param name="Name">Its usual name.</param>
/// <param name="Wears">The main direction of wear.</param>
/// <param name="Measures">What is measured there.</param>
public sealed record UsualGaugeMark(string Name, Wears Wears, Measures Measures);

/// <summary>A form of tool: what kind of thing it is, and how such things wear. Common practice, no source.</summary>
/// <param name="Name">Its name in files, commands and on screens: "slot punch".</param>
/// <param name="IsStruck">Whether its end is struck, so that it mushrooms and is ground back.</param>
/// <param name="UsualGaugeMarks">Where such tools are measured, the one that decides most often first.</param>
/// <param name="MainWork">The work that counts one for one, by the tool's place.</param>
/// <param name="DressedAfter">After how many heats its edge is usually dressed; 0 where only the shop's own dressings can
/// say; null where it is not dressed by heats.</param>
/// <param name="OpensASlit">Whether its edge is as long as the slit it opens: its width wears along the slit.</param>
public sealed record ToolForm(
    string Name,
    bool IsStruck,
    ImmutableArray<UsualGaugeMark> UsualGaugeMarks,
    Func<Place, Work> MainWork,
    bool OpensASlit = false,
    int? DressedAfter = null
)
{
    /// <summary>The name of the gauge mark over the whole length, which every struck tool has.</summary>
    public const string Overall = "overall";

    /// <summary>Two forms are one where their names are.</summary>
    /// <param name="other">Another form.</param>
    /// <returns>True where the names agree.</returns>
    public bool Equals(ToolForm? other) => other is not null && Name == other.Name;

    /// <inheritdoc />
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    /// <summary>The form's name.</summary>
    /// <returns>For example "drift".</returns>
    public override string ToString() => Name;
}
