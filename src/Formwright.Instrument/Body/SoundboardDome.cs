using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body.Domes;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body;

/// <summary>The dome of a soundboard, in the body frame (u from the heel, y towards the treble side).</summary>
/// <param name="Field">Height over the datum; 0 on the rim and above the start.</param>
/// <param name="StartUMm">Station where it starts, mm.</param>
/// <param name="EstimatedErrorMm">Estimated error of the height anywhere, mm.</param>
public sealed record SoundboardDome(IHeightField Field, double StartUMm, double EstimatedErrorMm)
{
    /// <summary>Error that is allowed in the height of a dome, mm: a twentieth of a thin feeler gauge (tuned).</summary>
    public const double UsualToleranceMm = 0.005;

    /// <summary>Largest distance of the rim's edge as computed from the exact offset, mm (tuned).</summary>
    public const double EdgeToleranceMm = 0.002;

    /// <summary>The region inside the rim, from the dome's start to the tail; null where nothing is left. A rim that follows the
    /// sphere has no flat ring: its region is the whole outline.</summary>
    public static Region? RegionOf(Outline outline, DomeDesign dome, SoundholeDesign soundhole)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(soundhole);
        if (dome.Kind == DomeKind.RimOnSphere)
        {
            Polyline all = outline.Closed.ToPolyline(EdgeToleranceMm);
            return StartOf(dome, soundhole) >= outline.BodyLengthMm - 1
                ? null
                : Region.Of(all.Points, all.ErrorMm);
        }

        // The whole outline runs counter-clockwise, so inside is to its left.
        OffsetResult inner = Offset.Of(outline.Closed, dome.RimWidthMm);
        double start = StartOf(dome, soundhole);
        OffsetPath? path = inner.Paths.OrderByDescending(each => each.LengthMm).FirstOrDefault();
        if (path is null)
        {
            return null;
        }

        Polyline edge = path.ToPolyline(EdgeToleranceMm);
        Region whole = Region.Of(edge.Points, edge.ErrorMm);
        return start >= whole.Bounds.Max.X - 1 ? null : whole.BeyondX(start);
    }

    /// <summary>The dome over a region.</summary>
    /// <param name="region">From <see cref="RegionOf"/>.</param>
    /// <param name="outline">The outline.</param>
    /// <param name="dome">Its kind and figures.</param>
    /// <param name="soundhole">Gives the start where the design leaves it open.</param>
    /// <param name="toleranceMm">Error allowed in the height, mm.</param>
    public static SoundboardDome Over(
        Region region,
        Outline outline,
        DomeDesign dome,
        SoundholeDesign soundhole,
        double toleranceMm = UsualToleranceMm
    )
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(soundhole);
        double start = StartOf(dome, soundhole);
        if (dome.Kind == DomeKind.Dish)
        {
            double centre = dome.CentreMm ?? outline.Turns.MaxBy(row => row.WidthMm).UMm;
            double radius = dome.RadiusMm ?? DishRadius(outline, dome);
            DishDome dish = new(
                outline,
                region,
                dome.RimWidthMm,
                start,
                centre,
                radius,
                dome.HeightMm,
                dome.BlendMm
            );
            return new SoundboardDome(dish, start, 0);
        }

        if (dome.Kind == DomeKind.RimOnSphere)
        {
            SphereRimDome sphere = new(
                region,
                start,
                outline.BodyLengthMm,
                dome.HeightMm,
                dome.BlendMm
            );
            return new SoundboardDome(sphere, start, 0);
        }

        double height = Math.Max(dome.HeightMm, 1e-9);
        MembraneSolution membrane = Membrane.SolveWithin(
            region,
            height,
            toleranceMm,
            dome.Fullness
        );
        Dome field = new(membrane, dome.HeightMm, dome.Fullness);
        return new SoundboardDome(field, start, field.EstimatedErrorMm);
    }

    // The sphere that comes down to the rim at the widest place.
    private static double DishRadius(Outline outline, DomeDesign dome)
    {
        double chord = outline.Turns.Max(row => row.WidthMm) - (2 * dome.RimWidthMm);
        return Sagitta.Radius(Math.Clamp(dome.HeightMm, 1e-6, chord / 2), chord);
    }

    /// <summary>Where the dome starts: as asked, or at the soundhole's upper edge.</summary>
    public static double StartOf(DomeDesign dome, SoundholeDesign soundhole)
    {
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(soundhole);
        return dome.StartMm ?? (soundhole.AtMm - soundhole.RadiusMm);
    }
}
