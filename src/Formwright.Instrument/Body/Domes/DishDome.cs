using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Instrument.Body.Domes;

/// <summary>
/// A spherical dish with a flat rim blended in: the part of a sphere above the rim's plane, its edge rounded, times a step that rises from 0 at
/// the rim (and at the dome's start) to 1 over the blend's length. Twice continuously differentiable: it meets the rim without a crease.
/// </summary>
/// <remarks>
/// The distance from the rim is that from the exact outline, so slope and curvature are exact as long as the blend is shorter than the
/// outline's smallest inner radius.
/// </remarks>
public sealed class DishDome : IHeightField
{
    // Share of the height over which the edge of the sphere is rounded (our choice: unseen in the middle, no crease at the edge).
    private const double RoundedShare = 0.15;

    private readonly Chain half;
    private readonly double rimMm;
    private readonly double startMm;
    private readonly double centreMm;
    private readonly double radiusMm;
    private readonly double heightMm;
    private readonly double blendMm;

    /// <param name="outline">The outline.</param>
    /// <param name="region">The region inside the rim, from the dome's start on.</param>
    /// <param name="rimMm">Width of the rim, mm.</param>
    /// <param name="startMm">Station where the dome starts, mm.</param>
    /// <param name="centreMm">Station of the sphere's top, mm.</param>
    /// <param name="radiusMm">Radius of the sphere, mm.</param>
    /// <param name="heightMm">Height of the sphere's top over the rim, mm.</param>
    /// <param name="blendMm">Length over which it runs into the rim, mm.</param>
    public DishDome(
        Outline outline,
        Region region,
        double rimMm,
        double startMm,
        double centreMm,
        double radiusMm,
        double heightMm,
        double blendMm
    )
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(region);
        half = outline.Half;
        Region = region;
        this.rimMm = Guard.Positive(rimMm);
        this.startMm = Guard.Finite(startMm);
        this.centreMm = Guard.Finite(centreMm);
        this.radiusMm = Guard.Positive(radiusMm);
        this.heightMm = Guard.Between(heightMm, 0, radiusMm);
        this.blendMm = Guard.Positive(blendMm);
        Peak = FindPeak();
    }

    public Region Region { get; }

    public HeightPeak Peak { get; }

    public double HeightAt(Point place) => At(place).HeightMm;

    public HeightSample At(Point place)
    {
        if (heightMm == 0 || !Region.Contains(place))
        {
            return default;
        }

        // The body is symmetric: the bass side is the treble side mirrored.
        Point treble = new(place.X, Math.Abs(place.Y));
        HeightSample z = Sphere(treble).Times(FromRim(treble)).Times(FromStart(treble));
        return place.Y >= 0
            ? z
            : z with
            {
                Slope = new Vector(z.Slope.X, -z.Slope.Y),
                Zxy = -z.Zxy,
            };
    }

    private HeightSample Sphere(Point place)
    {
        HeightSample sphere = Jet.Sphere(place, centreMm, radiusMm, heightMm - radiusMm);
        return sphere.Through(Jet.Positive(sphere.HeightMm, RoundedShare * heightMm));
    }

    private HeightSample FromStart(Point place)
    {
        double t = (place.X - startMm) / blendMm;
        return new HeightSample(t, new Vector(1, 0), 0, 0, 0).Through(Jet.Step(t, blendMm));
    }

    private HeightSample FromRim(Point place)
    {
        NearestPoint nearest = half.Nearest(place);
        double distance = nearest.DistanceMm;
        double t = (distance - rimMm) / blendMm;
        if (t >= 1)
        {
            return new HeightSample(1, default, 0, 0, 0);
        }

        // Half runs from heel to tail, the inside to its right. Hessian of the distance: -k/(1 - k δ) along the tangent.
        Vector inward = -nearest.Foot.Curve.Normal;
        Vector tangent = nearest.Foot.Curve.Tangent;
        double k = -nearest.Foot.Curve.Curvature;
        double bend = -k / Math.Max(1 - (k * distance), 1e-3);
        HeightSample delta = new(
            distance,
            inward,
            bend * tangent.X * tangent.X,
            bend * tangent.X * tangent.Y,
            bend * tangent.Y * tangent.Y
        );
        return delta.Through(Jet.Step(t, blendMm));
    }

    // At the sphere's top, unless the blend reaches there; else the best of the centreline, by golden section about the best of 200.
    private HeightPeak FindPeak()
    {
        Point top = new(centreMm, 0);
        if (Region.Contains(top) && HeightAt(top) >= heightMm * (1 - 1e-12))
        {
            return new(top, HeightAt(top));
        }

        double from = Region.Bounds.Min.X;
        double step = (Region.Bounds.Max.X - from) / 200;
        int best = Enumerable.Range(0, 201).MaxBy(i => HeightAt(new(from + (i * step), 0)));
        double low = from + ((best - 1) * step);
        double high = from + ((best + 1) * step);
        double share = (Math.Sqrt(5) - 1) / 2;
        for (int i = 0; i < 60; i++)
        {
            double a = high - (share * (high - low));
            double b = low + (share * (high - low));
            (low, high) = HeightAt(new(a, 0)) > HeightAt(new(b, 0)) ? (low, b) : (a, high);
        }

        Point place = new((low + high) / 2, 0);
        return new(place, HeightAt(place));
    }
}
