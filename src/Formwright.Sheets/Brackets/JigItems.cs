using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Jigs.Brackets;

namespace Formwright.Sheets.Brackets;

/// <summary>Slots and brackets as they are drawn on the board, both sides.</summary>
internal static class JigItems
{
    private const double LineBeyondMm = 12;

    /// <summary>Centreline, line across the board, slots of both sides.</summary>
    public static IEnumerable<Item> Board(JigPlan plan, LineStyle slotStyle)
    {
        Box box = Box.Empty;
        foreach (ArcVertex corner in plan.Parts[0].Outside.Vertices)
        {
            box = box.With(corner.Position);
        }

        yield return new Line(
            new Point(box.Min.X - LineBeyondMm, 0),
            new Point(box.Max.X + LineBeyondMm, 0),
            LineStyle.Centreline
        );
        yield return new Line(new Point(0, box.Min.Y), new Point(0, box.Max.Y), LineStyle.Datum);
        foreach (ArcPath slot in plan.Parts[0].Insides)
        {
            yield return new Line(Shape.Of(slot), slotStyle);
        }
    }

    /// <summary>An instrument's outline on the board.</summary>
    public static Line Outline(JigMember member, LineStyle style) =>
        new(
            Shape.Of(
                member
                    .Rib.Guitar.Outline.Closed.Moved(new Vector(member.Rib.HeelXMm, 0))
                    .ToBeziers(0.01)
            ),
            style
        );

    /// <summary>A bracket where it stands, on one side (1 bass, -1 treble): body, axis, bolt, and a heavy line where its face is.</summary>
    public static IEnumerable<Item> Bracket(BracketSetting setting, double boltMm, int side)
    {
        Point[] body = [.. setting.Body.Select(corner => On(corner, side))];
        yield return new Region(Shape.Polyline(body, closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Detail,
        };
        (Point a, Point b) = Face(setting);
        yield return new Line(On(a, side), On(b, side), LineStyle.Outline);
        Point bolt = On(setting.Bolt, side);
        yield return new Line(On(setting.Contact.Middle, side), bolt, LineStyle.Centreline);
        yield return new Line(Shape.Circle(bolt, boltMm / 2), LineStyle.Drill);
        yield return new Cross(bolt, 3);
    }

    /// <summary>Both ends of the face that touches.</summary>
    public static (Point A, Point B) Face(BracketSetting setting)
    {
        int first = setting.Contact.Face == BracketFace.Front ? 0 : 3;
        return (setting.Body[first], setting.Body[first + 1]);
    }

    /// <summary>A place of the bass side, or its mirror.</summary>
    public static Point On(Point place, int side) => new(place.X, side * place.Y);
}
