using ToolWear.Core.Fields;

namespace ToolWear.Core.Shops;

/// <summary>What an entry leads to: the shop after it, or the reason why it cannot be.</summary>
public readonly record struct Step
{
    private Step(Shop? after, FieldFault? fault)
    {
        After = after;
        Fault = fault;
    }

    /// <summary>The shop after the entry; null where it was refused.</summary>
    public Shop? After { get; }

    /// <summary>Why it cannot be, and at which field where one alone is wrong; null where it was taken.</summary>
    public FieldFault? Fault { get; }

    /// <summary>Why it cannot be, on one line: what, where, what would be right. Null where it was taken.</summary>
    public string? Refusal => Fault?.ToString();

    /// <summary>The entry was taken.</summary>
    /// <param name="after">The shop after it.</param>
    public static implicit operator Step(Shop after) => new(after, null);

    /// <summary>The entry was refused.</summary>
    /// <param name="refusal">The reason.</param>
    public static implicit operator Step(string refusal) => new(null, new("", refusal));

    /// <summary>The entry was refused at a field.</summary>
    /// <param name="fault">The field and the reason.</param>
    public static implicit operator Step(FieldFault fault) => new(null, fault);
}
