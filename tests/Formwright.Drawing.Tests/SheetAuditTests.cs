using Formwright.Curves;

namespace Formwright.Drawing.Tests;

/// <summary>The audit sees what is wrong, and only that.</summary>
public sealed class SheetAuditTests
{
    private static readonly Sheet Empty = new(new TitleBlock("Audit", "FW-9"), Paper.A4);

    private static SheetFlawKind[] Kinds(params Item[] items) =>
        [.. SheetAudit.Of(Empty.Add(items)).Select(f => f.Kind)];

    [Fact]
    public void Clean_sheet_has_no_flaw() =>
        Assert.Empty(
            Kinds(
                new Label("one", new(50, 100)),
                new Label("below it", new(50, 96)),
                new Line(new Point(40, 90), new Point(120, 90), LineStyle.Outline)
            )
        );

    [Fact]
    public void Text_on_text() =>
        Assert.Equal(
            [SheetFlawKind.TextOnText],
            Kinds(new Label("one", new(50, 100)), new Label("other", new(52, 101)))
        );

    [Fact]
    public void Turned_texts_that_only_their_upright_boxes_share_are_no_flaw() =>
        Assert.Empty(
            Kinds(
                new Label("a long turned text", new(50, 100)) { Degrees = 45 },
                new Label("another one", new(66, 104))
            )
        );

    [Fact]
    public void Text_across_an_outline_or_across_a_thin_line_that_it_does_not_clear()
    {
        Label label = new("figure", new(50, 100));
        Line across = new(new Point(40, 101), new Point(90, 101), LineStyle.Outline);
        Line thin = across with { Style = LineStyle.Centreline };
        Assert.Equal([SheetFlawKind.TextOnOutline], Kinds(label, across));
        Assert.Equal([SheetFlawKind.TextOnOutline], Kinds(label with { Clear = true }, across));
        Assert.Equal([SheetFlawKind.TextOnLine], Kinds(label, thin));
        Assert.Empty(Kinds(label with { Clear = true }, thin));
        Assert.Empty(Kinds(label, across with { Style = LineStyle.Hatch }));
    }

    [Fact]
    public void A_text_beside_an_outline_that_clears_a_piece_of_it()
    {
        // The letters stand 0.4 mm from the edge, what they clear reaches 0.75 mm before them.
        Label label = new("figure", new(50, 100)) { Clear = true };
        Line edge = new(new Point(49.6, 90), new Point(49.6, 110), LineStyle.Outline);
        Assert.Equal([SheetFlawKind.OutlineCleared], Kinds(label, edge));
        Assert.Equal([SheetFlawKind.OutlineCleared], Kinds(edge, label));
        Assert.Empty(Kinds(label with { Clear = false }, edge));
        Assert.Empty(Kinds(label, edge with { Style = LineStyle.Detail }));
        Assert.Empty(Kinds(label with { At = new(50.6, 100) }, edge));
    }

    [Fact]
    public void Text_too_small_to_read_at_arms_length()
    {
        Label label = new("figure", new(50, 100)) { Style = TextStyle.Small };
        Assert.Equal([SheetFlawKind.TextSmall], Kinds(label));
        Assert.Empty(Kinds(label with { Style = TextStyle.Body }));
    }

    [Fact]
    public void Text_in_the_strip_of_the_bar_on_the_title_block_or_close_to_the_frame()
    {
        Box area = Empty.Area;
        Label low = new("note", new(area.Centre.X, area.BottomMm - 2.5));
        Assert.Equal([SheetFlawKind.TextOffArea], Kinds(low));
        Assert.Empty(Kinds(low with { At = new(area.Centre.X, area.BottomMm + 0.5) }));
        Label left = new("note", new(area.LeftMm - 4, area.Centre.Y));
        Assert.Equal([SheetFlawKind.TextOffArea], Kinds(left));
        Assert.Empty(Kinds(left with { At = new(area.LeftMm, area.Centre.Y) }));

        // On larger paper there is room beside the title block.
        Sheet large = new(Empty.Title, Paper.A3.Turned());
        Label beside = new("note", large.BesideTitle.Centre);
        Assert.Empty(SheetAudit.Of(large.Add(beside)));
        Label onBar = beside with
        {
            At = new(large.BesideTitle.LeftMm + 110, large.Frame.BottomMm + 6),
        };
        Assert.Contains(
            SheetAudit.Of(large.Add(onBar)),
            flaw => flaw.Kind == SheetFlawKind.TextOffArea
        );
    }

    [Fact]
    public void Zone_that_leaves_the_axes_is_cut_before_the_letters_below_them()
    {
        Plot plot = new(
            "",
            new PlotAxis("an axis with a long name under the plot", 0, 4),
            new PlotAxis("y", 0, 4),
            [new PlotSeries([new(0, 1), new(4, 2)])],
            new Size(150, 80)
        )
        {
            TopLeft = new(30, 250),
            Zones = [Box.Of(0.5, -2, 3.5, 1)],
        };
        Assert.Empty(Kinds(plot));
    }

    [Fact]
    public void Text_outside_the_frame() =>
        Assert.Equal(
            [SheetFlawKind.TextOutsideFrame],
            Kinds(new Label("a text that runs out", new(180, 150)))
        );

    [Fact]
    public void View_outside_the_frame_or_on_the_title_block()
    {
        View view = new([new Line(new Point(0, 0), new Point(50, 0), LineStyle.Detail)])
        {
            Label = "",
            At = new(100, 100),
        };
        Assert.Empty(Kinds(view));
        Assert.Equal([SheetFlawKind.ViewOutsideFrame], Kinds(view with { At = new(170, 100) }));
        Assert.Equal([SheetFlawKind.ViewOutsideFrame], Kinds(view with { At = new(100, 20) }));
    }

    [Fact]
    public void Missing_character() =>
        Assert.Equal([SheetFlawKind.MissingCharacter], Kinds(new Label("κ = 0", new(50, 100))));

    [Fact]
    public void Dimension_of_nothing() =>
        Assert.Equal(
            [SheetFlawKind.EmptyDimension],
            Kinds(new LinearDimension(new(50, 100), new(50, 120), Side.Above, 5))
        );
}
