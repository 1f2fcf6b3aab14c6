namespace ToolWear.Screens;

/// <summary>One line that is being typed: what stands in it, and which keys are its own. <see cref="LineField"/> edits it.</summary>
/// <param name="begins">Which characters may begin it; the others are keys while it is empty. Null for all.</param>
internal sealed class TypedLine(Func<string, bool>? begins = null)
{
    /// <summary>Whether the last key took its last character: the key that did may still be held down, and must not go on
    /// to undo what was recorded.</summary>
    public bool IsEmptied { get; private set; }

    /// <summary>What stands in it.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Whether the first character typed replaces what stands in it.</summary>
    public bool IsOffered { get; private set; }

    /// <summary>How often something was offered: what is offered anew is selected anew.</summary>
    public int Offers { get; private set; }

    /// <summary>Puts a text there that the first character typed replaces.</summary>
    public void Offer(string text) => (Text, IsOffered, IsEmptied, Offers) = (text, true, false, Offers + 1);

    /// <summary>Empties it.</summary>
    public void Clear() => Offer("");

    /// <summary>Whether a key would change the text rather than do something else.</summary>
    public bool WouldTake(string name) =>
        IsBack(name)
            ? Text.Length > 0
            : WouldType(
                name == "Space" ? " "
                : name.Length == 1 ? name
                : ""
            );

    /// <summary>Whether a key edits the line: it changes the text or moves about in it.</summary>
    public bool Takes(KeyPress press)
    {
        IsEmptied = IsEmptied && IsBack(press.Name);
        return WouldType(press.Typed)
            || (Text.Length > 0 && (IsBack(press.Name) || press.Name is "Left" or "Right" or "Home" or "End"));
    }

    /// <summary>Takes over what the field made of a key or of a paste.</summary>
    public void Edited(string text)
    {
        IsEmptied = text.Length == 0 && Text.Length > 0;
        (Text, IsOffered) = (text, false);
    }

    private bool WouldType(string typed) =>
        typed.Length > 0 && ((Text.Length > 0 && !IsOffered) || begins?.Invoke(typed) != false);

    private static bool IsBack(string name) => name is "Backspace" or "Delete";
}
