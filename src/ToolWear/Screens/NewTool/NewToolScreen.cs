using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Screens.ToolTable;
using ToolWear.Wording;

namespace ToolWear.Screens.NewTool;

/// <summary>One tool, question by question.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class NewToolScreen(Host host)
    : SheetScreen(
        host,
        [
            Asked.Mark,
            Asked.Form,
            Asked.Eye,
            Asked.Place,
            Asked.Steel,
            Asked.Start,
            Asked.Before,
            Asked.Size,
            Asked.Scrap,
        ]
    )
{
    private const string NewToolHeading = "A tool more";

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.NewTool;

    /// <inheritdoc />
    public override string Heading => NewToolHeading;

    /// <inheritdoc />
    public override void Open() => Begin(ToolSheet.Empty.With(Asked.Form, "drift").With(Asked.Start, "new"));

    /// <inheritdoc />
    public override void Compose(Picture body) =>
        GuidedText.Draw(body, Sheet.Guided, $"{Cautions.AddingCautions}\n{Remarks()}".TrimEnd());

    /// <inheritdoc />
    protected override void Entered(ToolSheet entered)
    {
        Host.Go(Host.Home);
        Sitting.Say(Words.ToolEntered(entered[Asked.Mark], 1), Ink.Done);
    }
}
