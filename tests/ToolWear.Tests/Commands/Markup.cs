using System.Xml;
using System.Xml.Linq;

namespace ToolWear.Tests.Commands;

/// <summary>Sheets and drawings read as markup.</summary>
internal static class Markup
{
    private static readonly string[] Allowed =
    [
        "html",
        "head",
        "meta",
        "title",
        "style",
        "body",
        "h1",
        "h2",
        "p",
        "pre",
        "div",
        "span",
        "table",
        "thead",
        "tbody",
        "tr",
        "th",
        "td",
        "svg",
        "g",
        "path",
        "line",
        "rect",
        "circle",
        "text",
    ];

    /// <summary>Reads a sheet or a drawing and fails where it could do anything but be looked at.</summary>
    public static XElement Read(string text)
    {
        XmlReaderSettings settings = new() { DtdProcessing = DtdProcessing.Ignore };
        using XmlReader reader = XmlReader.Create(new StringReader(text), settings);
        XElement root = XDocument.Load(reader).Root!;
        foreach (XElement element in root.DescendantsAndSelf())
        {
            Assert.Contains(element.Name.LocalName, Allowed);
            Assert.All(
                element.Attributes(),
                attribute =>
                {
                    string name = attribute.Name.LocalName;
                    Assert.False(name is "href" or "src" || name.StartsWith("on", StringComparison.Ordinal), name);
                    Assert.True(attribute.IsNamespaceDeclaration || !IsLink(attribute.Value), attribute.Value);
                }
            );
        }

        Assert.All(
            root.Descendants("style"),
            style =>
                Assert.False(
                    IsLink(style.Value)
                        || style.Value.Contains("url(", StringComparison.Ordinal)
                        || style.Value.Contains('@') && style.Value.Contains("@import", StringComparison.Ordinal)
                )
        );
        return root;
    }

    /// <summary>The elements of a name, whatever namespace they are in.</summary>
    public static IEnumerable<XElement> All(this XElement root, string name) =>
        root.Descendants().Where(each => each.Name.LocalName == name);

    private static bool IsLink(string value) => value.Contains("//", StringComparison.Ordinal);
}
