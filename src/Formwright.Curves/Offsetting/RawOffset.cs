using Formwright.Curves.Converting;

namespace Formwright.Curves.Offsetting;

/// <summary>The untrimmed offset: all normals' ends where 1 - κd is above 0, round corners, and for an open source circles about its ends.</summary>
internal sealed class RawOffset
{
    /// <summary>A segment shorter than this is left out: its ends are one place.</summary>
    private const double NothingMm = 1e-9;

    private readonly Chain source;
    private readonly double distance;
    private readonly List<Strand> strands = [];
    private List<OffsetSpan> current = [];

    private RawOffset(Chain source, double distance)
    {
        this.source = source;
        this.distance = distance;
    }

    internal static List<Strand> Of(Chain source, double distance)
    {
        RawOffset raw = new(source, distance);
        raw.Build();
        return raw.strands;
    }

    private void Build()
    {
        int count = source.Segments.Length;
        bool isWhole = source.IsClosed;
        bool startsFresh = true;
        for (int i = 0; i < count; i++)
        {
            if (i > 0)
            {
                isWhole &= Corner(source.Segments[i - 1], source.Segments[i]);
            }

            isWhole &= Segment(source.Segments[i], i == 0, ref startsFresh);
        }

        bool joins = source.IsClosed && Corner(source.Segments[^1], source.Segments[0]);
        if (isWhole && joins)
        {
            strands.Add(new(current, true, false));
            return;
        }

        if (joins && startsFresh && current.Count > 0 && strands.Count > 0)
        {
            // The first strand goes on where the last one ends.
            strands[0] = new([.. current, .. strands[0].Spans], false, false);
            current = [];
        }

        Break();
        if (!source.IsClosed)
        {
            Cap(source.Start);
            Cap(source.End);
        }
    }

    /// <summary>Adds what a segment gives.</summary>
    /// <returns>Whether that is one piece from end to end.</returns>
    private bool Segment(EulerSegment segment, bool isFirst, ref bool startsFresh)
    {
        if (segment.LengthMm < NothingMm)
        {
            return true;
        }

        double atStart = 1 - (segment.StartCurvature * distance);
        double atEnd = 1 - (segment.EndCurvature * distance);
        if (atStart > 0 && atEnd > 0)
        {
            current.Add(new(segment, 0, segment.LengthMm, distance, false));
            return true;
        }

        double cusp = Math.Clamp(
            ((1 / distance) - segment.StartCurvature) / segment.CurvatureRate,
            0,
            segment.LengthMm
        );
        if (atStart > 0)
        {
            current.Add(new(segment, 0, cusp, distance, false));
        }

        Break();
        startsFresh &= !isFirst || atStart > 0;
        if (atEnd > 0)
        {
            current.Add(new(segment, cusp, segment.LengthMm, distance, false));
        }

        return false;
    }

    /// <summary>Rounds an outer corner, breaks at an inner one.</summary>
    /// <returns>Whether the strand goes on.</returns>
    private bool Corner(EulerSegment before, EulerSegment after)
    {
        double kink = Math.IEEERemainder(after.StartAngle - before.EndAngle, 2 * Math.PI);
        if (Math.Abs(kink) <= CurveRun.CornerRad)
        {
            return true;
        }

        if (kink * distance > 0)
        {
            Break();
            return false;
        }

        current.Add(new(new(after.Start, before.EndAngle, 0, 0, 0), 0, kink, distance, true));
        return true;
    }

    private void Break()
    {
        if (current.Count > 0)
        {
            strands.Add(new(current, false, false));
            current = [];
        }
    }

    private void Cap(CurvePoint end)
    {
        double turn = -2 * Math.PI * Math.Sign(distance);
        strands.Add(
            new([new(new(end.Position, end.Angle, 0, 0, 0), 0, turn, distance, true)], true, true)
        );
    }
}
