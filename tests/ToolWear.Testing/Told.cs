using System.Collections;
using System.Globalization;
using System.Reflection;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Testing;

/// <summary>Tells a value in full, list by list and part by part, so that two values are alike where their texts are.</summary>
/// <remarks>Records that hold lists are equal only where the lists are one and the same; their texts compare the contents.</remarks>
public static class Told
{
    /// <summary>The text of a value.</summary>
    /// <param name="value">A record, a list, a word, a number, or null.</param>
    /// <returns>One line.</returns>
    public static string Of(object? value) =>
        value switch
        {
            null => "-",
            string text => "\"" + text + "\"",
            Enum or bool => value.ToString()!,
            Length or Heats or ToolMark or ToolForm => value.ToString()!,
            IFormattable plain when value.GetType().Namespace == "System" => plain.ToString(
                value is DateOnly or DateTimeOffset ? "O" : null,
                CultureInfo.InvariantCulture
            ),
            IEnumerable many => "[" + string.Join(", ", many.Cast<object?>().Select(Of)) + "]",
            _ => value.GetType().Name + "(" + string.Join(", ", Parts(value)) + ")",
        };

    private static IEnumerable<string> Parts(object value)
    {
        HashSet<string> named =
        [
            .. value
                .GetType()
                .GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
                .SelectMany(made => made.GetParameters())
                .Select(parameter => parameter.Name!.ToUpperInvariant()),
        ];
        return value
            .GetType()
            .GetProperties(BindingFlags.Instance | BindingFlags.Public)
            .Where(part => part.GetIndexParameters().Length == 0 && named.Contains(part.Name.ToUpperInvariant()))
            .OrderBy(part => part.Name, StringComparer.Ordinal)
            .Select(part => part.Name + "=" + Of(part.GetValue(value)));
    }
}
