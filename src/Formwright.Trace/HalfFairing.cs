using Formwright.Curves;
using Formwright.Trace.Aligning;
using Formwright.Trace.Fairing;
using Formwright.Trace.Files;
using Formwright.Trace.Fitting;

namespace Formwright.Trace;

/// <summary>Makes the sides of an aligned trace fair and measures what leaves the fair curves.</summary>
internal sealed class HalfFairing(TraceFile file, TraceOptions options, AlignedTrace aligned)
{
    /// <summary>Finds lower than this share of the lowest bump told are left out of the fit as well.</summary>
    private const double MaskShare = 0.6;

    private const double TableStepMm = 20;

    internal TraceResult Run()
    {
        List<(TraceSide Side, Point[] Points)> sides = [];
        if (aligned.Treble is { } treble)
        {
            sides.Add((TraceSide.Treble, treble));
        }

        if (aligned.Bass is { } bass)
        {
            sides.Add((TraceSide.Bass, bass));
        }

        List<FollowedHalf> followed =
        [
            .. sides.Select(side =>
                FollowedHalf.Of(side.Points) ?? throw Fault("fault.few-points", side.Points.Length)
            ),
        ];
        FairFit fit =
            FairFit.Of(followed, MaskShare * options.SmallestBumpMm) ?? throw Fault("fault.no-fit");
        GridCurve target = Target(fit, sides);
        (HalfChain closed, double largest) =
            FewestSegments.Of(target, options.ToleranceMm) ?? throw Fault("fault.no-fit");
        Chain half = closed.ToChain().Moved(new Vector(-closed.HeelU, 0));
        if (half.End.Position.X <= 0)
        {
            throw Fault("fault.no-fit");
        }

        Outline fair = new(half);
        NoiseFloor floor = new(
            followed.Max(each => each.PointNoiseMm),
            Math.Max(1e-3, followed.Max(each => each.StationNoiseMm)),
            target.StepMm,
            options.SmallestBumpMm
        );
        List<Bump> bumps = [];
        Dictionary<TraceSide, IReadOnlyList<Point>> standOff = [];
        for (int i = 0; i < sides.Count; i++)
        {
            FairHalf side = fit.Sides[i];
            (double S, double R)[] feet = Stations.Feet(side.Curve, sides[i].Points);
            standOff[sides[i].Side] = [.. feet.Select(foot => new Point(foot.S, foot.R))];
            bumps.AddRange(
                side.Finds.Select(find => BumpMeasure.Of(find, side.Curve, feet, sides[i].Side))
                    .Where(bump => bump.HeightMm >= options.SmallestBumpMm)
                    .Select(bump => bump with { UMm = bump.UMm - closed.HeelU })
            );
        }

        Vector home = new(-closed.HeelU, 0);
        OutlineFeatures? plain = Plain(fit, target);
        return new TraceResult(
            file,
            fair,
            Features(fair, plain),
            [.. bumps.OrderByDescending(bump => bump.TurnDeg)],
            floor,
            aligned.Alignment,
            1,
            Misfit(closed, largest, fit, sides),
            fit.Sides.Count == 2 ? Differences(fit, closed.HeelU) : [],
            [.. (aligned.Treble ?? []).Select(p => p + home)],
            [.. (aligned.Bass ?? []).Select(p => new Point(p.X - closed.HeelU, -p.Y))]
        )
        {
            Plain = plain,
            StandOff = standOff,
            Unsure = Unsure(fit, sides, closed.HeelU),
        };
    }

    /// <summary>The curve that the fair outline follows: of one side, or of both together without their bumps.</summary>
    private GridCurve Target(FairFit fit, List<(TraceSide Side, Point[] Points)> sides)
    {
        IReadOnlyList<FairHalf> chosen = fit.Sides;
        if (options.Sides != SideChoice.Averaged && sides.Count == 2)
        {
            chosen = [fit.Sides[options.Sides == SideChoice.Treble ? 0 : 1]];
        }

        // Where the shape is not understood, the points themselves are followed.
        bool isUnsure = chosen.Any(side => side.Closed.Count > 0);
        return Settling.Onto(
                chosen[0].Curve,
                [.. chosen.Select(side => side.Stations)],
                isUnsure ? FollowedHalf.FollowMm : fit.WaveMm,
                isUnsure ? Shape.None : fit.Candidate.Shape,
                12
            ) ?? throw Fault("fault.no-fit");
    }

    private TraceMisfit Misfit(
        HalfChain chain,
        double largest,
        FairFit fit,
        List<(TraceSide Side, Point[] Points)> sides
    )
    {
        double sum = 0;
        double most = 0;
        int count = 0;
        for (int i = 0; i < sides.Count; i++)
        {
            if (
                options.Sides != SideChoice.Averaged
                && sides.Count == 2
                && sides[i].Side.ToString() != options.Sides.ToString()
            )
            {
                continue;
            }

            FairHalf side = fit.Sides[i];
            int hint = 0;
            foreach (Point point in sides[i].Points)
            {
                (double s, _) = side.Curve.Foot(point, ref hint);
                if (side.Finds.Any(find => Math.Abs(find.S - s) < 0.75 * find.LengthMm))
                {
                    continue;
                }

                double stretch = chain.LengthMm / side.Curve.LengthMm;
                double distance = chain.Foot(point, s * stretch).Distance;
                sum += distance * distance;
                most = Math.Max(most, Math.Abs(distance));
                count++;
            }
        }

        return new TraceMisfit(
            chain.Count,
            largest,
            largest <= options.ToleranceMm,
            count > 0 ? Math.Sqrt(sum / count) : 0,
            most
        );
    }

    /// <summary>The features of the fair outline; where an outline with flats is all there is to say of it, the flats are that one's.</summary>
    private static TracedFeatures Features(Outline fair, OutlineFeatures? plain)
    {
        TracedFeatures read = FeaturesOf.Outline(fair);
        return plain is null
            ? read
            : read with
            {
                HeelFlatMm = plain.HeelFlatMm,
                TailFlatMm = plain.TailFlatMm,
                HeelRadiusMm =
                    plain.HeelFlatMm > 0 ? double.PositiveInfinity : fair.Half.Start.RadiusMm,
                TailRadiusMm =
                    plain.TailFlatMm > 0 ? double.PositiveInfinity : fair.Half.End.RadiusMm,
            };
    }

    /// <summary>The features of a shape that a design can state, where its outline stays within the tolerance of the fair curve.</summary>
    private OutlineFeatures? Plain(FairFit fit, GridCurve target)
    {
        if (
            fit.Candidate.Prior is not { } prior
            || prior.Features.HeelRadiusMm is not null
            || prior.Features.TailRadiusMm is not null
        )
        {
            return null;
        }

        GridCurve shape = prior.ToGrid(target.Last);
        int hint = 0;
        foreach (Point place in target.Places)
        {
            if (Math.Abs(shape.Foot(place, ref hint).Distance) > options.ToleranceMm)
            {
                return null;
            }
        }

        return prior.Features;
    }

    /// <summary>Half widths of both fair curves at even stations.</summary>
    private static List<SideDifference> Differences(FairFit fit, double heelU)
    {
        GridCurve treble = fit.Sides[0].Curve;
        GridCurve bass = fit.Sides[1].Curve;
        double from = Math.Max(treble.Places[0].X, bass.Places[0].X);
        double to = Math.Min(treble.Places[treble.Last].X, bass.Places[bass.Last].X);
        List<SideDifference> rows = [];
        for (double u = TableStepMm; u + heelU < to; u += TableStepMm)
        {
            if (u + heelU > from)
            {
                rows.Add(
                    new SideDifference(u, bass.WidestAt(u + heelU), treble.WidestAt(u + heelU))
                );
            }
        }

        return rows;
    }

    private static List<(TraceSide, double, double)> Unsure(
        FairFit fit,
        List<(TraceSide Side, Point[] Points)> sides,
        double heelU
    )
    {
        List<(TraceSide, double, double)> rows = [];
        for (int i = 0; i < sides.Count; i++)
        {
            GridCurve curve = fit.Sides[i].Curve;
            foreach ((double from, double to) in fit.Sides[i].Closed)
            {
                rows.Add(
                    (
                        sides[i].Side,
                        curve.At(from).Position.X - heelU,
                        curve.At(to).Position.X - heelU
                    )
                );
            }
        }

        return rows;
    }

    private TraceFault Fault(string key, params object?[] values)
    {
        TracedCurve first = file.Curves[0];
        return new TraceFault(file.Name, first.Line, first.Column, key, values);
    }
}
