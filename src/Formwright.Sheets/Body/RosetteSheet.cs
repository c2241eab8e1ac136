using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;

namespace Formwright.Sheets.Body;

/// <summary>Soundhole and rosette channels at full size, and a section through them.</summary>
internal static class RosetteSheet
{
    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View plan = new([.. Plan(guitar)], ViewFrame.Front)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["rosette.view"],
        };
        View section = new([.. Section(guitar)], ViewFrame.Section)
        {
            Scale = 2,
            Label = SheetsWords.Of["rosette.section"],
        };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.rosette"),
            [plan],
            [
                new ViewBlock(section),
                Rings(guitar),
                new Notes("", [SheetsWords.Of["rosette.note"]], 44),
                Care.WithDust(112),
            ],
            168
        );
        return new NamedSheet("rosette", sheet, IsTiled: false);
    }

    private static IEnumerable<Item> Plan(Guitar guitar)
    {
        SoundholeDesign hole = guitar.Design.Soundhole;
        Point centre = new(0, 0);
        double outer = guitar
            .Design.Rosette.Rings.Select(ring => ring.OuterMm)
            .Append(hole.RadiusMm)
            .Max();
        foreach (RosetteRingDesign ring in guitar.Design.Rosette.Rings)
        {
            yield return new Region([
                Shape.Circle(centre, ring.OuterMm),
                Shape.Circle(centre, ring.InnerMm),
            ])
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Detail,
            };
        }

        yield return new Line(Shape.Circle(centre, hole.RadiusMm), LineStyle.Cut);
        yield return new Hole(centre, guitar.Design.Rosette.PilotMm);
        yield return new Line(
            new Point(-outer - 8, 0),
            new Point(outer + 8, 0),
            LineStyle.Centreline
        );
        yield return new Line(
            new Point(0, -outer - 8),
            new Point(0, outer + 8),
            LineStyle.Centreline
        );
        // Across, clear of both centrelines.
        Vector way = Vector.At(Math.PI / 6) * hole.RadiusMm;
        yield return new AlignedDimension(centre - way, centre + way, 0)
        {
            Text = $"Ø {Figures.Mm(2 * hole.RadiusMm)}",
            Share = 0.26,
        };
        yield return new DiameterDimension(
            centre,
            guitar.Design.Rosette.PilotMm,
            new Vector(9, 10)
        );
    }

    // From the hole's middle outwards, the board's thickness down.
    private static IEnumerable<Item> Section(Guitar guitar)
    {
        SoundholeDesign hole = guitar.Design.Soundhole;
        double t = guitar.Design.Soundboard.ThicknessMm;
        double end =
            guitar.Design.Rosette.Rings.Select(ring => ring.OuterMm).Append(hole.RadiusMm).Max()
            + 8;
        List<Point> top = [new(hole.RadiusMm, -t), new(hole.RadiusMm, 0)];
        foreach (RosetteRingDesign ring in guitar.Design.Rosette.Rings.OrderBy(r => r.InnerMm))
        {
            top.Add(new(ring.InnerMm, 0));
            top.Add(new(ring.InnerMm, -ring.DepthMm));
            top.Add(new(ring.OuterMm, -ring.DepthMm));
            top.Add(new(ring.OuterMm, 0));
        }

        top.Add(new(end, 0));
        top.Add(new(end, -t));
        yield return new Region(Shape.Polyline(top, closed: true))
        {
            Fill = Tone.Wood,
            HatchDegrees = 45,
            Edge = LineStyle.Cut,
        };
        double before = hole.RadiusMm;
        foreach (RosetteRingDesign ring in guitar.Design.Rosette.Rings.OrderBy(r => r.InnerMm))
        {
            if (ring.InnerMm > before)
            {
                yield return new LinearDimension(
                    new Point(before, 0),
                    new Point(ring.InnerMm, 0),
                    Side.Above,
                    14
                );
            }

            yield return new LinearDimension(
                new Point(ring.InnerMm, 0),
                new Point(ring.OuterMm, 0),
                Side.Above,
                6
            );
            before = ring.OuterMm;
        }

        yield return new LinearDimension(new Point(end, 0), new Point(end, -t), Side.Right, 6)
        {
            Decimals = 2,
        };
    }

    private static Table Rings(Guitar guitar) =>
        new(
            SheetsWords.Of["rosette.rings"],
            [
                new Column(SheetsWords.Of["column.inner"], Align.Right, 20),
                new Column(SheetsWords.Of["column.outer"], Align.Right, 20),
                new Column(SheetsWords.Of["column.deep"], Align.Right, 16),
            ],
            [
                .. guitar.Design.Rosette.Rings.Select(ring =>
                    (IReadOnlyList<string>)
                        [
                            Figures.Fixed(ring.InnerMm, 1),
                            Figures.Fixed(ring.OuterMm, 1),
                            Figures.Fixed(ring.DepthMm, 2),
                        ]
                ),
            ]
        )
        {
            // As wide as its heading in any language.
            WidthMm = 82,
        };
}
