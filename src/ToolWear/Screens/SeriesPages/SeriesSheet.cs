using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.SeriesPages;

/// <summary>A place of a series that is being changed or added. It is recorded with the series, not by itself.</summary>
internal sealed class SeriesSheet : FieldSheet<SeriesDescribed>
{
    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="eye">The eye's name.</param>
    /// <param name="before">The place as it is; null for another one.</param>
    public SeriesSheet(Sitting sitting, string eye, Series? before)
        : base(
            SeriesFields.Table,
            sitting,
            new(before ?? SeriesFields.Table.Blank.Series with { Eye = eye }),
            before is null
        )
    {
        Heading = before is null
            ? NewPlaceHeading(eye)
            : ChangePlaceHeading(Words.SeriesName(eye, before.Place, before.Form.Name));
        if (before is null)
        {
            Offer("form", ToolForms.Drift);
        }
    }

    /// <inheritdoc />
    public override string Heading { get; }

    /// <inheritdoc />
    protected override bool Record(SeriesDescribed thing) => true;

    private static string NewPlaceHeading(string eye) => $"Another place of the series for eye {eye}";

    private static string ChangePlaceHeading(string place) => $"Series: {place}";
}
