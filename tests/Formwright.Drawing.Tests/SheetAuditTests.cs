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
    public void Text_across_an_outline_but_not_across_a_thin_line()
    {
        Label label = new("figure", new(50, 100));
        Line across = new(new Point(40, 101), new Point(90, 101), LineStyle.Outline);
        Assert.Equal([SheetFlawKind.TextOnOutline], Kinds(label, across));
        Assert.Empty(Kinds(label, across with { Style = LineStyle.Witness }));
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
