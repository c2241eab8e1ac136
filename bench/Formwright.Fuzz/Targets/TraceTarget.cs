using System.Globalization;
using System.Text;
using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Trace;
using Formwright.Trace.Tests;

namespace Formwright.Fuzz.Targets;

/// <summary>
/// A whole tracing: a coarse table of an outline, mutated, made fair with any options. It ends in a closed, finite outline within reason
/// or in one diagnostic, never in an exception.
/// </summary>
internal sealed class TraceTarget : IFuzzTarget
{
    public string Name => "trace";

    public IReadOnlyList<byte[]> Seeds { get; } =
    [.. ShakenOutline.Models.Values.SelectMany(features => Tables(features))];

    public IReadOnlyList<string> Pieces { get; } =
    [
        "0;0\n",
        "1;1\n",
        "300;-20\n",
        "-50;80\n",
        "250;0\n",
        "1e6;1\n",
        "\n\n",
        "480;1\n480;-1\n",
        "-",
        "0.0",
        "9",
        "1e-9",
    ];

    public int MostChanges => 4;

    public string Try(byte[] input, Random random)
    {
        TraceOutcome outcome = Tracing.Run(
            input,
            "f.csv",
            new TraceOptions
            {
                ToleranceMm = Math.Pow(10, (4 * random.NextDouble()) - 3),
                SmallestBumpMm = Math.Pow(10, (3 * random.NextDouble()) - 2),
                Sides = (SideChoice)random.Next(3),
                Known =
                    random.Next(3) == 0
                        ? new KnownLength((KnownLengthKind)random.Next(2), 400)
                        : null,
            }
        );
        if (outcome.Succeeded == outcome.Diagnostics.Count > 0)
        {
            throw new BrokenPromiseException("a result and faults, or neither");
        }

        foreach (Diagnostic diagnostic in outcome.Diagnostics)
        {
            if (diagnostic.ToString().Any(char.IsControl))
            {
                throw new BrokenPromiseException("a diagnostic that steers a terminal");
            }
        }

        if (!outcome.Succeeded)
        {
            return "faults";
        }

        TraceResult trace = outcome.Result;
        CurvePoint end = trace.Fair.Half.End;
        bool isClosed =
            Math.Abs(end.Position.Y) < 1e-6
            && Math.Abs(Math.Cos(end.Angle)) < 1e-6
            && double.IsFinite(trace.Fair.AreaMm2 + trace.Misfit.RmsMm + trace.Misfit.SegmentsMm);
        if (!isClosed)
        {
            throw new BrokenPromiseException("an outline that is not closed");
        }

        if (trace.Bumps.Any(bump => !double.IsFinite(bump.HeightMm + bump.UMm + bump.LengthMm)))
        {
            throw new BrokenPromiseException("a bump without figures");
        }

        if (TracedDesign.CanBeWritten(trace))
        {
            TracedDesign.Outline(trace);
        }

        return trace.Bumps.Count > 0 ? "fair with bumps" : "fair";
    }

    private static IEnumerable<byte[]> Tables(OutlineFeatures features)
    {
        Chain half = MinimumVariation.Solve(features).Outline!.Half;
        Random random = new(1);
        Point[] treble = ShakenOutline.Half(half, 6, 0.02, random);
        Point[] bass = ShakenOutline.Half(half, 6, 0.02, random, (300, 40, 0.8));
        yield return Table(treble, "u;half width\n");
        yield return Table(
            [.. treble, .. bass.Reverse().Skip(1).Select(at => at with { Y = -at.Y })],
            "x;y\n"
        );
    }

    private static byte[] Table(IEnumerable<Point> points, string head)
    {
        StringBuilder text = new(head);
        foreach (Point at in points)
        {
            text.Append(CultureInfo.InvariantCulture, $"{at.X:0.00};{at.Y:0.00}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
