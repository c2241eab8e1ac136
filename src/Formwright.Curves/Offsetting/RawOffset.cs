using Formwright.Curves.Converting;

namespace Formwright.Curves.Offsetting;

/// <summary>The untrimmed offset: all normals' ends where 1 - κd is above 0, round corners, and for an open source circles about its ends.</summary>
internal sealed class RawOffset
{
    /// <summary>A segment shorter than this is left out: its ends are one place.</summary>
    private const double NothingMm = 1e-9;

    /// <summary>Where the offset hardly passes the radius, the tail that is cut off is smaller than this, and the strand goes on.</summary>
    private const double GapMm = 1e-7;

    private readonly Chain source;
    private readonly double distance;
    private readonly List<Strand> strands = [];
    private List<OffsetSpan> current = [];
    private bool isBroken;

    private RawOffset(Chain source, double distance)
    {
        this.source = source;
        this.distance = distance;
    }

    internal static List<Strand> Of(Chain source, double distance)
    {
        RawOffset raw = new(source, distance);
        raw.Build();
        if (!source.IsClosed)
        {
            // Round an open end, one side of the source may come near the other: what lies on the other side cuts too.
            RawOffset other = new(source, -distance);
            other.Build();
            raw.strands.AddRange(other.strands.Select(strand => strand with { IsCutter = true }));
            raw.Cap(source.Start);
            raw.Cap(source.End);
        }

        return raw.strands;
    }

    private void Build()
    {
        int count = source.Segments.Length;
        bool startsFresh = false;
        for (int i = 0; i < count; i++)
        {
            if (i > 0)
            {
                Corner(source.Segments[i - 1], source.Segments[i]);
            }

            bool isFirst = strands.Count == 0 && current.Count == 0 && !isBroken;
            Segment(source.Segments[i]);
            startsFresh |= isFirst && current.Count > 0 && current[0].From == 0;
        }

        if (source.IsClosed)
        {
            Corner(source.Segments[^1], source.Segments[0]);
            Close(startsFresh);
        }
        else
        {
            Flush();
        }
    }

    /// <summary>Joins the end of the last strand to the start of the first where nothing lies between them.</summary>
    private void Close(bool startsFresh)
    {
        if (current.Count == 0)
        {
            return;
        }

        List<OffsetSpan> first = strands.Count > 0 ? strands[0].Spans : current;
        bool joins = (!isBroken && startsFresh) || IsGapNothing(current[^1], first[0]);
        if (!joins)
        {
            Flush();
        }
        else if (strands.Count == 0)
        {
            strands.Add(new(current, true, false));
        }
        else
        {
            strands[0] = new([.. current, .. first], false, false);
        }
    }

    /// <summary>Adds what a segment gives.</summary>
    private void Segment(EulerSegment segment)
    {
        if (segment.LengthMm < NothingMm)
        {
            return;
        }

        double atStart = 1 - (segment.StartCurvature * distance);
        double atEnd = 1 - (segment.EndCurvature * distance);
        if (atStart > 0 && atEnd > 0)
        {
            Add(new(segment, 0, segment.LengthMm, distance, false));
            return;
        }

        double cusp = Math.Clamp(
            ((1 / distance) - segment.StartCurvature) / segment.CurvatureRate,
            0,
            segment.LengthMm
        );
        if (atStart > 0)
        {
            Add(new(segment, 0, cusp, distance, false));
        }

        isBroken = true;
        if (atEnd > 0)
        {
            Add(new(segment, cusp, segment.LengthMm, distance, false));
        }
    }

    /// <summary>Rounds an outer corner, breaks at an inner one.</summary>
    private void Corner(EulerSegment before, EulerSegment after)
    {
        double kink = Math.IEEERemainder(after.StartAngle - before.EndAngle, 2 * Math.PI);
        if (Math.Abs(kink) <= CurveRun.CornerRad)
        {
            return;
        }

        if (kink * distance > 0)
        {
            isBroken = true;
        }
        else
        {
            Add(new(new(after.Start, before.EndAngle, 0, 0, 0), 0, kink, distance, true));
        }
    }

    /// <summary>Goes on with the strand, or starts a new one after a break; a break across which nothing was lost is none.</summary>
    private void Add(OffsetSpan span)
    {
        if (isBroken && current.Count > 0 && !IsGapNothing(current[^1], span))
        {
            Flush();
        }

        isBroken = false;
        current.Add(span);
    }

    private static bool IsGapNothing(OffsetSpan before, OffsetSpan after) =>
        before.At(before.End).Position.DistanceTo(after.At(0).Position) <= GapMm;

    private void Flush()
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
