using System.Text;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using ToolWear.Testing.Goldens;

namespace ToolWear.Tests.HouseRules;

/// <summary>What the program says, all of it on one page, so that it can be read through in one go.</summary>
public sealed partial class SentenceTests
{
    [Fact]
    public void Every_sentence_of_the_program_stands_on_the_page_of_words()
    {
        StringBuilder page = new();
        foreach (string file in House.Files("src", "*.cs"))
        {
            string[] said = [.. SentencesOf(File.ReadAllText(file)).Distinct(StringComparer.Ordinal)];
            page.Append(said.Length == 0 ? "" : $"{Path.GetFileNameWithoutExtension(file)}\n");
            page.Append(string.Concat(said.Select(sentence => $"    {sentence}\n")));
        }

        Golden.Same("words.txt", page.ToString());
    }

    [Fact]
    public void A_sentence_is_found_however_it_is_written()
    {
        const string code = """
            [Note("kept for the build")]
            class It
            {
                // "a comment" is none
                const string Plain = "Two words.";
                string Joined(int n) => "One " + $"of {n:0.0} parts " + 'x' + Plain + " and more";
                string Inside(bool b) => $"It is {(b ? "not it" : "this one")}.";
                string Raw() => "key";
                Exception Bug() => new InvalidOperationException("nobody reads this");
            }
            """;
        Assert.Equal(
            ["Two words.", "One of {} parts {}{} and more", "It is {}.", "not it", "this one"],
            SentencesOf(code)
        );
    }

    /// <summary>The texts of a file that have words for people, what is put into them as {}; not those for the build or for a bug.</summary>
    private static IEnumerable<string> SentencesOf(string code) =>
        CSharpSyntaxTree
            .ParseText(code)
            .GetRoot()
            .DescendantNodes(node => !IsForNobody(node))
            .OfType<ExpressionSyntax>()
            .Where(node => IsText(node) && !(node.Parent is BinaryExpressionSyntax above && IsText(above)))
            .Select(TextOf)
            .Where(text => Word().Count(text) > 1)
            .Select(text => text.Replace("\n", "\\n", StringComparison.Ordinal));

    // of small letters, so that tables of signs and forms of dates are none
    [GeneratedRegex("(?<![\\w.=+|-])[A-Za-z]?[a-z]+(?![\\w=+|-])")]
    private static partial Regex Word();

    private static bool IsForNobody(SyntaxNode node) =>
        node is AttributeListSyntax
        || (
            node is ObjectCreationExpressionSyntax { Type: var type }
            && type.ToString() is "InvalidOperationException" or "UnreachableException" or "ArgumentException"
        );

    private static bool IsText(ExpressionSyntax node) =>
        node is LiteralExpressionSyntax { Token.Value: string } or InterpolatedStringExpressionSyntax
        || (
            node is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression } sum
            && (IsText(sum.Left) || IsText(sum.Right))
        );

    private static string TextOf(ExpressionSyntax node) =>
        node switch
        {
            LiteralExpressionSyntax { Token.Value: string text } => text,
            InterpolatedStringExpressionSyntax said => string.Concat(
                said.Contents.Select(part =>
                    part is InterpolatedStringTextSyntax { TextToken.ValueText: var text } ? text : "{}"
                )
            ),
            BinaryExpressionSyntax sum when IsText(sum) => TextOf(sum.Left) + TextOf(sum.Right),
            _ => "{}",
        };
}
