using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets.Steps;

/// <summary>One step with its tick box; each gate has a box of its own and a line to write on what was measured.</summary>
/// <param name="Title">Number and title.</param>
/// <param name="Texts">What is done, what it needs, tools, waits.</param>
/// <param name="Gates">What must be measured.</param>
/// <param name="WidthMm">Its width.</param>
internal sealed record StepBlock(
    string Title,
    IReadOnlyList<string> Texts,
    IReadOnlyList<string> Gates,
    double WidthMm
) : Block
{
    private const double BoxMm = 4;
    private const double IndentMm = 8;
    private const double LineMm = 34;
    private const double TitleMm = 6;
    private const double GateMm = 5.6;
    private const double GateBoxMm = 3;

    private Notes Inner => new("", Texts, WidthMm - IndentMm);

    public override Size Size =>
        new(WidthMm, TitleMm + Inner.Size.HeightMm + (Gates.Count * GateMm) + 1);

    protected override void DrawAt(Ink ink, Point corner)
    {
        Tick(ink, corner, BoxMm);
        ink.Text(Title, corner + new Vector(IndentMm, -0.3), TextStyle.Heading, rise: Rise.Top);
        Notes inner = Inner with { TopLeft = corner + new Vector(IndentMm, -TitleMm) };
        inner.Draw(ink, Placement.Identity);
        double y = corner.Y - TitleMm - inner.Size.HeightMm - 1.4;
        foreach (string gate in Gates)
        {
            Point at = new(corner.X + IndentMm, y);
            Tick(ink, at, GateBoxMm);
            ink.Text(
                gate,
                at + new Vector(GateBoxMm + 2.5, -0.25),
                TextStyle.Strong,
                rise: Rise.Top
            );
            Point end = new(corner.X + WidthMm, y - GateBoxMm);
            ink.Stroke(Shape.Line(end - new Vector(LineMm, 0), end), LineStyle.FineRule);
            y -= GateMm;
        }
    }

    private static void Tick(Ink ink, Point corner, double side) =>
        ink.Stroke(
            Shape.Rectangle(Box.Of(corner.X, corner.Y - side, corner.X + side, corner.Y)),
            LineStyle.Rule
        );
}
