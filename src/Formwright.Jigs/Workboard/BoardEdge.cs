using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Workboard;

/// <summary>The edge of the board: the outline plus its margin, run into a parallel part for the neck by a fillet.</summary>
internal static class BoardEdge
{
    private const double ToleranceMm = 0.01;

    /// <summary>The edge in the workboard frame; null where the neck part is wider than the body part.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="fromMm">Where the neck part starts, from the nut; null for the board's own end. From the join on, it leaves room for the packing under the neck.</param>
    public static ArcPath? Of(Guitar guitar, double? fromMm = null)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        OutlineOffsets offsets = new(guitar.Outline, guitar.JoinMm, ToleranceMm);
        double halfNeck = board.NeckWidthMm / 2;

        // The fillet touches the line y = halfNeck and the margin curve from outside, so its centre lies where the curve
        // at margin + radius passes y = halfNeck + radius. A radius too large for the shoulder is taken smaller.
        double radius = board.JoinRadiusMm;
        double? at = null;
        for (int i = 0; i < 12 && at is null; i++, radius *= 0.75)
        {
            at = offsets.ArcLengthAtHeel(board.MarginMm + radius, halfNeck + radius);
            if (at is not null)
            {
                break;
            }
        }

        if (at is null)
        {
            return null;
        }

        Point centre = offsets.At(at.Value, board.MarginMm + radius);
        ArcPath? side = offsets.From(at.Value, board.MarginMm);
        if (side is null)
        {
            return null;
        }

        Point touch = offsets.At(at.Value, board.MarginMm);
        double start = fromMm ?? -board.BeyondNutMm;
        ContourBuilder edge = new();
        edge.LineTo(new Point(start, -halfNeck)).LineTo(new Point(start, halfNeck));
        edge.LineTo(new Point(centre.X, halfNeck));
        if (radius > 0)
        {
            // From straight below the centre to the touching place: a turn to the left.
            double turning = Math.Atan2(touch.Y - centre.Y, touch.X - centre.X) + (Math.PI / 2);
            edge.ArcTo(touch, Math.Tan(turning / 4));
        }

        edge.Along(side).Back(ArcPaths.Mirrored(side));
        if (radius > 0)
        {
            double turning = Math.Atan2(touch.Y - centre.Y, touch.X - centre.X) + (Math.PI / 2);
            edge.ArcTo(new Point(centre.X, -halfNeck), Math.Tan(turning / 4));
        }

        return edge.Close();
    }

    /// <summary>The edge of the belly that is cut out of an overlay: the dome's own edge, from its start to the tail.</summary>
    public static ArcPath? Belly(Guitar guitar)
    {
        OutlineOffsets offsets = new(guitar.Outline, guitar.JoinMm, ToleranceMm);
        double rim = guitar.Design.Dome.RimWidthMm;
        double start = guitar.JoinMm + guitar.Dome.StartUMm;
        double low = 0;
        double high = guitar.Outline.Half.LengthMm;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = offsets.At(middle, -rim).X < start ? (middle, high) : (low, middle);
        }

        return offsets.From(high, -rim) is { } side
            ? new ContourBuilder().Along(side).Back(ArcPaths.Mirrored(side)).Close()
            : null;
    }

    /// <summary>The edge without a neck part, to go on with after a finding.</summary>
    public static ArcPath BodyOnly(Guitar guitar)
    {
        OutlineOffsets offsets = new(guitar.Outline, guitar.JoinMm, ToleranceMm);
        ArcPath side = offsets.From(0, guitar.Design.Workboard.MarginMm)!;
        return new ContourBuilder().Along(side).Back(ArcPaths.Mirrored(side)).Close();
    }
}
