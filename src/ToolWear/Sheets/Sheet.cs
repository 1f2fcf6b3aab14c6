using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ToolWear.Core.Shops;
using ToolWear.Results;
using ToolWear.Wording;

namespace ToolWear.Sheets;

/// <summary>A printed sheet: one HTML file, black on white, for A4 and Letter, with no script and no link.</summary>
internal sealed class Sheet
{
    // sizes in points: paper is what it is made for. A row or a chart is never torn by the end of a page.
    private const string Style = """
        * { box-sizing: border-box }
        body { font: 11pt/1.35 "DejaVu Sans", Verdana, Arial, sans-serif; color: #000; background: #fff; margin: 0 auto }
        h1 { font-size: 22pt; line-height: 1.1; margin: 0 0 1mm }
        h2 { font-size: 13pt; margin: 5mm 0 1mm; break-after: avoid }
        p { margin: 1mm 0 }
        table { border-collapse: collapse; width: 100%; margin: 2mm 0 }
        thead { display: table-header-group }
        tr, svg { break-inside: avoid }
        th, td { text-align: left; vertical-align: baseline; padding: 1mm 1.5mm; border-bottom: 0.3mm solid #000 }
        th { border-bottom: 0.8mm solid #000; font-size: 9pt }
        .n { text-align: right; white-space: nowrap }
        .wall td { font-size: 12.5pt; padding: 0.7mm 1.5mm; white-space: nowrap }
        .wall td.big { font-size: 16pt; font-weight: bold }
        .wall td.small { font-size: 9.5pt }
        .wall td.wraps { white-space: normal }
        .todo { display: flex; break-inside: avoid; border-bottom: 0.3mm solid #000; padding: 2mm 0 }
        .box { flex: none; width: 7mm; height: 7mm; border: 0.6mm solid #000; margin: 0.5mm 4mm 0 0 }
        .what { font-size: 14pt; font-weight: bold }
        .cautions { border: 0.8mm solid #000; padding: 2mm 3mm; margin-top: 5mm; font-size: 10pt }
        pre { font: 10pt/1.3 "DejaVu Sans Mono", Consolas, monospace; margin: 1mm 0 2mm; white-space: pre-wrap }
        svg { display: block; width: 100%; height: auto }
        """;

    private readonly StringBuilder body = new();
    private readonly bool isWide;

    /// <summary>Begins a sheet.</summary>
    /// <param name="title">What it is.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="on">The day it is of.</param>
    /// <param name="below">What stands below the title.</param>
    /// <param name="isWide">Whether the paper lies on its long side.</param>
    public Sheet(string title, Shop shop, DateOnly on, string below = "", bool isWide = false)
    {
        Title = title;
        this.isWide = isWide;
        body.Append($"<h1>{Markup.Of(title)}</h1>\n");
        string day = on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Say(string.Join("; ", new[] { day + Words.DemoMark(shop), below }.Where(part => part.Length > 0)));
    }

    /// <summary>What it is.</summary>
    public string Title { get; }

    /// <summary>Says a sentence.</summary>
    /// <param name="text">The sentence; nothing where empty.</param>
    public void Say(string text)
    {
        if (text.Trim().Length > 0)
        {
            body.Append($"<p>{Markup.Of(text.Trim())}</p>\n");
        }
    }

    /// <summary>Puts something to do, with a box to tick.</summary>
    /// <param name="what">What is to be done.</param>
    /// <param name="details">What there is to know of it.</param>
    public void ToDo(string what, string details) =>
        body.Append(
            $"<div class=\"todo\"><span class=\"box\"></span><div><p class=\"what\">{Markup.Of(what)}</p><p>{Markup.Of(details)}</p></div></div>\n"
        );

    /// <summary>Puts a heading.</summary>
    /// <param name="text">The heading.</param>
    /// <param name="isOnNewPage">Whether a page begins with it.</param>
    public void Head(string text, bool isOnNewPage = false) =>
        body.Append($"<h2{(isOnNewPage ? " style=\"break-before:page\"" : "")}>{Markup.Of(text)}</h2>\n");

    /// <summary>Puts a drawing.</summary>
    /// <param name="width">Its width in its own units.</param>
    /// <param name="height">Its height.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="elements">Its elements, safe already.</param>
    public void Draw(double width, double height, string title, string elements) =>
        body.Append(
            $"<svg viewBox=\"0 0 {Markup.Of(width)} {Markup.Of(height)}\" role=\"img\" font-family=\"DejaVu Sans, Verdana, Arial, sans-serif\" font-size=\"14\">\n<title>{Markup.Of(title)}</title>\n{elements}</svg>\n"
        );

    /// <summary>Puts a table as people read it.</summary>
    /// <param name="table">The table; its columns without a heading are left out.</param>
    /// <param name="isForTheWall">Whether it is to be read from some steps away.</param>
    public void Put(Table table, bool isForTheWall = false)
    {
        ImmutableArray<int> shown =
        [
            .. Enumerable.Range(0, table.Columns.Length).Where(i => table.Columns[i].Heading is not null),
        ];
        bool[] isNumber = [.. shown.Select(i => table.Rows.Any(row => row[i].IsNumber))];
        string Class(int k) =>
            string.Join(
                ' ',
                new[]
                {
                    isNumber[k] ? "n" : "",
                    table.Columns[shown[k]].Print switch
                    {
                        Print.Big => "big",
                        Print.Small => "small",
                        Print.Wrapped => "small wraps",
                        _ => "",
                    },
                }.Where(each => each.Length > 0)
            );
        body.Append(isForTheWall ? "<table class=\"wall\">\n<thead><tr>" : "<table>\n<thead><tr>");
        for (int k = 0; k < shown.Length; k++)
        {
            body.Append($"<th class=\"{Class(k)}\">{Markup.Of(table.Columns[shown[k]].Heading)}</th>");
        }

        body.Append("</tr></thead>\n<tbody>\n");
        foreach (ImmutableArray<Cell> row in table.Rows)
        {
            body.Append("<tr>");
            for (int k = 0; k < shown.Length; k++)
            {
                body.Append($"<td class=\"{Class(k)}\">{Markup.Of(row[shown[k]].Shown)}</td>");
            }

            body.Append("</tr>\n");
        }

        body.Append("</tbody>\n</table>\n");
    }

    // the paper itself is the printer's: A4 or Letter
    private string Page =>
        isWide ? "@page { size: landscape; margin: 10mm }" : "@page { size: portrait; margin: 12mm }";

    /// <summary>Puts lines as they are, in letters of one width.</summary>
    /// <param name="lines">Lines of at most 80 columns.</param>
    public void Lines(string lines)
    {
        if (lines.Trim().Length > 0)
        {
            body.Append("<pre>");
            foreach (string line in lines.Trim('\n').Split('\n'))
            {
                body.Append(Markup.Of(line)).Append('\n');
            }

            body.Append("</pre>\n");
        }
    }

    /// <summary>Puts a drawing at its true size.</summary>
    /// <param name="widthMm">Its width, mm.</param>
    /// <param name="heightMm">Its height, mm.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="elements">Its elements in mm about the middle, safe already.</param>
    public void DrawTrue(double widthMm, double heightMm, string title, string elements) =>
        body.Append(
            $"<svg class=\"true\" style=\"width:{Markup.Of(widthMm)}mm;height:{Markup.Of(heightMm)}mm\" viewBox=\"{Markup.Of(-widthMm / 2)} {Markup.Of(-heightMm / 2)} {Markup.Of(widthMm)} {Markup.Of(heightMm)}\" role=\"img\">\n<title>{Markup.Of(title)}</title>\n{elements}</svg>\n"
        );

    /// <summary>Ends the sheet with its cautions.</summary>
    /// <param name="cautions">Sentences; empty ones are left out.</param>
    /// <returns>The whole file.</returns>
    public string Done(params ReadOnlySpan<string> cautions)
    {
        body.Append("<div class=\"cautions\">\n");
        foreach (string caution in cautions)
        {
            Say(caution);
        }

        body.Append("</div>\n");
        return $"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>{Markup.Of(Title)}</title>\n<style>\n{Page}\n{Style}\n</style>\n</head>\n<body>\n{body}</body>\n</html>\n";
    }
}
