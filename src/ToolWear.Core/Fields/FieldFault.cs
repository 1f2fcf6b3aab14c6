namespace ToolWear.Core.Fields;

/// <summary>What is wrong with a thing, and at which of its fields.</summary>
/// <param name="Field">The field's name; empty where the thing as a whole is wrong.</param>
/// <param name="Sentence">What is wrong, what would be right.</param>
public sealed record FieldFault(string Field, string Sentence)
{
    /// <summary>The fault on one line.</summary>
    /// <returns>For example "price_a_kg: -1 lies outside; a number from 0".</returns>
    public override string ToString() => Field.Length == 0 ? Sentence : $"{Field}: {Sentence}";
}
