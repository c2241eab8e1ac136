using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Mould;

namespace Formwright.Sheets.Tooling;

/// <summary>A cut through the mould's wall at a bolt: board, soundboard in the rebate, layers, bolt and captive nut. Across is right, up is up.</summary>
internal static class WallSection
{
    private const double BoardInsideMm = 26;

    public static View Of(Guitar guitar, MouldPlan plan) =>
        new([.. Items(guitar, plan)], ViewFrame.Section)
        {
            Label = SheetsWords.Of["mould.section"],
        };

    private static IEnumerable<Item> Items(Guitar guitar, MouldPlan plan)
    {
        MouldDesign mould = guitar.Design.Mould;
        SoundboardDesign soundboard = guitar.Design.Soundboard;
        double board = guitar.Design.Workboard.ThicknessMm + guitar.Design.Workboard.PackedMm;
        double wall = mould.WallMm;
        yield return Wood(Box.Of(-BoardInsideMm, -board, wall, 0), 45);
        yield return Wood(
            Box.Of(-BoardInsideMm, 0, soundboard.OverhangMm, soundboard.EdgeThicknessMm),
            135
        );
        double base0 = 0;
        double rebate = Math.Min(mould.Rebate.DepthMm, mould.LayersMm[0]);
        for (int i = 0; i < mould.LayersMm.Count; i++)
        {
            double top = base0 + mould.LayersMm[i];
            Shape edge =
                i == 0
                    ? Shape.Polyline(
                        [
                            new(mould.Rebate.WidthMm, 0),
                            new(wall, 0),
                            new(wall, top),
                            new(0, top),
                            new(0, rebate),
                            new(mould.Rebate.WidthMm, rebate),
                        ],
                        closed: true
                    )
                    : Shape.Rectangle(Box.Of(0, base0, wall, top));
            yield return new Region(edge)
            {
                Edge = LineStyle.Outline,
                HatchDegrees = i % 2 == 0 ? 135 : 45,
                HatchSpacingMm = 3.5,
            };
            base0 = top;
        }

        double line = (mould.Rebate.WidthMm + wall) / 2;
        double radius = mould.Fasteners.BoltDiameterMm / 2;
        double nutRadius = mould.Fasteners.NutDiameterMm / 2;
        double nut = Math.Max(0, base0 - mould.Fasteners.NutLengthMm);
        double seat = mould.Fasteners.HeadRecessMm - board;
        double head = (plan.Bolt?.HeadDiameterMm ?? (2 * radius)) / 2;
        double end = seat + (plan.Bolt?.LengthMm ?? plan.BoltLengthMm);
        foreach (
            Box box in new[]
            {
                Box.Of(line - nutRadius, nut, line + nutRadius, base0),
                Box.Of(line - head, seat - (plan.Bolt?.HeadHeightMm ?? 0), line + head, seat),
                Box.Of(line - radius, seat, line + radius, Math.Min(end, base0)),
            }
        )
        {
            yield return new Region(Shape.Rectangle(box))
            {
                Fill = Tone.Paper,
                Edge = LineStyle.Detail,
            };
        }

        yield return new Line(
            new Point(line, -board - 6),
            new Point(line, base0 + 4),
            LineStyle.Centreline
        );
        yield return new LinearDimension(
            new Point(0, base0),
            new Point(wall, base0),
            Side.Above,
            9
        );
        yield return new LinearDimension(new Point(wall, 0), new Point(wall, base0), Side.Right, 9);
        yield return new LinearDimension(
            new Point(wall, -board),
            new Point(wall, 0),
            Side.Right,
            9
        );
        yield return new Leader(
            new Point(mould.Rebate.WidthMm * 0.7, rebate / 2),
            new Vector(-24, 22),
            SheetsWords.Of.Format("mould.rebate", mould.Rebate.WidthMm, mould.Rebate.DepthMm)
        );
        yield return new Leader(
            new Point(-BoardInsideMm * 0.55, soundboard.EdgeThicknessMm),
            new Vector(-6, 10),
            SheetsWords.Of["mould.soundboard"]
        );
    }

    private static Region Wood(Box box, double hatch) =>
        new(Shape.Rectangle(box))
        {
            Edge = LineStyle.Outline,
            HatchDegrees = hatch,
            HatchSpacingMm = 3.5,
        };
}
