using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument;
using Formwright.Instrument.Body.Back;

namespace Formwright.Jigs.Brackets;

/// <summary>One instrument as it lies on the slotted board: its outline, and the piece of rib that brackets must hold.</summary>
public sealed class RibLine
{
    private readonly BackField back;
    private readonly IHeightField dome;
    private readonly double half;
    private readonly double heelMm;

    /// <param name="guitar">The instrument.</param>
    /// <param name="alignment">What lies on the line across the board.</param>
    public RibLine(Guitar guitar, JigAlignment alignment)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        InstrumentDesign design = guitar.Design;
        Guitar = guitar;
        double onLine = alignment switch
        {
            JigAlignment.Join => 0,
            JigAlignment.Tail => guitar.Outline.BodyLengthMm,
            _ => design.Outline.Waist.AtMm,
        };
        heelMm = -onLine;
        Half = guitar.Outline.Half.Moved(new Vector(heelMm, 0));
        dome = guitar.Dome.Field;
        back = new BackField(design.Back, guitar.Outline.BodyLengthMm, dome.Region);
        half = design.Ribs.ThicknessMm / 2;
        double heelBlock =
            design.Heel.Method == HeelMethod.Slots
                ? design.Heel.WidthMm / 2
                : design.Blocks.HeelWidthMm / 2;
        OutlineOffsets outline = new(guitar.Outline, 0, 0.01);
        FromMm = outline.ArcLengthAtHeel(0, heelBlock) ?? 0;
        ToMm =
            outline.ArcLengthAtTail(0, design.Blocks.TailWidthMm / 2)
            ?? guitar.Outline.HalfPerimeterMm;
        NeckHalfMm = Math.Max(design.Neck.WidthJoinMm, design.Heel.WidthMm) / 2;
        Hollows = [.. HollowsOf(Half)];
    }

    /// <summary>The instrument.</summary>
    public Guitar Guitar { get; }

    /// <summary>Name of the instrument.</summary>
    public string Name => Guitar.Design.Identity.Name;

    /// <summary>Half of the outline on the board, from heel to tail, y from the centreline. The body lies on its right.</summary>
    public Chain Half { get; }

    /// <summary>Where the heel lies on the board, mm.</summary>
    public double HeelXMm => heelMm;

    /// <summary>Where the tail lies on the board, mm.</summary>
    public double TailXMm => heelMm + Guitar.Outline.BodyLengthMm;

    /// <summary>Arc length at which the rib leaves the heel's block, mm.</summary>
    public double FromMm { get; }

    /// <summary>Arc length at which it meets the tail block, mm.</summary>
    public double ToMm { get; }

    /// <summary>Half the width that neck and heel take before the body, mm.</summary>
    public double NeckHalfMm { get; }

    /// <summary>Arc lengths between which the outline is hollow.</summary>
    public IReadOnlyList<(double FromMm, double ToMm)> Hollows { get; }

    /// <summary>Height of the rib's outer face at an arc length of the outline, soundboard's edge to back, mm.</summary>
    public double RibHeightMm(double arcMm)
    {
        CurvePoint at = Half.At(arcMm);
        Point middle = at.Position - (at.Normal * half);
        Point body = new(middle.X - heelMm, middle.Y);
        return back.HeightAt(body) + dome.HeightAt(body);
    }

    // The curvature is linear within a segment: a hollow starts and ends at a joint or at the root between.
    private static IEnumerable<(double, double)> HollowsOf(Chain chain)
    {
        double? open = null;
        for (int i = 0; i < chain.Segments.Length; i++)
        {
            EulerSegment segment = chain.Segments[i];
            double start = chain.StartOf(i);
            double a = segment.StartCurvature;
            double b = segment.EndCurvature;
            double root = start + (segment.LengthMm * (a == b ? 0 : Math.Clamp(a / (a - b), 0, 1)));
            if (open is null && (a > 0 || b > 0))
            {
                open = a > 0 ? start : root;
            }

            if (open is { } from && b <= 0)
            {
                yield return (from, a > 0 ? root : start);
                open = null;
            }
        }

        if (open is { } last)
        {
            yield return (last, chain.LengthMm);
        }
    }
}
