using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Ribs;

namespace Formwright.Sheets.Body;

/// <summary>For the bending iron and the form: where each bend starts and ends, how tight it is, what the wood must stand.</summary>
internal static class BendingSheet
{
    private const double FormStepMm = 30;
    private const double FlatMm = 2000;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View view = new([.. Items(guitar, body.Ribs)])
        {
            Scale = 0.2,
            Label = SheetsWords.Of["bending.view"],
        };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.bending"),
            [view],
            [
                Bends(guitar, body.Ribs),
                .. Layout.Split(Form(body.Ribs), 3, 48),
                new Cautions(
                    [SheetsWords.Of["caution.hot-bending"], SheetsWords.Of["caution.dust"]],
                    168
                ),
            ],
            168
        );
        return new NamedSheet("bending", sheet, IsTiled: false);
    }

    // The treble rib as it stands, from above, tail at the left: what the form looks like.
    private static IEnumerable<Item> Items(Guitar guitar, RibPlan ribs)
    {
        double tail = guitar.Outline.BodyLengthMm;
        Point On(RibPoint at) => new(tail - at.UMm, at.YMm);
        yield return new Line(Shape.Polyline([.. ribs.Points.Select(On)]), LineStyle.Outline);
        yield return new Line(new Point(-20, 0), new Point(tail + 20, 0), LineStyle.Centreline);
        foreach ((RibBend bend, int i) in ribs.Bends.Select((bend, i) => (bend, i)))
        {
            foreach (double along in new[] { bend.FromMm, bend.ToMm })
            {
                yield return new Dot(On(Nearest(ribs, along)), 1.2);
            }

            RibPoint tight = Nearest(ribs, bend.TightestAtMm);
            Vector out1 = Outward(ribs, bend.TightestAtMm);
            yield return new Balloon($"{i + 1}", On(tight), out1 * 12);
        }
    }

    private static RibPoint Nearest(RibPlan ribs, double along) =>
        ribs.Points.MinBy(at => Math.Abs(at.AlongMm - along));

    // Square to the rib, away from the body, as the view shows it.
    private static Vector Outward(RibPlan ribs, double along)
    {
        RibPoint before = Nearest(ribs, along - 4);
        RibPoint after = Nearest(ribs, along + 4);
        Vector tangent = new(before.UMm - after.UMm, after.YMm - before.YMm);
        return tangent.Left * (1 / tangent.Length);
    }

    private static Table Bends(Guitar guitar, RibPlan ribs) =>
        new(
            SheetsWords.Of.Format("bending.bends", guitar.Design.Ribs.ThicknessMm),
            [
                new Column("", Align.Left),
                new Column(SheetsWords.Of["column.from"], Align.Right, 12),
                new Column(SheetsWords.Of["column.to"], Align.Right, 12),
                new Column(SheetsWords.Of["column.tightest"], Align.Right, 15) { Strong = true },
                new Column(SheetsWords.Of["column.at"], Align.Right, 11),
                new Column(SheetsWords.Of["column.form"], Align.Right, 13),
                new Column(SheetsWords.Of["column.strain"], Align.Right, 15),
                new Column(SheetsWords.Of["column.would-bend"], Align.Right, 19),
            ],
            [
                .. ribs.Bends.Select(
                    (bend, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{i + 1}  {SheetsWords.Of[bend.IsWaist ? "bending.waist" : i == 0 ? "bending.lower" : "bending.upper"]}",
                                Figures.Fixed(bend.FromMm, 0),
                                Figures.Fixed(bend.ToMm, 0),
                                Figures.Fixed(bend.TightestMm, 1),
                                Figures.Fixed(bend.TightestAtMm, 0),
                                Figures.Fixed(bend.FormRadiusMm, 1),
                                $"{Figures.Fixed(bend.StrainPercent, 2)} %",
                                Figures.Fixed(bend.ThicknessThatBendsMm, 2),
                            ]
                ),
            ]
        )
        {
            WidthMm = 168,
        };

    private static Table Form(RibPlan ribs)
    {
        List<IReadOnlyList<string>> rows = [];
        for (double s = 0; s <= ribs.LengthMm; s += FormStepMm)
        {
            RibPoint at = Nearest(ribs, s);
            rows.Add([
                Figures.Fixed(s, 0),
                Math.Abs(at.RadiusMm) > FlatMm
                    ? SheetsWords.Of["bending.straight"]
                    : Figures.Fixed(at.RadiusMm, 0),
            ]);
        }

        return new Table(
            SheetsWords.Of["bending.form"],
            [
                new Column(SheetsWords.Of["column.from-tail"], Align.Right, 20),
                new Column(SheetsWords.Of["column.radius"], Align.Right, 20),
            ],
            rows
        );
    }
}
