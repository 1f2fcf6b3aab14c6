using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Screens.ToolTable;

/// <summary>A question about a tool.</summary>
internal enum Asked
{
    /// <summary>Its mark.</summary>
    Mark,

    /// <summary>Its form.</summary>
    Form,

    /// <summary>The eye it works for.</summary>
    Eye,

    /// <summary>Its place in the series.</summary>
    Place,

    /// <summary>Its steel.</summary>
    Steel,

    /// <summary>New, or in use.</summary>
    Start,

    /// <summary>Heats before the records.</summary>
    Before,

    /// <summary>The size now, or as made.</summary>
    Size,

    /// <summary>The size at which it is scrap.</summary>
    Scrap,
}

/// <summary>What was answered about one tool, and the entries it comes to.</summary>
/// <param name="Answers">The answers as typed; an empty one is not known.</param>
internal sealed record ToolSheet(ImmutableDictionary<Asked, string> Answers)
{
    /// <summary>Nothing answered.</summary>
    public static ToolSheet Empty { get; } = new(ImmutableDictionary<Asked, string>.Empty);

    /// <summary>The answer to a question, empty where there is none.</summary>
    /// <param name="asked">The question.</param>
    /// <returns>The answer.</returns>
    public string this[Asked asked] => Answers.GetValueOrDefault(asked, "");

    /// <summary>The words to choose from; none where anything can be answered.</summary>
    /// <param name="asked">The question.</param>
    /// <returns>The words.</returns>
    public static ImmutableArray<string> Choices(Asked asked) =>
        asked switch
        {
            Asked.Form => [.. ToolForms.All.Select(form => form.Name)],
            Asked.Place => Places.Words.All,
            Asked.Start => ToolStart.AsWords.All,
            _ => [],
        };

    /// <summary>The sheet with one answer more.</summary>
    /// <param name="asked">The question.</param>
    /// <param name="answer">The answer.</param>
    /// <returns>The sheet.</returns>
    public ToolSheet With(Asked asked, string answer) => new(Answers.SetItem(asked, answer));

    /// <summary>What the next row begins with: all that repeats, and the mark that follows.</summary>
    /// <returns>The sheet.</returns>
    public ToolSheet CarriedDown() => With(Asked.Size, "").With(Asked.Mark, NextMark(this[Asked.Mark]));

    /// <summary>The entries that the sheet comes to.</summary>
    /// <param name="units">The unit of bare sizes.</param>
    /// <param name="today">The day.</param>
    /// <param name="refusal">The question that was answered wrongly and why, where one was.</param>
    /// <returns>The entries, none where an answer is wrong.</returns>
    public ImmutableArray<LedgerEntry> Entries(LengthUnit units, DateOnly today, out (Asked At, string Why)? refusal)
    {
        refusal = null;
        if (!ToolMark.TryParse(this[Asked.Mark].Trim(), out ToolMark mark, out string why))
        {
            refusal = (Asked.Mark, why);
        }
        else if (!ToolForms.TryFind(this[Asked.Form], out ToolForm form, out why))
        {
            refusal = (Asked.Form, why);
        }
        else if (!TryPlace(out Place place, out why))
        {
            refusal = (Asked.Place, why);
        }
        else if (!TryStart(out ToolStart start, out why))
        {
            refusal = (Asked.Before, why);
        }
        else if (!TrySize(Asked.Size, units, out TypedSize? size, out why))
        {
            refusal = (Asked.Size, why);
        }
        else if (!TrySize(Asked.Scrap, units, out TypedSize? scrap, out why))
        {
            refusal = (Asked.Scrap, why);
        }
        else
        {
            AddingTool deed = AddingTool.Of(
                mark,
                form,
                OrNull(Asked.Eye),
                place,
                OrNull(Asked.Steel),
                start,
                size,
                scrap?.Length,
                today
            );
            if (deed.ScrapRefusal is null)
            {
                return deed.Entries;
            }

            refusal = (Asked.Scrap, deed.ScrapRefusal);
        }

        return [];
    }

    private bool TryPlace(out Place place, out string why)
    {
        place = Place.None;
        why = "";
        return this[Asked.Place].Length == 0 || Places.Words.TryParse(this[Asked.Place], out place, out why);
    }

    private bool TryStart(out ToolStart start, out string why)
    {
        start = this[Asked.Start] == ToolStart.AsWords.Word(StartedAs.New) ? ToolStart.New : ToolStart.Unknown;
        why = "";
        if (this[Asked.Before].Trim().Length == 0)
        {
            return true;
        }

        if (!Heats.TryParse(this[Asked.Before], out Heats before, out why))
        {
            return false;
        }

        start = start with { HeatsBefore = before, How = HeatsBeforeHow.Estimated };
        why = start.Refusal() ?? "";
        return why.Length == 0;
    }

    private bool TrySize(Asked asked, LengthUnit units, out TypedSize? size, out string why)
    {
        why = "";
        size = null;
        if (this[asked].Trim().Length == 0)
        {
            return true;
        }

        bool isRead = SizeText.TryParse(this[asked], units, out TypedSize typed, out why);
        size = isRead ? typed : null;
        return isRead;
    }

    private string? OrNull(Asked asked) => this[asked].Trim() is { Length: > 0 } text ? text : null;

    private static string NextMark(string mark)
    {
        string head = mark.TrimEnd([.. "0123456789"]);
        return head.Length < mark.Length && int.TryParse(mark[head.Length..], out int number)
            ? $"{head}{number + 1}"
            : "";
    }
}
