namespace Formwright.Curves.Variation;

/// <summary>A solved curve as a chain of Euler spirals, flats added, in mm.</summary>
/// <param name="Half">The half outline.</param>
/// <param name="At">Arc length of each feature on it, mm; at a flat, that of the end where the curve starts.</param>
/// <param name="DeviationMm">Largest distance between the chain and the solved curve, mm.</param>
internal sealed record VariationOutline(Chain Half, double[] At, double DeviationMm)
{
    internal static VariationOutline Of(
        VariationCurve curve,
        OutlineFeatures features,
        double scaleMm,
        double deviationMm
    )
    {
        List<EulerSegment> segments = [];
        double[] at = new double[5];
        double deviation = 0;
        if (features.HeelFlatMm > 0)
        {
            segments.Add(EulerSegment.Line(Point.Origin, new(0, 0.5 * features.HeelFlatMm)));
            at[0] = segments[0].LengthMm;
        }

        for (int m = 0; m < 4; m++)
        {
            SpanSegments made = SpanSegments.Of(
                curve.Spans[m],
                deviationMm / scaleMm,
                MinimumVariation.FewestSegments,
                MinimumVariation.MostSegments
            );
            segments.AddRange(made.Scaled(scaleMm));
            at[m + 1] = at[m] + (curve.Spans[m].Length * scaleMm);
            deviation = Math.Max(deviation, made.Deviation * scaleMm);
        }

        if (features.TailFlatMm > 0)
        {
            Point corner = new(features.BodyLengthMm, 0.5 * features.TailFlatMm);
            segments.Add(EulerSegment.Line(corner, new(features.BodyLengthMm, 0)));
        }

        return new(new Chain(segments), at, deviation);
    }
}
