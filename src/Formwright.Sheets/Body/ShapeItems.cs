using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Fields;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Sheets.Body;

/// <summary>The soundboard from the front with lines of equal height: full where it stands out, dashed where it is hollow, thick where it is at rest.</summary>
internal static class ShapeItems
{
    private const double ToleranceMm = 0.1;
    private const double StepMm = 7;
    private const double NameApartMm = 24;

    /// <summary>Outline, soundhole and bridge.</summary>
    public static IEnumerable<Item> Board(Guitar guitar, bool withBraces)
    {
        yield return new Line(
            Shape.Of(guitar.Outline.Closed.ToBeziers(ToleranceMm)),
            LineStyle.Detail
        );
        SoundholeDesign hole = guitar.Design.Soundhole;
        yield return new Line(
            Shape.Circle(new Point(hole.AtMm, 0), hole.RadiusMm),
            LineStyle.Detail
        );
        BridgeDesign bridge = guitar.Design.Bridge;
        Point middle = SoundboardPlan.BridgeMiddle(guitar.Design);
        Vector half = new(bridge.WidthMm / 2, bridge.LengthMm / 2);
        yield return new Line(
            Shape.Rectangle(new Box(middle - half, middle + half)),
            withBraces ? LineStyle.Detail : LineStyle.Witness
        );
    }

    /// <summary>Middle lines of bars and braces.</summary>
    public static IEnumerable<Item> Braces(BodyPlan body) =>
        body.Soundboard.Braces.Select(brace => new Line(
            Shape.Polyline([.. brace.Line], closed: false),
            LineStyle.Guide
        ));

    /// <summary>Lines of equal height.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="shape">The shape, body frame.</param>
    /// <param name="step">Difference of height from line to line, in the shape's unit.</param>
    /// <param name="most">Lines on each side of rest, at most.</param>
    /// <param name="name">Name of a line, or null for none.</param>
    /// <param name="flip">Hills are drawn as hollows and the other way round.</param>
    public static IEnumerable<Item> Lines(
        Guitar guitar,
        IHeightField shape,
        double step,
        int most,
        Func<double, string>? name = null,
        bool flip = false
    )
    {
        SoundholeDesign hole = guitar.Design.Soundhole;
        Fields.Region plate = shape.Region;
        bool IsOnPlate(Point place) =>
            plate.Contains(place)
            && place.DistanceTo(new Point(hole.AtMm, 0)) > hole.RadiusMm + 0.5;
        SampledShape sampled = new(shape, IsOnPlate, StepMm);
        double[] levels = [.. Enumerable.Range(-most, (2 * most) + 1).Select(i => i * step)];
        List<Point> names = [];
        foreach (Contour contour in Contours.Of(sampled, levels, 1, StepMm))
        {
            bool isRest = Math.Abs(contour.HeightMm) < step / 2;
            bool isUp = contour.HeightMm > 0 != flip;
            LineStyle style =
                isRest ? LineStyle.Cut
                : isUp ? LineStyle.Contour
                : LineStyle.Contour with { Dash = [1.6, 0.8] };
            bool named = false;
            foreach ((Point[] run, bool closed) in Runs(contour, IsOnPlate))
            {
                yield return new Line(Shape.Polyline(run, closed), style);
                if (name is not null && !isRest && !named && run.Length > 8)
                {
                    named = true;
                    // On the treble side, apart from the names before it.
                    Point at = run.MaxBy(p =>
                        names
                            .Select(other => Math.Min(NameApartMm, other.DistanceTo(p)))
                            .DefaultIfEmpty(NameApartMm)
                            .Min() * 1000
                        + p.Y
                    );
                    names.Add(at);
                    yield return new Label(name(contour.HeightMm), at)
                    {
                        Align = Align.Centre,
                        Rise = Rise.Middle,
                        Clear = true,
                    };
                }
            }
        }
    }

    // The parts of a line that lie on the plate.
    private static IEnumerable<(Point[] Run, bool Closed)> Runs(
        Contour contour,
        Func<Point, bool> isOnPlate
    )
    {
        if (contour.IsClosed && contour.Points.Count > 2 && contour.Points.All(isOnPlate))
        {
            yield return ([.. contour.Points], true);
            yield break;
        }

        List<Point> run = [];
        foreach (
            Point place in contour.IsClosed
                ? contour.Points.Append(contour.Points[0])
                : contour.Points
        )
        {
            if (isOnPlate(place))
            {
                run.Add(place);
                continue;
            }

            if (run.Count > 1)
            {
                yield return ([.. run], false);
            }

            run = [];
        }

        if (run.Count > 1)
        {
            yield return ([.. run], false);
        }
    }
}
