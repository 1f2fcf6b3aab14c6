using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Guided;

/// <summary>Something that is entered question by question.</summary>
/// <param name="guided">Its questions.</param>
internal abstract class GuidedEntry(GuidedLine guided)
{
    /// <summary>The questions and answers.</summary>
    public GuidedLine Guided => guided;

    /// <summary>What stands over the screen meanwhile.</summary>
    public abstract string Heading { get; }

    /// <summary>What stands below the open question.</summary>
    public virtual string Below => "";

    /// <summary>Draws it.</summary>
    /// <param name="body">Where to.</param>
    public virtual void Draw(Picture body) => GuidedText.Draw(body, guided, Below);

    /// <summary>Takes the answer that is typed.</summary>
    /// <returns>True where it was the last question.</returns>
    public virtual bool Next() => guided.Next();

    /// <summary>Takes the answers; where one is wrong it notes so, and nothing is taken.</summary>
    /// <param name="read">The answers.</param>
    /// <param name="sitting">The sitting.</param>
    /// <returns>True where they were taken.</returns>
    public abstract bool Take(AnswersRead read, Sitting sitting);
}
