using CsCheck;

namespace Formwright.Curves.Tests;

/// <summary>Features that the tests share: the three invented models of design.md section 4, and random sensible ones.</summary>
internal static class Models
{
    internal static readonly OutlineFeatures Heron = new(
        488,
        new(104, 282),
        new(190, 236),
        new(356, 368)
    );

    internal static readonly OutlineFeatures Dunlin = new(
        462,
        new(99, 262),
        new(180, 220),
        new(337, 342)
    );

    internal static readonly OutlineFeatures Plover = new(
        412,
        new(88, 238),
        new(160, 200),
        new(300, 308)
    );

    /// <summary>Features about as far from the models as guitars are from each other; every one has an outline.</summary>
    internal static readonly Gen<OutlineFeatures> Sensible =
        from body in Gen.Double[300, 600]
        from lower in Gen.Double[0.66, 0.82]
        from upper in Gen.Double[0.68, 0.86]
        from waist in Gen.Double[0.76, 0.92]
        from upperAt in Gen.Double[0.185, 0.23]
        from waistAt in Gen.Double[0.36, 0.42]
        from lowerAt in Gen.Double[0.69, 0.76]
        select new OutlineFeatures(
            body,
            new(body * upperAt, body * lower * upper),
            new(body * waistAt, body * lower * upper * waist),
            new(body * lowerAt, body * lower)
        );

    /// <summary>The same, some with flats and some with radii near those that the fair curve has.</summary>
    internal static readonly Gen<OutlineFeatures> Varied =
        from features in Sensible
        from heel in Gen.Double[0, 0.3]
        from tail in Gen.Double[0, 0.3]
        from lowerRadius in Gen.Double[0.28, 0.36]
        from kind in Gen.Int[0, 3]
        select kind switch
        {
            1 => features with { HeelFlatMm = heel * features.UpperBout.WidthMm },
            2 => features with
            {
                HeelFlatMm = heel * features.UpperBout.WidthMm,
                TailFlatMm = tail * features.LowerBout.WidthMm,
            },
            3 => features with
            {
                LowerBout = features.LowerBout with
                {
                    RadiusMm = lowerRadius * features.LowerBout.WidthMm,
                },
            },
            _ => features,
        };

    internal static Outline Of(OutlineFeatures features, double toleranceMm = 0.01) =>
        MinimumVariation.Solve(features, toleranceMm).Outline
        ?? throw new InvalidOperationException($"No outline: {features}");

    /// <summary>Random chains of a few curvature-continuous segments.</summary>
    internal static readonly Gen<Chain> Chains =
        from angle in Gen.Double[-3, 3]
        from bends in Gen.Double[-0.02, 0.02].Array[2, 6]
        from lengths in Gen.Double[5, 120].Array[5]
        select Chained(angle, bends, lengths, []);

    /// <summary>The same with corners.</summary>
    internal static readonly Gen<Chain> Cornered =
        from angle in Gen.Double[-3, 3]
        from bends in Gen.Double[-0.02, 0.02].Array[2, 6]
        from lengths in Gen.Double[5, 120].Array[5]
        from corners in Gen.Double[-1.5, 1.5].Array[5]
        select Chained(angle, bends, lengths, corners);

    internal static string Show(Chain chain) =>
        string.Join(
            "; ",
            chain.Segments.Select(s =>
                $"{s.Start} {s.StartAngle:R} {s.StartCurvature:R} {s.CurvatureRate:R} {s.LengthMm:R}"
            )
        );

    private static Chain Chained(double angle, double[] bends, double[] lengths, double[] corners)
    {
        List<EulerSegment> segments = [];
        Point at = new(17, -5);
        for (int i = 1; i < bends.Length; i++)
        {
            double length = lengths[i - 1];
            EulerSegment segment = new(
                at,
                angle,
                bends[i - 1],
                (bends[i] - bends[i - 1]) / length,
                length
            );
            segments.Add(segment);
            double corner = i <= corners.Length ? corners[i - 1] : 0;
            (at, angle) = (segment.End.Position, segment.EndAngle + corner);
        }

        return new Chain(segments);
    }
}
