using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Mould;

/// <summary>
/// Dowels and bolts of one half (bass side), along the line midway between the rebate's edge and the outer edge. The first and last dowel
/// stand as far apart as the ends allow, since the angle error of a half is the dowels' play over their spacing; the rest is spread evenly.
/// </summary>
internal static class FastenerRow
{
    /// <summary>Distance of the end dowels from the end faces, in diameters (common practice: at least 1.5; more keeps ply from splitting).</summary>
    private const double EndDiameters = 2.5;

    public static List<Fastener> Of(Guitar guitar, OutlineOffsets offsets)
    {
        MouldDesign mould = guitar.Design.Mould;
        FastenersDesign fasteners = mould.Fasteners;
        double line = (mould.Rebate.WidthMm + mould.WallMm) / 2;
        double end = EndDiameters * fasteners.DowelDiameterMm;
        double? first = offsets.ArcLengthAtHeel(line, mould.HeelCutMm + end);
        double? last = offsets.ArcLengthAtTail(line, mould.TailCutMm + end);
        if (first is null || last is null || last <= first)
        {
            return [];
        }

        int count = fasteners.Dowels + fasteners.Bolts;
        bool[] isDowel = Sequence(fasteners.Dowels, count);
        double[] lengths = EvenOnOffset(guitar.Outline.Half, line, first.Value, last.Value, count);
        List<Fastener> row = [];
        for (int i = 0; i < count; i++)
        {
            Point centre = offsets.At(lengths[i], line);
            HoleKind kind = isDowel[i] ? HoleKind.Dowel : HoleKind.Bolt;
            double diameter = isDowel[i]
                ? fasteners.DowelDiameterMm
                : BoltHoles.ClearanceMm(fasteners.BoltDiameterMm);
            row.Add(new Fastener(kind, centre, diameter, EdgeDistance(guitar, centre)));
        }

        return row;
    }

    /// <summary>From a place to the nearest edge of the wall's land: rebate, outer edge, end faces.</summary>
    private static double EdgeDistance(Guitar guitar, Point centre)
    {
        MouldDesign mould = guitar.Design.Mould;
        Point body = new(centre.X - guitar.JoinMm, centre.Y);
        double outside = guitar.Outline.Half.Nearest(body).DistanceMm;
        double toEnd =
            body.X < guitar.Outline.BodyLengthMm / 2
                ? centre.Y - mould.HeelCutMm
                : centre.Y - mould.TailCutMm;
        return Math.Min(Math.Min(outside - mould.Rebate.WidthMm, mould.WallMm - outside), toEnd);
    }

    // Dowels at both ends and evenly between; bolts in the places left.
    private static bool[] Sequence(int dowels, int count)
    {
        bool[] isDowel = new bool[count];
        for (int i = 0; i < dowels; i++)
        {
            isDowel[(int)Math.Round(i * (count - 1.0) / (dowels - 1))] = true;
        }

        return isDowel;
    }

    // Arc lengths of the outline whose places on the offset line are evenly spaced along that line.
    private static double[] EvenOnOffset(
        Chain half,
        double offset,
        double from,
        double to,
        int count
    )
    {
        const int Steps = 400;
        double[] travelled = new double[Steps + 1];
        double step = (to - from) / Steps;
        for (int i = 1; i <= Steps; i++)
        {
            // The body lies to the right of the half, so the offset to its left has the speed 1 - κ d.
            double speed = 1 - (half.At(from + ((i - 0.5) * step)).Curvature * offset);
            travelled[i] = travelled[i - 1] + (Math.Max(speed, 0) * step);
        }

        double[] lengths = new double[count];
        for (int k = 0; k < count; k++)
        {
            double wanted = travelled[Steps] * k / (count - 1);
            int i = Array.BinarySearch(travelled, wanted);
            i = Math.Clamp(i < 0 ? ~i : i, 1, Steps);
            double share = (wanted - travelled[i - 1]) / (travelled[i] - travelled[i - 1]);
            lengths[k] = from + ((i - 1 + share) * step);
        }

        return lengths;
    }
}
