namespace ToolWear.Screens;

/// <summary>One line that is being typed. The gloved hand has letters, digits and a key that takes one back.</summary>
public sealed class TypedLine
{
    private readonly Func<string, bool> begins;
    private bool isOffered;

    /// <summary>Whether the last key took its last character: the key that did may still be held down, and must not go on
    /// to take back what was recorded.</summary>
    public bool IsEmptied { get; private set; }

    /// <summary>A line.</summary>
    /// <param name="begins">Which characters may begin it; the others are keys while it is empty. Null for all.</param>
    public TypedLine(Func<string, bool>? begins = null) => this.begins = begins ?? (_ => true);

    /// <summary>What stands in it.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Puts a text there that the first character typed replaces.</summary>
    /// <param name="text">The text offered.</param>
    public void Offer(string text)
    {
        Text = text;
        isOffered = true;
        IsEmptied = false;
    }

    /// <summary>Empties it.</summary>
    public void Clear() => Offer("");

    /// <summary>Whether a key would be typed rather than do something.</summary>
    /// <param name="name">The key's name.</param>
    /// <returns>True where it would.</returns>
    public bool WouldTake(string name) =>
        IsBack(name) ? Text.Length > 0
        : name == "Space" ? WouldTake(" ")
        : name.Length == 1 && (Text.Length > 0 && !isOffered || begins(name));

    /// <summary>Takes a key where it is one for typing.</summary>
    /// <param name="press">The key.</param>
    /// <returns>True where it was taken.</returns>
    public bool Take(KeyPress press)
    {
        if (IsBack(press.Name) && Text.Length > 0)
        {
            int last = System.Globalization.StringInfo.ParseCombiningCharacters(Text)[^1];
            Text = isOffered ? "" : Text[..last];
            isOffered = false;
            IsEmptied = Text.Length == 0;
            return true;
        }

        IsEmptied = IsEmptied && IsBack(press.Name);
        bool isEmpty = Text.Length == 0 || isOffered;
        if (press.Typed is not { Length: > 0 } typed || (isEmpty && !begins(typed)))
        {
            return false;
        }

        Text = isOffered ? typed : Text + typed;
        isOffered = false;
        return true;
    }

    private static bool IsBack(string name) => name is "Backspace" or "Delete";
}
