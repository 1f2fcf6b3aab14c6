using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Eyes;

/// <summary>An eye that is being entered or changed.</summary>
public sealed class EyeSheet : GuidedEntry
{
    private const int Section = 0;
    private const int Long = 1;
    private const int Wide = 2;
    private const int Radius = 3;
    private const int Depth = 4;
    private const int TaperLong = 5;
    private const int TaperWide = 6;
    private const int Fits = 7;
    private const int Driven = 8;
    private const int LeastLong = 9;
    private const int MostLong = 10;
    private const int LeastWide = 11;
    private const int MostWide = 12;
    private const int Handle = 13;
    private const int Name = 14;
    private const string Grade = "IT";

    private readonly EyeDescribed? before;

    private EyeSheet(Shop shop, EyeDescribed? before)
        : base(new GuidedLine(Questions(shop, isNew: before is null))) => this.before = before;

    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewEyeHeading : Words.ChangeEyeHeading(before.Name);

    /// <inheritdoc />
    public override string Below => Words.EyeCaution;

    /// <summary>The eye that was entered; null before.</summary>
    public EyeDescribed? Eye { get; private set; }

    /// <summary>A new eye.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="units">The unit of sizes offered.</param>
    /// <param name="handle">The handle it is to take; null for none yet.</param>
    /// <returns>The sheet.</returns>
    public static EyeSheet New(Shop shop, LengthUnit units, HandleDescribed? handle)
    {
        EyeSheet sheet = new(shop, null);
        if (handle is not null)
        {
            sheet.OfferFor(handle, units);
        }

        return sheet;
    }

    /// <summary>A change of an eye.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="units">The unit of sizes offered.</param>
    /// <param name="eye">The eye as it is.</param>
    /// <returns>The sheet.</returns>
    public static EyeSheet Change(Shop shop, LengthUnit units, EyeDescribed eye)
    {
        EyeSheet sheet = new(shop, eye);
        void Size(int question, Length? size) => sheet.Guided.Offer(question, AnswersRead.Offer(size, units));
        void Number(int question, double? number) => sheet.Guided.Offer(question, AnswersRead.Offer(number));
        sheet.Guided.Offer(Section, SectionKinds.Words.Word(eye.Section));
        Size(Long, eye.Length);
        Size(Wide, eye.Width);
        Size(Radius, eye.NoseRadius);
        Size(Depth, eye.Depth);
        Number(TaperLong, eye.TaperLength);
        Number(TaperWide, eye.TaperWidth);
        sheet.Guided.Offer(Fits, eye.Fit is { } fit ? EyeDescribed.FitWords.Word(fit) : "");
        sheet.Guided.Offer(Driven, eye.Driven is { } driven ? EyeDescribed.DrivenWords.Word(driven) : "");
        Size(LeastLong, eye.LeastLength);
        Size(MostLong, eye.GreatestLength);
        Size(LeastWide, eye.LeastWidth);
        Size(MostWide, eye.GreatestWidth);
        sheet.Guided.Offer(Handle, eye.Handle ?? "");
        return sheet;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        SectionKind kind = read.Word(Section, SectionKinds.Words) ?? SectionKind.Other;
        Length length = read.NeedSize(Long);
        EyeDescribed eye = new(
            before?.Name ?? read.Text(Name) ?? "",
            kind,
            length,
            kind == SectionKind.Round ? read.Size(Wide) ?? length : read.NeedSize(Wide),
            read.Size(Radius),
            read.Size(Depth),
            read.Taper(TaperLong),
            read.Taper(TaperWide),
            read.Word(Fits, EyeDescribed.FitWords),
            read.Word(Driven, EyeDescribed.DrivenWords),
            null,
            null,
            null,
            null,
            read.Text(Handle)
        );
        eye = WithTolerance(eye, read);
        RefuseWrong(eye, read, sitting.Shop);
        if (read.Refusal is not null || !sitting.Record(eye))
        {
            return false;
        }

        Eye = eye;
        sitting.Say(Words.EyeEntered(eye.Name), Ink.Done);
        return true;
    }

    private void RefuseWrong(EyeDescribed eye, AnswersRead read, Shop shop)
    {
        if (
            eye.Section != SectionKind.Other
            && !Core.Sections.Section.TryMake(
                eye.Section,
                eye.Length,
                eye.Width,
                eye.NoseRadius ?? Length.Zero,
                out Core.Sections.Section? _,
                out string? fault
            )
        )
        {
            read.Refuse(Long, fault);
        }

        if (eye.Section == SectionKind.Round && eye.Length != eye.Width)
        {
            read.Refuse(Wide, Words.RoundIsOneSize);
        }

        if (eye.Handle is { } handle && !shop.Handles.ContainsKey(handle))
        {
            read.Refuse(Handle, Words.NoHandle(handle, shop));
        }

        if (before is null && shop.Eyes.ContainsKey(eye.Name))
        {
            read.Refuse(Name, Words.EyeThere(eye.Name));
        }
        else if (before is null && eye.Name.Length == 0)
        {
            read.Refuse(Name, Words.NameWanted);
        }
    }

    // four figures, or one ISO 286 grade in the place of the first
    private static EyeDescribed WithTolerance(EyeDescribed eye, AnswersRead read)
    {
        EyeTolerance? tolerance;
        string? refusal;
        if (read.Text(LeastLong) is { } text && text.StartsWith(Grade, StringComparison.OrdinalIgnoreCase))
        {
            _ = int.TryParse(
                text[Grade.Length..].Trim(),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out int grade
            );
            _ = EyeTolerance.TryFromGrade(eye.Length, eye.Width, grade, out tolerance, out refusal);
        }
        else
        {
            Length?[] sizes = [.. ((int[])[LeastLong, MostLong, LeastWide, MostWide]).Select(read.Size)];
            if (sizes.All(size => size is null))
            {
                return eye;
            }

            if (sizes.Any(size => size is null))
            {
                read.Refuse(LeastLong + Array.IndexOf(sizes, null), Words.AllFourWanted);
                return eye;
            }

            _ = EyeTolerance.TryMake(
                sizes[0]!.Value,
                sizes[1]!.Value,
                sizes[2]!.Value,
                sizes[3]!.Value,
                out tolerance,
                out refusal
            );
        }

        if (tolerance is null)
        {
            read.Refuse(LeastLong, refusal!);
            return eye;
        }

        return eye with
        {
            LeastLength = tolerance.LeastLength,
            GreatestLength = tolerance.GreatestLength,
            LeastWidth = tolerance.LeastWidth,
            GreatestWidth = tolerance.GreatestWidth,
        };
    }

    private void OfferFor(HandleDescribed handle, LengthUnit units)
    {
        EyeDescribed eye = HandleEye.Of(handle, "", SectionKind.Oval);
        Guided.Offer(Long, AnswersRead.Offer(eye.Length, units));
        Guided.Offer(Wide, AnswersRead.Offer(eye.Width, units));
        Guided.Offer(TaperLong, AnswersRead.Offer(eye.TaperLength));
        Guided.Offer(TaperWide, AnswersRead.Offer(eye.TaperWidth));
        Guided.Offer(Fits, EyeDescribed.FitWords.Word(eye.Fit!.Value));
        Guided.Offer(Driven, EyeDescribed.DrivenWords.Word(eye.Driven!.Value));
        Guided.Offer(Handle, handle.Name);
    }

    private static ImmutableArray<Question> Questions(Shop shop, bool isNew)
    {
        ImmutableArray<Question> questions =
        [
            new("Section", Words.AskSection, [.. SectionKinds.Words.All]),
            new("Length", Words.AskEyeLength, []),
            new("Width", Words.AskEyeWidth, []),
            new("Nose or edge r", Words.AskRadius, []),
            new("Depth", Words.AskDepth, []),
            new("Taper length", Words.AskTaper, []),
            new("Taper width", Words.AskTaper, []),
            new("Fit", Words.AskFit, EyeDescribed.FitWords.All),
            new("Driven from", Words.AskDriven, EyeDescribed.DrivenWords.All),
            new("Least length", Words.AskTolerance, []),
            new("Greatest length", Words.AskTolerance, []),
            new("Least width", Words.AskTolerance, []),
            new("Greatest width", Words.AskTolerance, []),
            new("Handle", Words.AskHandle, [.. shop.Handles.Keys]),
            new("Name", Words.AskEyeName, []),
        ];
        // the name of an eye that there is stays: under another it would be another eye
        return isNew ? questions : questions[..Name];
    }
}
