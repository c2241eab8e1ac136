using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>Lays the ribs of a design flat.</summary>
public static class RibMaker
{
    /// <summary>Distance of the places along the outline, mm: a flat piece drawn through them is off by under 0.01 mm.</summary>
    public const double StepMm = 3;

    /// <summary>The treble rib, its bends, linings and blocks.</summary>
    /// <param name="design">The design.</param>
    /// <param name="outline">Its outline.</param>
    /// <param name="dome">Height of the soundboard over the datum, body frame.</param>
    /// <param name="depth">Depth of the back, body frame.</param>
    public static RibPlan Of(
        InstrumentDesign design,
        Outline outline,
        IHeightField dome,
        IHeightField depth
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(depth);
        RibsDesign ribs = design.Ribs;
        RibGeometry rib = new(outline, depth, dome, ribs.ThicknessMm);
        double heel = rib.WhereAcross(
            HeelEndMm(design.Heel),
            ribs.ThicknessMm / 2,
            nearTail: false
        );
        double tail = rib.WhereAcross(ribs.TailStripMm / 2, ribs.ThicknessMm / 2, nearTail: true);
        double end = rib.At(tail).AlongMm;
        RibPoint Place(double s)
        {
            RibPoint at = rib.At(s);
            return at with { AlongMm = at.AlongMm - end };
        }

        RibPoint[] points = [.. Places(outline, heel, tail).Select(Place).Reverse()];
        double most = points.Max(at => at.HeightMm);
        double area = Area(points);
        double length = points[^1].AlongMm;
        double lift = points.Max(at => at.BackMm) - points.Min(at => at.FrontMm);
        return new RibPlan(
            points,
            [.. Stations(outline, heel, tail).Select(s => new RibStation(s.Mark, Place(s.At)))],
            [.. RibBends.Of(outline, rib, heel, tail, end, ribs)],
            length,
            rib.LengthMm,
            points.Min(at => at.HeightMm),
            most,
            length + (2 * ribs.LengthAllowanceMm),
            lift + ribs.WidthAllowanceMm,
            area,
            area * ribs.ThicknessMm * Timber.Of(design.Wood.Ribs).DensityKgPerM3 * 1e-6,
            points.All(at => Math.Abs(at.FrontMm) < 1e-6),
            Linings.Of(design, rib),
            Block(rib, design.Blocks.TailWidthMm, design.Blocks.TailThicknessMm, isTail: true),
            design.Heel.Method == HeelMethod.Dowels
                ? Block(
                    rib,
                    design.Blocks.HeelWidthMm,
                    design.Blocks.HeelThicknessMm,
                    isTail: false
                )
                : null
        );
    }

    /// <summary>Where a rib ends at the heel, mm from the centreline: at the bottom of its slot, or on the centreline.</summary>
    public static double HeelEndMm(HeelDesign heel)
    {
        ArgumentNullException.ThrowIfNull(heel);
        return heel.Method == HeelMethod.Slots
            ? Math.Max(0, (heel.WidthMm / 2) - heel.SlotDepthMm)
            : 0;
    }

    // Both ends, the joints of the outline's segments, and even steps between.
    private static IEnumerable<double> Places(Outline outline, double from, double to)
    {
        yield return from;
        for (int i = 0; i < outline.Half.Segments.Length; i++)
        {
            double start = outline.Half.StartOf(i);
            double length = outline.Half.Segments[i].LengthMm;
            int steps = Math.Max(1, (int)Math.Ceiling(length / StepMm));
            for (int k = 0; k < steps; k++)
            {
                double s = start + (length * k / steps);
                if (s > from + 1e-3 && s < to - 1e-3)
                {
                    yield return s;
                }
            }
        }

        yield return to;
    }

    private static IEnumerable<(RibMark Mark, double At)> Stations(
        Outline outline,
        double heel,
        double tail
    )
    {
        List<(RibMark Mark, double At)> marks = [(RibMark.Heel, heel), (RibMark.Tail, tail)];
        double[] turns = [.. outline.Half.TangentsAlong(0).Select(turn => turn.ArcLengthMm)];
        if (turns.Length >= 3)
        {
            double waist = turns.Skip(1).SkipLast(1).MinBy(s => outline.Half.At(s).Position.Y);
            marks.Add((RibMark.Waist, waist));
            marks.Add((RibMark.UpperBout, turns.Where(s => s < waist).MaxBy(Y)));
            marks.Add((RibMark.LowerBout, turns.Where(s => s > waist).MaxBy(Y)));
        }

        marks.AddRange(RibBends.Straights(outline).Select(s => (RibMark.Straight, s)));
        return marks
            .Where(mark => mark.At >= heel && mark.At <= tail)
            .OrderByDescending(mark => mark.At);

        double Y(double s) => outline.Half.At(s).Position.Y;
    }

    private static double Area(RibPoint[] points)
    {
        double sum = 0;
        for (int i = 1; i < points.Length; i++)
        {
            sum +=
                (points[i].AlongMm - points[i - 1].AlongMm)
                * (points[i].HeightMm + points[i - 1].HeightMm)
                / 2;
        }

        return sum;
    }

    private static BlockFace Block(RibGeometry rib, double width, double thickness, bool isTail)
    {
        double t = rib.ThicknessMm;
        double edge = rib.WhereAcross(width / 2, t, isTail);
        double middle = isTail ? rib.Outline.HalfPerimeterMm : 0;
        Point centre = rib.Inside(middle, t);
        int steps = Math.Clamp((int)Math.Ceiling(Math.Abs(middle - edge) / StepMm), 4, 200);
        List<Point> treble = [];
        for (int i = 0; i <= steps; i++)
        {
            Point place = rib.Inside(middle + ((edge - middle) * i / steps), t);
            treble.Add(new Point(Math.Abs(place.X - centre.X), i == 0 ? 0 : place.Y));
        }

        Point corner = rib.Inside(edge, t);
        double into = isTail ? -thickness : thickness;
        return new BlockFace(
            isTail,
            2 * corner.Y,
            thickness,
            [.. treble.Skip(1).Reverse().Select(place => new Point(place.X, -place.Y)), .. treble],
            treble[^1].X,
            Height(centre),
            Height(corner),
            Height(new Point(centre.X + into, 0))
        );

        double Height(Point place) => rib.Depth.HeightAt(place) + rib.Dome.HeightAt(place);
    }
}
