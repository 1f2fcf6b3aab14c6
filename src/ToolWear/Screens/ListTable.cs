using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ToolWear.Screens;

/// <summary>The library's table with the list of whichever screen is shown: it draws, scrolls and takes the mouse.</summary>
/// <remarks>
/// Keys for moving come from the table of keys, beside single letters that do other things, so the table gets none and
/// its search by typing is off. Columns have fixed widths: its own follow the rows in sight and jump while one scrolls.
/// </remarks>
internal sealed class ListTable : TableView, ITableSource
{
    private readonly Dictionary<Ink, Scheme> schemes = [];
    private readonly Colours colours;
    private ListPage? page;
    private bool isShowing;

    public ListTable(Colours colours)
    {
        this.colours = colours;
        (Visible, FullRowSelect, MultiSelect, CollectionNavigator) = (false, true, false, null);
        Style.ShowHorizontalHeaderOverline = Style.ShowHorizontalHeaderUnderline = false;
        Style.ShowVerticalCellLines = Style.ShowVerticalHeaderLines = false;
        Style.ShowVerticalCellLineForFirstColumn = Style.ShowVerticalCellLineForLastColumn = false;
        Style.AlwaysShowHeaders = true;
        Style.RowColorGetter = row => row.RowIndex == page?.Place.Chosen ? SchemeOf(Ink.Chosen) : null;
        SeparatorSymbol = ' ';
        ViewportSettings |= ViewportSettingsFlags.HasVerticalScrollBar;
        SetScheme(SchemeOf(Ink.Plain));
        Style.HeaderScheme = SchemeOf(Ink.Strong);
        ValueChanged += (_, _) => Choose();
    }

    /// <summary>What to do after the mouse chose another row.</summary>
    public Action? Chosen { get; set; }

    /// <inheritdoc />
    public string[] ColumnNames => [.. page?.Columns.Select(column => column.Set(column.Heading)) ?? []];

    /// <inheritdoc />
    public int Columns => page?.Columns.Count ?? 0;

    /// <inheritdoc />
    public int Rows => page?.Place.Count ?? 0;

    /// <inheritdoc />
    public object this[int row, int col] => page!.Columns[col].Set(page.Columns[col].Text(row));

    /// <summary>Shows the list of a picture; null where it has none.</summary>
    public void Show(ListPage? of)
    {
        page = of;
        Visible = of is not null;
        if (of is null)
        {
            return;
        }

        isShowing = true;
        Frame = of.At;
        Style.ShowHeaders = of.HasHeadings;
        Style.ColumnStyles.Clear();
        for (int i = 0; i < of.Columns.Count; i++)
        {
            ListColumn column = of.Columns[i];
            ColumnStyle style = Style.GetOrCreateColumnStyle(i);
            style.MinWidth = style.MaxWidth = style.MinAcceptableWidth = column.Width;
            style.ColorGetter = cell =>
                cell.RowIndex != of.Place.Chosen && column.Ink is { } ink ? SchemeOf(ink(cell.RowIndex)) : null;
        }

        Table = this;
        Update();
        SetSelection(0, of.Place.Chosen, false);
        RowOffset = of.Place.First;
        isShowing = false;
    }

    /// <summary>The bar beside the list scrolls it; what is chosen stays in sight.</summary>
    /// <inheritdoc />
    protected override void OnViewportChanged(DrawEventArgs e)
    {
        base.OnViewportChanged(e);
        if (!isShowing && page is { } shown && RowOffset != shown.Place.First)
        {
            shown.Place.ScrollTo(RowOffset);
            Chosen?.Invoke();
        }
    }

    private void Choose()
    {
        if (
            !isShowing
            && page is { } shown
            && Value?.SelectedCell.Y is { } row
            && row != shown.Place.Chosen
            && row < shown.Place.Count
        )
        {
            shown.Place.Choose(row, shown.Place.Count);
            Chosen?.Invoke();
        }
    }

    // the same in every role: which row is chosen is said by its ink
    private Scheme SchemeOf(Ink ink)
    {
        if (!schemes.TryGetValue(ink, out Scheme? scheme))
        {
            Attribute look = colours.Of(ink);
            scheme = new Scheme
            {
                Normal = look,
                HotNormal = look,
                Focus = look,
                HotFocus = look,
                Active = look,
                HotActive = look,
                Highlight = look,
                Editable = look,
                ReadOnly = look,
                Disabled = look,
                Code = look,
            };
            schemes.Add(ink, scheme);
        }

        return scheme;
    }
}
