using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Eyes;

/// <summary>An eye that is being entered or changed.</summary>
internal sealed class EyeSheet : FieldSheet<EyeDescribed>
{
    private const string NewEyeHeading = "A new eye";

    private const string Grade = "IT";

    private string? noSuchGrade;

    /// <summary>Begins.</summary>
    /// <param name="sitting">The sitting.</param>
    /// <param name="before">The eye as it is; null for a new one.</param>
    /// <param name="handle">The handle that a new one is to take; null for none yet.</param>
    public EyeSheet(Sitting sitting, EyeDescribed? before, HandleDescribed? handle = null)
        : base(EyeFields.Table, sitting, before ?? EyeFields.Table.Blank, before is null)
    {
        Heading = before is null ? NewEyeHeading : ChangeEyeHeading(before.Name);
        if (handle is not null)
        {
            EyeDescribed eye = HandleEye.Of(handle, "", SectionKind.Oval);
            Offer(eye, "length_mm", "width_mm", "taper_length", "taper_width", "fit", "driven", "handle");
        }
    }

    /// <inheritdoc />
    public override string Heading { get; }

    /// <inheritdoc />
    public override string Below => Cautions.EyeCaution;

    /// <summary>Takes the answer; a round has one size, and a grade stands for all four tolerances.</summary>
    /// <returns>True where it was the last question.</returns>
    public override bool Next()
    {
        string answered = Open;
        bool isLast = base.Next();
        if (answered == "length_mm" && Answer("section") == "round" && Answer("width_mm").Length == 0)
        {
            Offer("width_mm", Answer(answered));
        }

        if (answered == "least_length_mm")
        {
            noSuchGrade = null;
            OfferGrade(Answer(answered));
        }

        return isLast;
    }

    /// <inheritdoc />
    protected override FieldFault? FaultIn(EyeDescribed thing, Shop shop) =>
        thing.Handle is { } handle && !shop.Handles.ContainsKey(handle) ? new("handle", NoHandle(handle, shop))
        : IsNew && shop.Eyes.ContainsKey(thing.Name) ? new("eye", EyeThere(thing.Name))
        : null;

    /// <inheritdoc />
    protected override string Why(FieldFault fault) =>
        fault.Field == "least_length_mm" && noSuchGrade is not null ? noSuchGrade : fault.Sentence;

    /// <inheritdoc />
    protected override string Said(EyeDescribed thing) => EyeEntered(thing.Name);

    private void OfferGrade(string answer)
    {
        if (
            answer.StartsWith(Grade, StringComparison.OrdinalIgnoreCase)
            && SizeText.TryParse(Answer("length_mm"), Sitting.Units, out TypedSize length, out _)
            && SizeText.TryParse(Answer("width_mm"), Sitting.Units, out TypedSize width, out _)
        )
        {
            _ = int.TryParse(
                answer[Grade.Length..].Trim(),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out int grade
            );
            if (EyeTolerance.TryFromGrade(length.Length, width.Length, grade, out EyeTolerance? eye, out noSuchGrade))
            {
                Offer("least_length_mm", SizeText.Offer(eye.LeastLength, Sitting.Units)!);
                Offer("greatest_length_mm", SizeText.Offer(eye.GreatestLength, Sitting.Units)!);
                Offer("least_width_mm", SizeText.Offer(eye.LeastWidth, Sitting.Units)!);
                Offer("greatest_width_mm", SizeText.Offer(eye.GreatestWidth, Sitting.Units)!);
            }
        }
    }

    private static string ChangeEyeHeading(string eye) => $"Eye {eye}";

    private static string EyeThere(string eye) => $"there is an eye {eye} already: change that one";

    private static string NoHandle(string handle, Shop shop) => NearNames.Refusal("handle", handle, shop.Handles.Keys);

    private static string EyeEntered(string eye) => $"Eye {eye} saved.";
}
